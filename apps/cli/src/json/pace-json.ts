import type { PaceForecast } from '@dryflat/engine/routes';
import type { Spread } from '@dryflat/engine/stats';
import type { AskedRoutes } from '../commands/asked-routes.ts';
import { inUnits } from '../faults.ts';
import { cite } from '../print/cite.ts';

/** A pace with what it was asked of. */
export interface ToldPace extends AskedRoutes {
  readonly forecast: PaceForecast;
}

const fine = (value: number): number => Math.round(value * 100) / 100 + 0;
const chance = (value: number): number => Math.round(value * 10_000) / 10_000 + 0;
const spread = ({ p5, p50, p95 }: Spread) => ({ p05: fine(p5), p50: fine(p50), p95: fine(p95) });

/**
 * When it is done as one JSON object, keys always in this order; where no size is chosen `size` is null, and
 * each of `sizes` has its own. hours of work, days as ISO days, chances from
 * 0 to 1; `days` has every day with a chance of being the last. `date` is null where no day is wanted.
 */
export const paceJson = (told: readonly ToldPace[]): string => {
  const [first] = told;
  const answer =
    told.length === 1
      ? paceOf(first!)
      : {
          name: first?.record.name,
          size: null,
          sizes: told.map((each) => ({ size: each.record.pattern.chosen, ...paceOf(each) })),
        };
  return `${JSON.stringify(answer, null, 2)}\n`;
};

const paceOf = ({ record, question, notices, forecast }: ToldPace) => {
  const { date, yarn } = forecast;
  return {
    name: record.name,
    from: question.from,
    by: question.by,
    sentence: forecast.sentence,
    hours: spread(forecast.hours),
    pace: { plain: spread(forecast.pace.plain), worked: spread(forecast.pace.worked) },
    entries: forecast.entries,
    byPart: forecast.byPart.map(({ name, hours }) => ({ name, hours: spread(hours) })),
    done: forecast.done,
    date: date && {
      by: date.by,
      chance: chance(date.chance),
      latestStart: date.latestStart,
      hoursPerWeek: date.hoursPerWeek === null ? null : fine(date.hoursPerWeek),
    },
    milestones: forecast.milestones,
    critical: forecast.critical.map((each) => ({
      id: each.id,
      name: each.name,
      daysGained: fine(each.daysGained),
      share: chance(each.share),
      chanceWithout: each.chanceWithout === null ? null : chance(each.chanceWithout),
    })),
    yarn: yarn && {
      chanceShort: chance(yarn.chanceShort),
      lastOrderDay: yarn.lastOrderDay,
      tooLate: yarn.tooLate,
      waitDays: spread(yarn.waitDays),
    },
    days: forecast.days.map(({ day, chance: own, cumulative }) => ({
      day,
      chance: chance(own),
      cumulative: chance(cumulative),
    })),
    never: chance(forecast.never),
    seed: forecast.seed,
    draws: forecast.draws,
    notices: [
      ...forecast.notices,
      ...notices.map((text) => ({ code: 'file', text: inUnits(text, 'cm') })),
    ],
    evidence: forecast.bases.map(({ id, kind, text, source }) => ({
      id,
      kind,
      text: inUnits(text, 'cm'),
      source: source === null ? null : cite(source),
    })),
  };
};
