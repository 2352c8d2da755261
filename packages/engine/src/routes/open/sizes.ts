import { sizeWords } from '../../garment/index.ts';
import { percentText } from '../../stats/index.ts';
import { type Bench, type Draft, nothing, type Opened, together } from './draft.ts';
import {
  BLEND_GAIN,
  better,
  draftOf,
  others,
  pureChance,
  type Sized,
  sized,
  start,
} from './sized.ts';

/** Other sizes that are offered, at most, and the least chance of those after the first. */
const MOST_SIZES = 4;
const LEAST_CHANCE = 0.05;
const sizeDraft = (bench: Bench, size: Sized): Draft => {
  const label = bench.forecast.sizes[size.stitchesOf] ?? '';
  return {
    ...draftOf(bench, size),
    id: `size:${label}`,
    kind: 'size',
    name: `${start(bench)} in ${sizeWords(label)}, at this gauge`,
    reasons: ['The pattern has its numbers: nothing has to be worked out.'],
  };
};

const openSizes = (bench: Bench): Opened => {
  const { sizes } = bench.forecast;
  const name = 'Another size at this gauge';
  if (sizes.length < 2) return nothing('size', name, 'The pattern has one size.');
  if (bench.own.targets.length === 0)
    return nothing(
      'size',
      name,
      'Nothing is wanted of the fit, so no size is better than another.',
    );
  const all = others(bench);
  const offered = all.filter((s, k) => k === 0 || (k < MOST_SIZES && s.chance >= LEAST_CHANCE));
  return {
    drafts: offered.map((size) => sizeDraft(bench, size)),
    leftOut: all
      .filter((size) => !offered.includes(size))
      .map(({ stitchesOf, chance }) => ({
        kind: 'size',
        name: `Size ${sizes[stitchesOf]}`,
        why: `The chance that all of it fits is ${percentText(chance)}; other sizes are nearer.`,
      })),
  };
};

const blends = (bench: Bench): Sized[] => {
  const at = bench.forecast.sizes.map((_, k) => k);
  return at
    .flatMap((a) => at.flatMap((b) => (a === b ? [] : (sized(bench, a, b) ?? []))))
    .sort(better);
};

const openBlends = (bench: Bench): Opened => {
  const { sizes } = bench.forecast;
  const name = 'Stitches of one size, lengths of another';
  if (sizes.length < 2 || bench.own.targets.length === 0)
    return nothing('blend', name, 'There is one size, or nothing is wanted of the fit.');
  const best = pureChance(bench);
  const [first] = blends(bench);
  if (first === undefined || first.chance < best + BLEND_GAIN)
    return nothing('blend', name, 'No blend fits better than the best single size.');
  const [wide, long] = [sizes[first.stitchesOf], sizes[first.lengthsOf]];
  return {
    drafts: [
      {
        ...draftOf(bench, first),
        id: `blend:${wide}:${long}`,
        kind: 'blend',
        name: `${start(bench)} with the stitches of ${sizeWords(`${wide}`)} and the lengths of ${sizeWords(`${long}`)}`,
        reasons: [`No single size has more than ${percentText(best)} of fitting throughout.`],
      },
    ],
    leftOut: [],
  };
};

/** The garment begun in another size of the pattern, or in two of them blended. */
export const openOtherSizes = (bench: Bench): Opened =>
  together([openSizes(bench), openBlends(bench)]);
