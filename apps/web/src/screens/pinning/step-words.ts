import type { EdgeKind } from '@dryflat/engine/blocking';
import { formatLength } from '@dryflat/engine/units';
import type { MatStep } from '@dryflat/record';
import { PIN_WORDS } from '../mat/mat-words.ts';
import { inWords } from './numbers-in-words.ts';

export interface Tongue {
  readonly units: 'cm' | 'in';
  readonly words: 'us' | 'uk';
  /** What edges are called. */
  readonly edges: Readonly<Record<EdgeKind, string>>;
}

/** `the top left corner of the mat`, `pin 3`, `the tile crossing 2 from the left, 1 from the top`. */
export const referenceWords = (name: string): string =>
  /^pin \d/.test(name) ? name : `the ${name}`;

/** A length as it is said aloud: `forty-two and three eighths inches`. */
export const lengthSaid = (mm: number, { units, words }: Pick<Tongue, 'units' | 'words'>): string =>
  inWords(formatLength(mm, { unit: units, style: 'spoken', words }));

/** How a thing that has a length lies on the mat, seen from its left end. */
export const lieWords = (along: NonNullable<MatStep['along']>): string => {
  const [dx, dy] = along.dx < 0 ? [-along.dx, -along.dy] : [along.dx, along.dy];
  const degrees = (Math.atan2(dy, dx) * 180) / Math.PI;
  // Within a quarter of the way to the slope between: a hand lays it no nearer. Chosen, no source.
  if (Math.abs(degrees) < 12) return 'lying across';
  if (Math.abs(degrees) > 78) return 'lying up and down';
  return degrees < 0 ? 'rising to the right' : 'falling to the right';
};

/** A step as one sentence to be heard, numbers and units in words; `at` counts from 0. */
export const stepSaid = (
  step: MatStep,
  at: number,
  count: number,
  tongue: Tongue,
  pins = 0,
): string => {
  const { kind, edge, along, from, done } = step;
  const what = along
    ? `${PIN_WORDS[kind]} of ${lengthSaid(along.lengthMm, tongue)}, ${lieWords(along)}, its middle`
    : PIN_WORDS[kind];
  const tapes = from.map(
    ({ name, mm }) => `${lengthSaid(mm, tongue)} from ${inWords(referenceWords(name))}`,
  );
  const held = pins > 0 ? `. It is held by ${heldWords(pins)}` : '';
  const state = done === undefined ? '' : done === 'in' ? '. It is in' : '. It is left out';
  return `Step ${wordsOf(at + 1)} of ${wordsOf(count)}: ${what} on the ${tongue.edges[edge]}, ${tapes.join(', and ')}${held}${state}.`;
};

const heldWords = (pins: number): string =>
  `${wordsOf(pins)} straight ${pins === 1 ? 'pin' : 'pins'}`;

const wordsOf = (count: number): string => inWords(`${count}`);
