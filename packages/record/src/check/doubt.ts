import type { Fault } from '@dryflat/engine/units';

/** Codes of doubts and of questions start with these; all the others are faults that have to be mended. */
const DOUBT = 'doubt-';
const QUESTION = 'question-';

/** A doubt is a number that is possible and unlikely: it is shown and stops nothing. */
export const isDoubt = (fault: Fault): boolean => fault.code.startsWith(DOUBT);

/**
 * A question is what only the knitter can say: it is asked, and what hangs on its answer is left out
 * until then, or counts for little. Nothing else waits for it.
 */
export const isQuestion = (fault: Fault): boolean => fault.code.startsWith(QUESTION);

/** Neither doubt nor question: nothing is answered while it is there. */
export const mustBeMended = (fault: Fault): boolean => !isDoubt(fault) && !isQuestion(fault);

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
