import { explain, type Fault, fillLengths, formatLength, mm } from '@dryflat/engine/units';
import { markedText } from '@dryflat/record';
import type { Ending } from './surroundings.ts';

export type Units = 'cm' | 'in';

/** Lengths in a sentence of the engine, in the reader's unit. */
export const inUnits = (text: string, unit: Units): string =>
  fillLengths(text, (length) => formatLength(mm(length), { unit }));

/** One line per fault, each after the file that it is in. */
export const faultLines = (where: string, faults: readonly Fault[], unit: Units): string =>
  faults.map((fault) => `${where}: ${markedText(inUnits(explain(fault), unit))}\n`).join('');

/** Ends with one message per fault on standard error and nothing on standard output. */
export const refused = (where: string, faults: readonly Fault[], unit: Units = 'cm'): Ending => ({
  code: 2,
  out: '',
  err: faultLines(where, faults, unit),
});
