import type { Spread } from '@dryflat/engine/drying';
import type { ToldDrying } from '../commands/told-drying.ts';

/** Thousandths of an hour, tenths of a gram: finer than any clock or scale in a kitchen. */
const fine = (value: number): number => Math.round(value * 1000) / 1000 + 0;
const grams = (value: number): number => Math.round(value * 10) / 10 + 0;

const spread = ({ p5, p50, p95 }: Spread, round: (value: number) => number) => ({
  p05: round(p5),
  p50: round(p50),
  p95: round(p95),
});

/**
 * A drying as one JSON object, keys always in this order: hours from `begun`, masses in grams, ranges
 * as their 5, 50 and 95 % points. `now` is null before the first weighing.
 */
export const dryJson = ({ record, drying, forecast }: ToldDrying): string => {
  const { now, touch } = forecast;
  const answer = {
    name: record.name,
    drying: drying.id,
    begun: drying.begun,
    weighings: drying.weighings.length,
    dryHours: spread(forecast.dryHours, fine),
    dryAtG: grams(forecast.dryAtG),
    dryMassG: spread(forecast.dryMassG, grams),
    waterG: spread(forecast.waterG, grams),
    rateG: spread(forecast.rateG, grams),
    now: now && { hours: fine(now.hours), chance: fine(now.chance), state: now.state },
    marks: forecast.marks.map(({ id, kind, hours, within, text }) => ({
      id,
      kind,
      hours: fine(hours),
      within: spread(within, fine),
      text,
    })),
    places: forecast.places.map(({ name, share, dryHours }) => ({
      name,
      share: fine(share),
      dryHours: spread(dryHours, fine),
    })),
    course: forecast.course.map(({ hours, massG }) => ({
      hours: fine(hours),
      massG: spread(massG, grams),
    })),
    touch: {
      where: touch.where,
      hoursLeft: touch.hoursLeft && spread(touch.hoursLeft, fine),
      text: touch.text,
    },
    seed: forecast.seed,
    draws: forecast.draws,
    effectiveDraws: Math.round(forecast.effectiveDraws),
    converged: forecast.wetBulb.converged && forecast.fit.converged,
    notices: forecast.notices,
    bases: forecast.bases,
  };
  return `${JSON.stringify(answer, null, 2)}\n`;
};
