import { type GarmentRecord, type Measured, measurementOf, timesToEngine } from '@dryflat/record';

export type GotState = Measured['state'];

/** Days sort as texts; what has none was taken before those that have. */
const byDay = (a: { on: string }, b: { on: string }): number =>
  a.on < b.on ? -1 : a.on > b.on ? 1 : 0;

/** Every tape reading of a measurement, of pieces and of the whole, oldest first. */
const readingsOf = ({ pieces, outcomes }: GarmentRecord, measurement: string) =>
  [
    ...pieces.flatMap((piece) => piece.measured.map((each) => ({ each, on: each.on ?? '' }))),
    ...outcomes.flatMap(({ on, measured }) =>
      measured.map((each) => ({ each, on: each.on ?? on ?? '' })),
    ),
  ]
    .filter(({ each }) => each.measurement === measurement)
    .sort(byDay);

/** The last reading in each state, in the span that the forecast tells the measurement in, mm. */
export const gotOf = (
  record: GarmentRecord,
  measurement: string,
): Partial<Record<GotState, number>> => {
  const wanted = measurementOf(record, measurement);
  if (wanted === undefined) return {};
  const got: Partial<Record<GotState, number>> = {};
  for (const { each } of readingsOf(record, measurement))
    got[each.state] = each.mm * timesToEngine(wanted, each.span);
  return got;
};
