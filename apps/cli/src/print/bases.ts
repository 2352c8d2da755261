import type { Basis, BasisKind } from '@dryflat/engine/fabric';
import type { Units } from '../faults.ts';
import { inUnits } from '../faults.ts';
import type { Numbering } from './measurements.ts';
import { hanging, padEnd, padStart } from './text.ts';
import { BASIS_MEANING, BASIS_WORDS, inWords, type Words } from './words.ts';

export const numbered = (bases: readonly Basis[]): Numbering =>
  new Map(bases.map(({ id }, at) => [id, at + 1]));

interface Speaking {
  readonly units: Units;
  readonly words: Words;
}

/** What was measured is named by the knitter, so her words stay. */
const said = ({ kind, text }: Basis, { units, words }: Speaking): string =>
  kind === 'measured' ? inUnits(text, units) : inWords(inUnits(text, units), words);

const line = (basis: Basis, number: number, cite: (key: string) => string, speaking: Speaking) => {
  const mark = `${padStart(`${number}`, 3)}  ${padEnd(BASIS_WORDS[basis.kind], 12)}`;
  const source = basis.source === null ? '' : ` (${cite(basis.source)})`;
  return hanging(mark, `${said(basis, speaking)}${source}`);
};

/** What the numbers stand on, numbered as the measurements point at them, and what each kind means. */
export const basisLines = (
  bases: readonly Basis[],
  cite: (key: string) => string,
  speaking: Speaking,
): string[] => {
  const kinds = [...new Set(bases.map(({ kind }) => kind))] as BasisKind[];
  const meanings = kinds.map((kind) => `${BASIS_WORDS[kind]}: ${BASIS_MEANING[kind]}`);
  return [
    'What these numbers stand on',
    ...bases.flatMap((basis, at) => line(basis, at + 1, cite, speaking)),
    ...hanging('     ', `(${meanings.join('; ')})`),
  ];
};
