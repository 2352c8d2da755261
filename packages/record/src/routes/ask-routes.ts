import type { RoutesQuestion } from '@dryflat/engine/routes';
import { type Fault, fail, mm, ok, type Result } from '@dryflat/engine/units';
import { askForecast } from '../ask/ask-forecast.ts';
import { fault, mustBeMended } from '../check/doubt.ts';
import { faultsBesidePhotos } from '../check/faults-of.ts';
import { knitSoFar } from '../knit/knit-so-far.ts';
import { wasDried } from '../knit/was-dried.ts';
import type { GarmentRecord, Person } from '../schema/index.ts';
import { day } from '../schema/parts.ts';
import { USUAL_PACE, USUAL_WEIGHTS } from './usual.ts';
import { weighedSwatches } from './weighed-swatches.ts';
import { yarnStock } from './yarn-stock.ts';

/** Parts of a record that routes read beside those that a forecast reads. */
const ALSO_ASKED = /^(people|pace|progress|left)\b/;

/**
 * The engine's question of what to do now. `today` is the ISO day of asking, from which the plan runs
 * where the pace does not say a later one. What a record says nothing of is null, or taken as usual and
 * told by `routesAssumed`. Fails as `askForecast` does, with faults of what else is read, and with a
 * `today` that is no day.
 */
export const askRoutes = (record: GarmentRecord, today: string): Result<RoutesQuestion> => {
  const asked = askForecast(record);
  const faults = [
    ...(asked.ok ? [] : asked.faults),
    ...faultsBesidePhotos(record).filter(
      (each) => mustBeMended(each) && ALSO_ASKED.test(each.field),
    ),
    ...todayFaults(today),
  ];
  return asked.ok && faults.length === 0
    ? ok({ forecast: asked.value, ...beside(record, today) })
    : fail(...(faults as [Fault, ...Fault[]]));
};

const todayFaults = (today: string): Fault[] =>
  day.safeParse(today).success
    ? []
    : [
        fault(
          'not-a-day',
          'today',
          today,
          'it is not a day like 2031-04-09',
          'Write a day like 2031-04-09.',
        ),
      ];

const beside = (record: GarmentRecord, today: string): Omit<RoutesQuestion, 'forecast'> => ({
  ...knitNow(record),
  wearer: record.wearer.name,
  people: (record.people ?? []).map(personToFit),
  tables: true,
  dried: wasDried(record),
  repeat: repeatOf(record),
  weighed: weighedSwatches(record.evidence),
  stock: yarnStock(record),
  pace: paceOf(record),
  dryingHours: null,
  from: planFrom(record, today),
  by: record.plan.finishBy ?? null,
  weights: { ...(record.plan.weights ?? USUAL_WEIGHTS) },
});

const knitNow = (record: GarmentRecord): Pick<RoutesQuestion, 'progress' | 'progressSaid'> => {
  const { progress, said } = knitSoFar(record);
  return { progress, progressSaid: said };
};

/** The day that the plan starts from: what is past cannot be knit in any more. ISO days. */
export const planFrom = ({ pace }: GarmentRecord, today: string): string =>
  pace?.from !== undefined && pace.from > today ? pace.from : today;

const personToFit = ({ id, name, body }: Person): RoutesQuestion['people'][number] => ({
  id,
  name,
  body: body.map((each) => ({ body: each.landmark, mm: mm(each.mm), from: each.from.kind })),
});

const repeatOf = ({ pattern: { repeat } }: GarmentRecord): RoutesQuestion['repeat'] =>
  repeat === undefined ? null : { stitches: repeat.stitches, plus: repeat.plus };

const paceOf = ({ pace = USUAL_PACE }: GarmentRecord): RoutesQuestion['pace'] => ({
  log: pace.log.map(({ minutes, stitches, fabric }) => ({ minutes, stitches, fabric })),
  hours: [...pace.hours],
  away: [...pace.away],
  shopDays: pace.shopDays ?? null,
});
