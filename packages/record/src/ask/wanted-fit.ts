import type { FitWanted } from '@dryflat/engine/garment';
import { mm } from '@dryflat/engine/units';
import type { GarmentRecord, WantedFit } from '../schema/index.ts';
import { bodyAt } from '../spans/body-at.ts';
import { girthMm, landmarkMayGoAround, measurementAt, timesToEngine } from '../spans/girths.ts';

/**
 * The wanted fit at each landmark, joined with the body under it; finished girths are made `around`, ease
 * stays as it is. A girth that may be flat or around is left out.
 */
export const fitWanted = (record: GarmentRecord): FitWanted[] =>
  record.wearer.wanted
    .filter((wanted) => !isOpen(record, wanted))
    .map((wanted) => {
      const body = bodyAt(record, wanted.landmark);
      const times = timesOf(record, wanted);
      return {
        landmark: wanted.landmark,
        body: body === null ? null : mm(body.mm),
        bodyFrom: body?.from.kind ?? null,
        kind: wanted.kind,
        min: mm(wanted.minMm * times),
        max: mm(wanted.maxMm * times),
      };
    });

const isOpen = (record: GarmentRecord, wanted: WantedFit): boolean =>
  wanted.kind === 'finished' &&
  wanted.span === undefined &&
  landmarkMayGoAround(record, wanted.landmark);

const timesOf = (record: GarmentRecord, wanted: WantedFit): number => {
  if (wanted.kind === 'ease' || !landmarkMayGoAround(record, wanted.landmark)) return 1;
  const row = measurementAt(record, wanted.landmark);
  return row === undefined ? girthMm(1, wanted.span ?? 'around') : timesToEngine(row, wanted.span);
};
