import type { Fault } from '@dryflat/engine/units';

/** Codes of doubts start with this; all the others are faults that have to be mended. */
const DOUBT = 'doubt-';

/** A doubt is a number that is possible and unlikely: it is shown and stops nothing. */
export const isDoubt = (fault: Fault): boolean => fault.code.startsWith(DOUBT);

/** Makes a fault; what was given may be a number, a text or nothing. */
export const fault = (
  code: string,
  field: string,
  given: string | number | null,
  problem: string,
  mend: string,
): Fault => ({
  code,
  field,
  given: typeof given === 'string' && given !== '' ? JSON.stringify(given) : String(given ?? ''),
  problem,
  mend,
});
