import { outlineOf } from '@dryflat/engine/garment';
import type { Fault } from '@dryflat/engine/units';
import { nearest } from '../read/nearest.ts';
import type { GarmentRecord, YarnLeft } from '../schema/index.ts';
import { gramsOf } from '../text/grams.ts';
import { fault } from './doubt.ts';

/** Faults of pace, progress, yarn left, weights and report. */
export const workFaults = (record: GarmentRecord): Fault[] => [
  ...hoursDoubt(record),
  ...weightsDoubt(record),
  ...progressFaults(record),
  ...(record.left ?? []).flatMap((left, at) => leftFaults(record, left, at)),
  ...reportFaults(record),
];

const hoursDoubt = ({ pace }: GarmentRecord): Fault[] =>
  pace === undefined || pace.hours.some((hours) => hours > 0)
    ? []
    : [
        fault(
          'doubt-no-hours',
          'pace.hours',
          pace.hours.join(', '),
          'no day of the week has an hour for knitting, so that it is never done',
          'Enter hours for the days on which she knits, Monday first.',
        ),
      ];

const weightsDoubt = ({ plan: { weights } }: GarmentRecord): Fault[] =>
  weights === undefined || weights.fit + weights.time + weights.yarn > 0
    ? []
    : [
        fault(
          'doubt-no-weights',
          'plan.weights',
          'fit 0, time 0, yarn 0',
          'nothing counts, so that no way is better than another',
          'Give at least one of them more than 0, or leave weights out.',
        ),
      ];

/** Names of the pieces as the drawing has them; progress is counted by these. */
const pieceNames = ({ kind }: GarmentRecord): string[] =>
  outlineOf(kind, {}).pieces.map(({ name }) => name);

const progressFaults = (record: GarmentRecord): Fault[] => {
  const progress = record.progress ?? [];
  const names = pieceNames(record);
  return progress.flatMap(({ piece }, at) => [
    ...again(
      progress.findIndex((other) => other.piece === piece),
      at,
      piece,
    ),
    ...(names.includes(piece) ? [] : [strangePiece(piece, at, names)]),
  ]);
};

const again = (first: number, at: number, piece: string): Fault[] =>
  first === at
    ? []
    : [
        fault(
          'duplicate-piece',
          `progress[${at}].piece`,
          piece,
          `progress[${first}] says how far it is already`,
          'Keep one of the two.',
        ),
      ];

const strangePiece = (piece: string, at: number, names: readonly string[]): Fault => {
  const meant = nearest(piece, names);
  return fault(
    'doubt-unknown-piece',
    `progress[${at}].piece`,
    piece,
    'the garment has no piece of this name, so that it does not count',
    meant === null ? `Use one of ${names.join(', ')}.` : `Use "${meant}" if that is meant.`,
  );
};

const leftFaults = (record: GarmentRecord, { yarn, massG }: YarnLeft, at: number): Fault[] => {
  const ids = record.yarns.map(({ id }) => id);
  const first = (record.left ?? []).findIndex((other) => other.yarn === yarn);
  const kept = record.yarns.find(({ id }) => id === yarn);
  if (kept === undefined) return [strangeYarn(yarn, at, ids)];
  const bought = gramsOf(kept);
  return [
    ...(first === at
      ? []
      : [
          fault(
            'duplicate-yarn',
            `left[${at}].yarn`,
            yarn,
            `left[${first}] says what is left of it already`,
            'Keep one of the two.',
          ),
        ]),
    ...(bought === null || massG <= bought
      ? []
      : [
          fault(
            'doubt-left',
            `left[${at}].massG`,
            massG,
            `${massG} g are left of ${bought} g that were bought`,
            'Check the scale, or add the skeins that are missing to the lots.',
          ),
        ]),
  ];
};

const strangeYarn = (yarn: string, at: number, ids: readonly string[]): Fault => {
  const meant = nearest(yarn, ids);
  return fault(
    'unknown-yarn',
    `left[${at}].yarn`,
    yarn,
    'there is no yarn of this id',
    meant === null
      ? `Use one of ${ids.join(', ') || 'the yarns, once there are any'}.`
      : `Use "${meant}", or add the yarn.`,
  );
};

const reportFaults = ({ report, photos = [] }: GarmentRecord): Fault[] =>
  (report?.photos ?? []).flatMap((id, at) =>
    photos.some((photo) => photo.id === id)
      ? []
      : [
          fault(
            'unknown-photo',
            `report.photos[${at}]`,
            id,
            'there is no photo of this id',
            `Use one of ${photos.map((photo) => photo.id).join(', ') || 'the photos, once there are any'}, or leave it out.`,
          ),
        ],
  );
