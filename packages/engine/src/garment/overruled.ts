import type { Evidence, GrowthTerm } from '../fabric/index.ts';
import { againstTheRest, type Posterior, squaredDistance } from '../stats/index.ts';
import { type PartName, partOf } from './landmarks.ts';
import type { Overruled, PartGrowth, SizedMeasurement } from './size-model.ts';

/** States at rest in the order of a life, and the changes that lead to each from as knit. */
const STATES = ['asKnit', 'dried', 'wet', 'rewashed'] as const;
type State = (typeof STATES)[number];
const LEADS: Readonly<Record<State, readonly ('dried' | 'wet' | 'rewashed')[]>> = {
  asKnit: [],
  dried: ['dried'],
  wet: ['dried', 'wet'],
  rewashed: ['dried', 'rewashed'],
};

/** 99 % point of χ² by the cube of a normal (Wilson and Hilferty 1931), within 2 % from one degree on. */
const surprising = (degrees: number): number => {
  const part = 2 / (9 * degrees);
  return degrees * (1 - part + 2.326 * Math.sqrt(part)) ** 3;
};

interface Taped {
  readonly state: State | null;
  readonly evidence: Evidence;
}

const tapesOf = (m: SizedMeasurement, evidence: ReadonlyMap<string, Evidence>): Taped[] =>
  m.measured.flatMap(({ id, state }) => {
    const found = evidence.get(`measured:${id}`);
    const rest = STATES.find((each) => each === state) ?? null;
    return found === undefined ? [] : [{ state: rest, evidence: found }];
  });

/** Indices of the tapes in the first state that was measured. */
const firstOf = (tapes: readonly Taped[]): number[] => {
  const states = STATES.filter((state) => tapes.some((tape) => tape.state === state));
  const first = states[0] ?? null;
  return tapes.flatMap((tape, k) => (tape.state === first ? [k] : []));
};

/** True where the first tapes are a 1 in 100 surprise to everything but the tapes of this length. */
const contradictsLength = (post: Posterior, tapes: readonly Taped[]): boolean => {
  const first = firstOf(tapes);
  const against = againstTheRest(
    post,
    tapes.map(({ evidence }) => evidence),
  );
  return squaredDistance(against, first) > surprising(first.length);
};

/** Changes between measured states that the tapes of a later one contradict. */
const contradictedGrowth = (
  post: Posterior,
  m: SizedMeasurement,
  tapes: readonly Taped[],
): GrowthTerm[] => {
  const states = STATES.filter((state) => tapes.some((tape) => tape.state === state));
  return states.slice(1).flatMap((state, k) => {
    const these = tapes.filter((tape) => tape.state === state).map(({ evidence }) => evidence);
    const against = againstTheRest(post, these);
    if (squaredDistance(against, [...these.keys()]) <= surprising(these.length)) return [];
    const before = new Set(LEADS[states[k]!]);
    return LEADS[state]
      .filter((term) => !before.has(term))
      .map((term): GrowthTerm => `${term} ${m.wanted.direction}`);
  });
};

/** True where the garment has another part, of which nobody measured that change. */
const isAlone = (
  measurements: readonly SizedMeasurement[],
  part: PartName,
  term: GrowthTerm,
): boolean => {
  const others = measurements.filter(({ wanted }) => partOf(wanted.landmark) !== part);
  const isTaped = ({ wanted, measured }: SizedMeasurement): boolean =>
    measured.some(({ state }) => `${state} ${wanted.direction}` === term);
  return others.length > 0 && !others.some(isTaped);
};

/**
 * What the tape on a garment contradicts so far that it is not believed any longer: first what count,
 * gauge or pattern say of a length, then the usual change between two states in which it was measured: of its
 * part alone where the other was not measured, for what one piece does is no fabric.
 * What is measured in a state is that state's number, give or take the tape. Null where nothing is added
 * to what is overruled already.
 */
export const overruledBy = (
  measurements: readonly SizedMeasurement[],
  evidence: readonly Evidence[],
  post: Posterior,
  so: Overruled,
): Overruled | null => {
  const byId = new Map(evidence.map((each) => [each.basis.id, each]));
  const lengths = new Set(so.lengths);
  const growth = new Set(so.growth);
  const parts = new Set<PartGrowth>(so.parts);
  for (const m of measurements) {
    const tapes = tapesOf(m, byId);
    if (tapes.length === 0) continue;
    if (!so.lengths.has(m.wanted.id) && contradictsLength(post, tapes)) lengths.add(m.wanted.id);
    else
      for (const term of contradictedGrowth(post, m, tapes)) {
        const part = partOf(m.wanted.landmark);
        if (so.growth.has(term) || isAlone(measurements, part, term)) parts.add(`${part} ${term}`);
        else growth.add(term);
      }
  }
  return lengths.size > so.lengths.size ||
    growth.size > so.growth.size ||
    parts.size > so.parts.size
    ? { lengths, growth, parts }
    : null;
};
