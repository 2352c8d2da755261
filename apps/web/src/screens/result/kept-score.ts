import {
  engineSpan,
  type GarmentRecord,
  girthMm,
  type KeptForecast,
  type Measured,
  mayGoAround,
  measurementOf,
  type Outcome,
} from '@dryflat/record';

/** One number that was forecast and then measured, both in the span of the forecast. */
export interface Compared {
  readonly outcome: Outcome;
  readonly measured: Measured;
  readonly name: string;
  readonly span: 'flat' | 'around' | null;
  readonly measuredMm: number;
  readonly range: { readonly p05Mm: number; readonly p50Mm: number; readonly p95Mm: number };
  readonly inside: boolean;
  /** The forecast was kept only after the outcome was known, so it proves nothing. */
  readonly afterTheFact: boolean;
}

/** Everything measured afterwards that a kept forecast had given a range for. */
export const compareKept = (record: GarmentRecord, kept: KeptForecast): Compared[] =>
  record.outcomes.flatMap((outcome) =>
    outcome.measured.flatMap((measured) => compare(record, kept, outcome, measured)),
  );

const compare = (
  record: GarmentRecord,
  kept: KeptForecast,
  outcome: Outcome,
  measured: Measured,
): Compared[] => {
  const row = measurementOf(record, measured.measurement);
  const range = kept.measurements.find(
    (each) => each.measurement === measured.measurement && each.state === measured.state,
  );
  if (row === undefined || range === undefined) return [];
  const goesAround = mayGoAround(row);
  if (goesAround && measured.span === undefined) return [];
  const measuredMm = goesAround ? girthMm(measured.mm, measured.span ?? 'around') : measured.mm;
  const on = measured.on ?? outcome.on;
  return [
    {
      outcome,
      measured,
      name: row.name,
      span: goesAround ? engineSpan(row) : null,
      measuredMm,
      range,
      inside: measuredMm >= range.p05Mm && measuredMm <= range.p95Mm,
      afterTheFact: on !== undefined && on < kept.on,
    },
  ];
};

export interface Score {
  readonly inside: number;
  readonly of: number;
}

/** How many of those forecast beforehand came out inside their range. */
export const scoreOf = (compared: readonly Compared[]): Score => {
  const fair = compared.filter((each) => !each.afterTheFact);
  return { inside: fair.filter((each) => each.inside).length, of: fair.length };
};
