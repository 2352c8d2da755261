import type { Fault } from '@dryflat/engine/units';
import type { GarmentRecord, KeptForecast, Outcome, Piece } from '../schema/index.ts';
import { fault } from './doubt.ts';

/** A needle and a garment's mass outside of these are a slip of unit. Common practice, no source. */
const NEEDLE_MM = [0.5, 60] as const;
const GARMENT_G = [2, 6000] as const;

/** Faults of the garment itself: its needle and mass, its pieces, plan, kept forecasts and outcomes. */
export const garmentFaults = (record: GarmentRecord): Fault[] => [
  ...needle(record.needleMm, 'needleMm'),
  ...needle(record.pattern.needleMm, 'pattern.needleMm'),
  ...record.evidence.flatMap((each, at) => needle(each.needleMm, `evidence[${at}].needleMm`)),
  ...mass(record.massG),
  ...record.pieces.flatMap((piece, at) => pieceFaults(piece, `pieces[${at}].measured`)),
  ...planFaults(record),
  ...record.forecasts.flatMap((each, at) => keptFaults(each, `forecasts[${at}].measurements`)),
  ...record.outcomes.flatMap((each, at) => outcomeFaults(each, `outcomes[${at}].measured`)),
];

const needle = (mm: number | undefined, path: string): Fault[] =>
  mm === undefined || (mm >= NEEDLE_MM[0] && mm <= NEEDLE_MM[1])
    ? []
    : [
        fault(
          'doubt-needle',
          path,
          mm,
          `a needle of ${mm} mm is not to be had`,
          'Write its diameter in millimetres, not its number.',
        ),
      ];

const mass = (grams: number | undefined): Fault[] =>
  grams === undefined || (grams >= GARMENT_G[0] && grams <= GARMENT_G[1])
    ? []
    : [
        fault(
          'doubt-mass',
          'massG',
          grams,
          `a garment of ${grams} g is not to be expected`,
          'Write the mass of the whole garment in grams.',
        ),
      ];

const pieceFaults = (piece: Piece, path: string): Fault[] =>
  piece.measured.flatMap(({ state }, at) =>
    state !== 'worn'
      ? []
      : [
          fault(
            'state-never-reached',
            `${path}[${at}].state`,
            state,
            `"${piece.name}" is a piece, and a piece is not worn`,
            'Write the state it was measured in, or move the number to an outcome.',
          ),
        ],
  );

const planFaults = ({ plan }: GarmentRecord): Fault[] =>
  plan.drying === 'pin' || plan.pinTo.length === 0
    ? []
    : [
        fault(
          'doubt-pins-unused',
          'plan.pinTo',
          plan.pinTo.map(({ measurement }) => measurement).join(', '),
          'the plan lays the garment flat without pins, and says what to pin it to',
          'Write "pin" as the drying, or leave pinTo empty.',
        ),
      ];

const keptFaults = ({ measurements }: KeptForecast, path: string): Fault[] =>
  measurements.flatMap(({ p05Mm, p50Mm, p95Mm }, at) =>
    p05Mm <= p50Mm && p50Mm <= p95Mm
      ? []
      : [
          fault(
            'percentiles-out-of-order',
            `${path}[${at}]`,
            `${p05Mm}, ${p50Mm}, ${p95Mm}`,
            'the 5th, 50th and 95th percentiles do not rise',
            'Put them in order.',
          ),
        ],
  );

const outcomeFaults = ({ measured, washes }: Outcome, path: string): Fault[] =>
  measured.flatMap(({ state }, at) =>
    state !== 'rewashed' || washes >= 1
      ? []
      : [
          fault(
            'state-never-reached',
            `${path}[${at}].state`,
            state,
            'the outcome counts no wash, so nothing was washed again',
            'Count the washes, or write the state it was measured in.',
          ),
        ],
  );
