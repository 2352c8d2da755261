import type { DryingForecast, Spread } from '@dryflat/engine/drying';
import type { Drying } from '@dryflat/record';

export type Touch = Drying['touches'][number];

const byTime = (a: Touch, b: Touch): number => Date.parse(a.at) - Date.parse(b.at);

/** The newest touch of a place; null where it was not touched. */
export const lastTouch = ({ touches }: Pick<Drying, 'touches'>, where: string): Touch | null =>
  touches
    .filter((touch) => touch.where === where)
    .sort(byTime)
    .at(-1) ?? null;

/** When a place first felt dry since it last felt otherwise, ms; null where it does not feel dry. */
export const feelsDrySince = (
  { touches }: Pick<Drying, 'touches'>,
  where: string,
): number | null => {
  const here = touches.filter((touch) => touch.where === where).sort(byTime);
  const damp = here.findLastIndex(({ feels }) => feels !== 'dry');
  const first = here[damp + 1];
  return first === undefined ? null : Date.parse(first.at);
};

const HOUR = 3_600_000;

/**
 * When it is dry by touch, ms: from the moment that the last place first felt dry, by what the engine
 * says that is worth. Null where it does not feel dry, or where the worth is not known.
 */
export const dryByTouch = (
  drying: Pick<Drying, 'touches'>,
  { touch }: Pick<DryingForecast, 'touch'>,
): Spread | null => {
  const since = feelsDrySince(drying, touch.where);
  if (since === null || touch.hoursLeft === null) return null;
  const at = (hours: number): number => since + hours * HOUR;
  const { p5, p50, p95 } = touch.hoursLeft;
  return { p5: at(p5), p50: at(p50), p95: at(p95) };
};

/** The scale calls it dry while the hand does not, at the place that a scale does not see. */
export const handDisagrees = (
  drying: Pick<Drying, 'touches'>,
  { touch, now }: Pick<DryingForecast, 'touch' | 'now'>,
): boolean => {
  const last = lastTouch(drying, touch.where);
  return now?.state === 'dry' && last !== null && last.feels !== 'dry';
};
