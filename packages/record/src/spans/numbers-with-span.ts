import type { GarmentRecord, PatternMeasurement } from '../schema/index.ts';
import { bodyAt, bodyIdOf } from './body-at.ts';
import { girthMm, landmarkMayGoAround, mayGoAround, measurementOf, type Span } from './girths.ts';
import { likelySpan, type SpanClues } from './likely-span.ts';

/** A number of the record that may be meant flat or around. */
export interface NumberWithSpan {
  /** Path of the thing that carries the number; its `span` lies one step below. */
  readonly path: string;
  readonly name: string;
  readonly landmark: string;
  /** The number that is judged: for a row of the table, that of the chosen size or of the middle one. */
  readonly valueMm: number;
  readonly size: string | null;
  readonly span: Span | null;
  readonly clues: SpanClues;
}

/** Every number of the record that may go around, answered or not, in the order of the file. */
export const numbersWithSpan = (record: GarmentRecord): NumberWithSpan[] => [
  ...record.wearer.wanted.flatMap((wanted, at) =>
    wanted.kind === 'finished' && landmarkMayGoAround(record, wanted.landmark)
      ? [
          {
            path: `wearer.wanted[${at}]`,
            name: wanted.landmark,
            landmark: wanted.landmark,
            valueMm: (wanted.minMm + wanted.maxMm) / 2,
            size: null,
            span: wanted.span ?? null,
            clues: cluesAt(record, wanted.landmark, null),
          },
        ]
      : [],
  ),
  ...record.pattern.measurements.flatMap((measurement, at) => row(record, measurement, at)),
  ...record.pieces.flatMap((piece, at) => tapes(record, piece.measured, `pieces[${at}].measured`)),
  ...tapes(record, record.plan.pinTo, 'plan.pinTo'),
  ...record.outcomes.flatMap((outcome, at) =>
    tapes(record, outcome.measured, `outcomes[${at}].measured`),
  ),
];

const cluesAt = (record: GarmentRecord, landmark: string, targetMm: number | null): SpanClues => ({
  targetMm,
  bodyMm: bodyAt(record, landmark)?.mm ?? null,
  group: record.wearer.group,
  body: bodyIdOf(landmark),
});

const row = (
  record: GarmentRecord,
  measurement: PatternMeasurement,
  at: number,
): NumberWithSpan[] => {
  const judged = mayGoAround(measurement) ? judgedValue(record, measurement) : null;
  return judged === null
    ? []
    : [
        {
          path: `pattern.measurements[${at}]`,
          name: measurement.name,
          landmark: measurement.landmark,
          ...judged,
          span: measurement.span ?? null,
          clues: cluesAt(record, measurement.landmark, null),
        },
      ];
};

/** The chosen size's value, or the middle one of those given; null for a row without any number. */
export const judgedValue = (
  { pattern }: GarmentRecord,
  measurement: PatternMeasurement,
): { valueMm: number; size: string | null } | null => {
  const given = measurement.values.flatMap((valueMm, at) =>
    valueMm === null ? [] : [{ valueMm, size: pattern.sizes[at] ?? null }],
  );
  const chosen = given.find(({ size }) => size !== null && size === pattern.chosen);
  return chosen ?? given[Math.floor(given.length / 2)] ?? null;
};

interface Tape {
  readonly measurement: string;
  readonly mm: number;
  readonly span?: Span | undefined;
}

const tapes = (record: GarmentRecord, list: readonly Tape[], path: string): NumberWithSpan[] =>
  list.flatMap((tape, at) => {
    const measurement = measurementOf(record, tape.measurement);
    if (measurement === undefined || !mayGoAround(measurement)) return [];
    return [
      {
        path: `${path}[${at}]`,
        name: measurement.name,
        landmark: measurement.landmark,
        valueMm: tape.mm,
        size: null,
        span: tape.span ?? null,
        clues: cluesAt(record, measurement.landmark, targetGirth(record, measurement)),
      },
    ];
  });

/**
 * What the pattern asks for in the chosen size, around; null while its own span is open, or when it
 * reads like the other of the two, so that one slip raises one doubt.
 */
const targetGirth = (record: GarmentRecord, measurement: PatternMeasurement): number | null => {
  const value = measurement.values[record.pattern.sizes.indexOf(record.pattern.chosen ?? '')];
  if (value == null || measurement.span === undefined) return null;
  const { likely } = likelySpan(value, cluesAt(record, measurement.landmark, null));
  return likely === null || likely === measurement.span ? girthMm(value, measurement.span) : null;
};
