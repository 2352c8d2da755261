import {
  type Basis,
  type Direction,
  type FabricGive,
  fabricGive,
  fabricMaterial,
  hangingTube,
  strainAt,
} from '../fabric/index.ts';
import type { ForecastQuestion } from './forecast-types.ts';
import { garmentMass } from './garment-mass.ts';
import { hangShares } from './hang-shares.ts';
import { inSpan, type SizedMeasurement, type SizeModel } from './size-model.ts';
import type { Passage } from './state-lengths.ts';

/** Index of the size whose widths are knit, and of that whose lengths are. */
export type SizeOf = Readonly<Record<Direction, number>>;

export interface Passages {
  readonly passages: readonly Passage[];
  readonly bases: readonly Basis[];
}

/**
 * How every measurement passes from state to state in a size: what it is pinned to, how far pins may stretch
 * it, and how far it hangs while worn under the garment's own weight. `driedMm`: at rest in that size, one for
 * each measurement; null where the size lacks it.
 */
export const passagesOf = (question: ForecastQuestion, model: SizeModel) => {
  const give = { width: fabricGive(question, 'width'), length: fabricGive(question, 'length') };
  const pulled = wetStretch(question);
  const fixed = model.measurements.map(({ wanted: { direction, stitch } }) => {
    const own = stitch === question.stitch ? pulled : wetStretch({ ...question, stitch });
    return { direction, pinLimit: own(direction, PIN_LOAD), hangLogSd: give.length.logSd };
  });
  return (driedMm: readonly (number | null)[], size: SizeOf): Passages => {
    const hang = hangs(question, model, driedMm, give.length);
    const passages = model.measurements.map((m, k) => ({
      at: k,
      ...fixed[k]!,
      pinnedTo: pinnedTo(question, m, size),
      hang: hang.strains[k] ?? 0,
    }));
    return { passages, bases: hang.bases };
  };
};

/** Line load that pinning by hand is trusted with, N/mm: the 5 N that a pin is planned to bear, every 5 cm. Assumption. */
const PIN_LOAD = 0.1;

/** How far a strip of this fabric stretches wet under a line load, N/mm, over its wet rest: by the law that the mat has. */
export const wetStretch = (question: ForecastQuestion) => {
  const { constants } = fabricMaterial(question, 'wet');
  return (direction: Direction, load: number): number => strainAt(constants[direction], load).value;
};

/** Widths of the edges that ribbing ends in, where there is any. */
const RIB_ENDS: ReadonlySet<string> = new Set(['hem', 'cuff', 'brim', 'leg']);

const inRibbing = (
  { measurements }: ForecastQuestion,
  { wanted: { stitch, landmark } }: SizedMeasurement,
  size: SizeOf,
): boolean =>
  stitch === 'rib-1x1' ||
  (RIB_ENDS.has(landmark) &&
    measurements.some((m) => m.landmark === 'rib-depth' && (m.values[size.length] ?? 0) > 0));

/** Said or seen it is so in every size; else what the pattern has for this one, and ribbing is left to draw in. */
const pinnedTo = (question: ForecastQuestion, m: SizedMeasurement, size: SizeOf): number | null => {
  if (question.drying !== 'pin') return null;
  const said = question.pinTo.find((p) => p.measurement === m.wanted.id);
  if (said !== undefined) return said.value;
  const seen = m.measured.findLast((x) => x.state === 'pinned');
  if (seen !== undefined) return inSpan(seen, m.wanted.span);
  return inRibbing(question, m, size) ? null : (m.wanted.values[size[m.wanted.direction]] ?? null);
};

const hangs = (
  question: ForecastQuestion,
  model: SizeModel,
  lengths: readonly (number | null)[],
  give: FabricGive,
): { strains: readonly number[]; bases: readonly Basis[] } => {
  const lengthOf = (landmark: string): number | null => {
    const at = model.measurements.findIndex((m) => m.wanted.landmark === landmark);
    return at < 0 ? null : (lengths[at] ?? null);
  };
  const mass = garmentMass(question, lengthOf);
  const girth = lengthOf('chest');
  if (mass === null || girth === null) return { strains: [], bases: [] };
  const strains = model.measurements.map((m) => {
    const share = hangShares(question.kind, m.wanted.landmark);
    if (share === null) return 0;
    const tube = hangingTube(give, {
      hung: mass.grams * share.own,
      below: mass.grams * share.below,
      girthMm: girth * share.girth,
    });
    return m.wanted.direction === 'length' ? tube.longer : tube.narrower;
  });
  return { strains, bases: [...mass.bases, ...give.bases] };
};
