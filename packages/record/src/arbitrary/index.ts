import { GARMENT_KINDS } from '@dryflat/engine/garment';
import { STITCHES } from '@dryflat/engine/textile';
import fc from 'fast-check';
import type { GarmentRecord, Measured, Outcome, Piece, Plan, Wearer } from '../schema/index.ts';
import { WASHINGS } from '../schema/index.ts';
import { CURRENT_VERSION, FORMAT } from '../schema/version.ts';
import { drying, finished } from './drying.ts';
import { specimen } from './evidence.ts';
import { matWork } from './mat-work.ts';
import {
  between,
  bodyMeasure,
  day,
  id,
  label,
  landmark,
  list,
  partial,
  positive,
  share,
  signed,
  span,
  stock,
  whole,
} from './parts.ts';
import { pattern, yarn } from './pattern-and-yarn.ts';
import { instruction, pace, person, photo, progress, report, yarnLeft } from './work.ts';

/** Fast-check arbitraries of records of the right shape; they need not make sense (`faultsOf`). */
const wearer: fc.Arbitrary<Wearer> = fc.record({
  name: label,
  group: fc.constantFrom('woman' as const, 'man', 'child', 'baby', 'nobody', 'not-said'),
  body: list(bodyMeasure),
  wanted: list(
    fc.oneof(
      fc.record({ kind: fc.constant('ease' as const), landmark, minMm: signed, maxMm: signed }),
      partial<Extract<Wearer['wanted'][number], { kind: 'finished' }>>(
        { kind: fc.constant('finished'), landmark, minMm: positive, maxMm: positive, span },
        ['kind', 'landmark', 'minMm', 'maxMm'],
      ),
    ),
  ),
});

const measured = partial<Measured>(
  {
    id,
    measurement: id,
    state: fc.constantFrom('asKnit', 'wet', 'pinned', 'dried', 'worn', 'rewashed'),
    mm: positive,
    span,
    on: day,
  },
  ['id', 'measurement', 'state', 'mm'],
);

const piece: fc.Arbitrary<Piece> = fc.record({ id, name: label, measured: list(measured) });

const place = fc.record({ xMm: signed, yMm: signed });

const plan = partial<Plan>(
  {
    washing: fc.constantFrom(...WASHINGS),
    drying: fc.constantFrom('lay', 'pin'),
    pinTo: list(
      partial<Plan['pinTo'][number]>({ measurement: id, mm: positive, span }, [
        'measurement',
        'mm',
      ]),
    ),
    judgeAt: fc.constantFrom('dried', 'worn', 'rewashed'),
    finishBy: day,
    sewn: fc.boolean(),
    stock,
    mat: fc.record({
      widthMm: positive,
      heightMm: positive,
      tileMm: between(0, 99_999),
    }),
    pins: list(fc.record({ piece: label, at: place, to: place, around: fc.boolean() })),
    weights: fc.record({ fit: share, time: share, yarn: share }),
  },
  ['washing', 'drying', 'pinTo', 'judgeAt'],
);

const keptForecast = fc.record({
  id,
  on: day,
  measurements: list(
    fc.record({
      measurement: id,
      state: fc.constantFrom('asKnit' as const, 'wet', 'dried', 'worn', 'rewashed'),
      p05Mm: positive,
      p50Mm: positive,
      p95Mm: positive,
    }),
  ),
});

const outcome = partial<Outcome>(
  {
    id,
    on: day,
    washes: whole(0, 10_000),
    remark: label,
    measured: list(measured),
  },
  ['id', 'washes', 'remark', 'measured'],
);

/** Any record of the current version and the right shape. */
export const anyRecord: fc.Arbitrary<GarmentRecord> = partial<GarmentRecord>(
  {
    format: fc.constant(FORMAT),
    version: fc.constant(CURRENT_VERSION),
    id,
    name: label,
    kind: fc.constantFrom(...GARMENT_KINDS),
    stitch: fc.constantFrom(...STITCHES),
    needleMm: positive,
    massG: positive,
    wearer,
    pattern,
    yarns: list(yarn),
    evidence: list(specimen),
    pieces: list(piece),
    plan,
    forecasts: list(keptForecast),
    outcomes: list(outcome),
    notes: list(
      partial<GarmentRecord['notes'][number]>({ id, on: day, text: label }, ['id', 'text']),
    ),
    onMat: list(matWork, 2),
    dryings: list(drying, 2),
    photos: list(photo, 2),
    finished,
    people: list(person, 2),
    pace,
    progress: list(progress, 2),
    left: list(yarnLeft, 2),
    instructions: list(instruction, 2),
    report,
  },
  [
    'format',
    'version',
    'id',
    'name',
    'kind',
    'stitch',
    'wearer',
    'pattern',
    'yarns',
    'evidence',
    'pieces',
    'plan',
    'forecasts',
    'outcomes',
    'notes',
  ],
);
