import type { ForecastState } from '@dryflat/engine/fabric';
import type { GaugeForecast, GaugeStep, Range } from '@dryflat/engine/garment';
import { type CountSpan, countOfPitch } from '@dryflat/engine/units';
import type { GarmentRecord } from '@dryflat/record';

export type Along = 'stitch' | 'row';

/** The gauge as counts, fewest and most nine times in ten, after one more reading. */
export interface Rung {
  readonly id: string;
  readonly label: string;
  readonly fewest: number;
  readonly likely: number;
  readonly most: number;
}

/** A pitch turned into counts: the widest stitch is the fewest of them. */
export const countsOf = (pitch: Range, span: CountSpan) => ({
  fewest: countOfPitch(pitch.p95Mm, span),
  likely: countOfPitch(pitch.p50Mm, span),
  most: countOfPitch(pitch.p05Mm, span),
});

/** Ids of the bases whose readings run along one direction. */
const basesAlong = ({ evidence }: GarmentRecord, along: Along): Set<string> =>
  new Set(
    evidence.flatMap((specimen) =>
      specimen.readings
        .filter(({ direction }) => (direction === 'width') === (along === 'stitch'))
        .map((reading) => `evidence:${specimen.id}:${reading.id}`),
    ),
  );

/** A label begins with the specimen's name, which says nothing where there is only one. */
const withoutName = ({ evidence }: GarmentRecord, label: string): string => {
  const prefix = evidence.length === 1 ? `${evidence[0]?.name}: ` : '';
  return label.startsWith(prefix) ? label.slice(prefix.length) : label;
};

export interface LadderQuestion {
  readonly record: GarmentRecord;
  readonly steps: readonly GaugeStep[];
  /** The gauge with everything that is known, the garment's own measurements included. */
  readonly now: GaugeForecast;
  readonly along: Along;
  readonly state: ForecastState;
  readonly span: CountSpan;
}

/** Before any measurement, after each reading of this direction, and with everything. */
export const rungsOf = ({ record, steps, now, along, state, span }: LadderQuestion): Rung[] => {
  const bases = basesAlong(record, along);
  const shown = steps.filter(({ basisId }) => basisId === null || bases.has(basisId));
  return [
    ...shown.map((step) => ({
      id: step.basisId ?? 'before',
      label: withoutName(record, step.label),
      ...countsOf(step[along][state], span),
    })),
    { id: 'now', label: 'With all that is known', ...countsOf(now[along][state], span) },
  ];
};

/** Ends of a common scale for all rungs. */
export const rungScale = (rungs: readonly Rung[]): { low: number; high: number } => {
  const low = Math.min(...rungs.map(({ fewest }) => fewest));
  const high = Math.max(...rungs.map(({ most }) => most));
  const air = 0.04 * (high - low);
  return { low: low - air, high: high + air };
};

/** A ladder of at most three rungs: where it began, the newest reading, and now. */
export const shortLadder = (rungs: readonly Rung[]): readonly Rung[] =>
  rungs.length <= 3 ? rungs : [...rungs.slice(0, 1), ...rungs.slice(-2)];
