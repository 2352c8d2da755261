import { GARMENT_KINDS, LANDMARKS } from '@dryflat/engine/garment';
import { FIBRES, STITCHES, TREATMENTS } from '@dryflat/engine/textile';
import fc from 'fast-check';
import type {
  GarmentRecord,
  Measured,
  Outcome,
  Pattern,
  PatternMeasurement,
  Piece,
  Plan,
  Reading,
  Specimen,
  Wearer,
  Yarn,
} from './schema/index.ts';
import { WASHINGS } from './schema/index.ts';
import { CURRENT_VERSION, FORMAT } from './schema/version.ts';

/** Fast-check arbitraries of records of the right shape; they need not make sense (`faultsOf`). */
type Optional<T> = { [K in keyof T]: fc.Arbitrary<T[K]> };

/** An object whose keys named in `required` are always there and whose others come and go. */
const partial = <T extends object>(
  model: { [K in keyof T]-?: fc.Arbitrary<Exclude<T[K], undefined>> },
  requiredKeys: readonly (keyof T)[],
): fc.Arbitrary<T> =>
  fc.record(model as unknown as Optional<T>, {
    requiredKeys: [...requiredKeys] as never,
    noNullPrototype: true,
  }) as unknown as fc.Arbitrary<T>;

const list = <T>(of: fc.Arbitrary<T>, most = 3) => fc.array(of, { maxLength: most });
const id = fc.string({ minLength: 1, maxLength: 12 });
const label = fc.string({ maxLength: 20 });
const positive = fc.double({ min: 0.01, max: 99_999, noNaN: true });
const share = fc.double({ min: 0.01, max: 100, noNaN: true });
/** JSON writes minus zero as zero, so there is none here. */
const signed = fc.double({ min: -99_999, max: 99_999, noNaN: true }).map((value) => value + 0);
const day = fc
  .date({ min: new Date('2000-01-01'), max: new Date('2099-12-31'), noInvalidDate: true })
  .map((date) => date.toISOString().slice(0, 10));
const span = fc.constantFrom('flat' as const, 'around' as const);
const direction = fc.constantFrom('width' as const, 'length' as const);
const restState = fc.constantFrom('asKnit' as const, 'wet', 'dried', 'rewashed');
const read = fc.constantFrom('flat' as const, 'stretched');
const landmark = fc.oneof(fc.constantFrom(...LANDMARKS.map((each) => each.id)), id);

const reading: fc.Arbitrary<Reading> = fc.oneof(
  partial<Extract<Reading, { kind: 'count' }>>(
    {
      kind: fc.constant('count'),
      id,
      direction,
      count: positive,
      overMm: positive,
      state: restState,
      read,
      place: label,
    },
    ['kind', 'id', 'direction', 'count', 'overMm', 'state', 'read'],
  ),
  partial<Extract<Reading, { kind: 'extent' }>>(
    {
      kind: fc.constant('extent'),
      id,
      direction,
      mm: positive,
      count: positive,
      state: restState,
      read,
      place: label,
    },
    ['kind', 'id', 'direction', 'mm', 'state', 'read'],
  ),
  fc.record({
    kind: fc.constant('hang' as const),
    id,
    direction,
    massG: positive,
    clippedMm: positive,
    beforeMm: positive,
    afterMm: positive,
    state: restState,
  }),
  fc.record({
    kind: fc.constant('set' as const),
    id,
    direction,
    restMm: positive,
    pinnedMm: positive,
    driedMm: positive,
  }),
);

const specimen = partial<Specimen>(
  {
    id,
    name: label,
    kind: fc.constantFrom('swatch', 'part', 'piece', 'past-garment'),
    stitch: fc.constantFrom(...STITCHES),
    needleMm: positive,
    workedAsGarment: fc.boolean(),
    widthMm: positive,
    heightMm: positive,
    washed: fc.constantFrom('not', 'as-garment', 'otherwise'),
    readings: list(reading),
  },
  ['id', 'name', 'kind', 'stitch', 'workedAsGarment', 'washed', 'readings'],
);

const wearer: fc.Arbitrary<Wearer> = fc.record({
  name: label,
  group: fc.constantFrom('woman' as const, 'man', 'child', 'baby', 'nobody'),
  body: list(
    fc.record({
      landmark,
      mm: positive,
      from: fc.oneof(
        fc.record({ kind: fc.constant('measured' as const) }),
        fc.record({ kind: fc.constant('table' as const), table: id, size: label }),
      ),
    }),
  ),
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

const patternMeasurement = partial<PatternMeasurement>(
  {
    id,
    name: label,
    landmark,
    direction,
    span,
    worked: fc.constantFrom('counted', 'to-length'),
    values: list(fc.option(positive)),
    counts: list(fc.option(positive)),
    stitch: fc.constantFrom(...STITCHES),
  },
  ['id', 'name', 'landmark', 'worked', 'values'],
);

const pattern = partial<Pattern>(
  {
    name: label,
    gauge: fc.record({
      stitches: positive,
      rows: positive,
      overMm: positive,
      state: fc.constantFrom('asKnit' as const, 'dried'),
    }),
    needleMm: positive,
    sizes: list(label),
    chosen: label,
    measurements: list(patternMeasurement),
  },
  ['name', 'sizes', 'measurements'],
);

const yarn = partial<Yarn>(
  {
    id,
    name: label,
    fibres: list(fc.record({ fibre: fc.constantFrom(...FIBRES), percent: share })),
    treatment: fc.constantFrom(...TREATMENTS),
    weightClass: fc.integer({ min: 0, max: 7 }),
    metresPer100g: positive,
    lots: list(
      partial<Yarn['lots'][number]>(
        { dyeLot: label, skeins: positive, gramsEach: positive, metresEach: positive },
        ['dyeLot', 'skeins'],
      ),
    ),
  },
  ['id', 'name', 'fibres', 'treatment', 'lots'],
);

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

const howMany = fc.integer({ min: 0, max: 10_000 });
const runs = list(fc.record({ lengthMm: positive, count: howMany }));

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
    stock: fc.record({ straight: howMany, tPins: howMany, combs: runs, wires: runs }),
    mat: fc.record({
      widthMm: positive,
      heightMm: positive,
      tileMm: fc.double({ min: 0, max: 99_999, noNaN: true }),
    }),
    pins: list(fc.record({ piece: label, at: place, to: place, around: fc.boolean() })),
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
    washes: fc.integer({ min: 0, max: 10_000 }),
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
