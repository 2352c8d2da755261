import type { Forecast, LandmarkFit } from '@dryflat/engine/garment';

export interface Interval {
  readonly min: number;
  readonly max: number;
}

/** Finished lengths that would fit, in the measurement's own span; null where there is no body to add ease to. */
export const finishedWanted = ({ bodyMm, wantedMm }: LandmarkFit): Interval | null => {
  const { kind, min, max } = wantedMm;
  if (kind === 'finished') return { min, max };
  return bodyMm === null ? null : { min: bodyMm + min, max: bodyMm + max };
};

/** What is wanted of a measurement, where anything is. */
export const wantedOf = ({ fit }: Forecast, measurement: string): Interval | null => {
  const judged = fit.find((each) => each.measurement === measurement);
  return judged === undefined ? null : finishedWanted(judged);
};
