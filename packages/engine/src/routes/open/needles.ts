import { nextNeedle } from '../../garment/index.ts';
import { plannedMakes } from '../knit/makes.ts';
import { ownTargets } from '../knit/targets.ts';
import { beginAgain, needleLuck } from './afresh.ts';
import { type Bench, nothing, type Opened, together } from './draft.ts';
import { start } from './sized.ts';

const needleWords = (needle: number | null, way: 1 | -1): string => {
  const word = way === 1 ? 'larger' : 'smaller';
  return needle === null
    ? `one needle size ${word}`
    : `${Math.round(100 * needle) / 100} mm needles, one size ${word}`;
};

const openNeedle = (bench: Bench, way: 1 | -1, seed: number): Opened => {
  const { forecast, question } = bench;
  const needle = nextNeedle(forecast.needle, way);
  if (needle === null && forecast.needle !== null)
    return nothing('needle', 'Another needle', 'There is no needle beyond this one.');
  const { luck, from } = needleLuck(question, bench.luck, needle, way, seed);
  const judged = ownTargets(forecast, luck);
  const makes = plannedMakes(forecast, luck);
  const because =
    from === 'evidence'
      ? 'What was measured on this needle says what it gives.'
      : 'What it gives is taken from a usual step of the gauge, half of it as doubt: knit a swatch on it first.';
  return {
    drafts: [
      {
        id: `needle:${needle ?? (way === 1 ? 'larger' : 'smaller')}`,
        kind: 'needle',
        name: `${start(bench)} on ${needleWords(needle, way)}`,
        luck,
        judged,
        makes,
        work: beginAgain(bench, luck, makes),
        reasons: [because],
        bases: ['route-needle-step'],
      },
    ],
    leftOut: [],
  };
};

/** The garment begun on the next needle, up and down. */
export const openNeedles = (bench: Bench, seed: number): Opened =>
  together([openNeedle(bench, 1, seed), openNeedle(bench, -1, seed)]);
