import * as fc from 'fast-check';
import { specimens } from '../../garment/check/arbitrary.ts';
import {
  type ForecastQuestion,
  findLandmark,
  GARMENT_KINDS,
  type GarmentKind,
  LANDMARKS_OF,
  type MeasurementWanted,
  outlineOf,
} from '../../garment/index.ts';
import { type Millimetres, mm } from '../../units/index.ts';
import type { RoutesQuestion } from '../types.ts';
import { QUESTION } from './questions.ts';

/** Garments of every kind as they may be written down: begun or not, measured or not, wanted a little otherwise. */

const share = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** Usual sizes of a kind, flat, by landmark. */
const usual = (kind: GarmentKind): ReadonlyMap<string, number> =>
  new Map(
    outlineOf(kind, {}).pieces.flatMap(({ dimensions }) =>
      dimensions.map(({ landmark, mm: each }) => [landmark, Number(each)] as const),
    ),
  );

const STITCH_MM = 5;
const ROW_MM = 3.6;
const SIZES = ['A', 'B', 'C'];
const STEP = 0.06;

const measurement = (
  landmark: string,
  flatMm: number,
  taped: boolean,
  printed: boolean,
): MeasurementWanted => {
  const { direction, girth } = findLandmark(landmark)!;
  const around = girth ? 2 : 1;
  const worked = direction === 'length' && taped ? 'to-length' : 'counted';
  const values = SIZES.map((_, k) => mm(Math.round(flatMm * around * (1 + STEP * (k - 1)))));
  const pitch = direction === 'width' ? STITCH_MM : ROW_MM;
  return {
    id: landmark,
    name: landmark,
    landmark,
    direction,
    span: girth ? 'around' : 'flat',
    worked,
    values,
    counts: values.map((value) =>
      worked === 'counted' && printed ? 2 * Math.round(value / pitch / 2) : null,
    ),
    stitch: 'stockinette',
  };
};

const pattern = (kind: GarmentKind) =>
  fc
    .record({
      sizes: fc.tuple(...[...usual(kind)].map(() => share(0.93, 1.07))),
      kept: fc.tuple(...[...usual(kind)].map(() => fc.integer({ min: 0, max: 9 }))),
      taped: fc.boolean(),
      printed: fc.boolean(),
    })
    .map(({ sizes, kept, taped, printed }): MeasurementWanted[] => {
      const known = LANDMARKS_OF[kind];
      const all = [...usual(kind)].flatMap(([landmark, flat], k) =>
        known.includes(landmark) && (kept[k]! > 1 || k < 2)
          ? [measurement(landmark, flat * sizes[k]!, taped, printed)]
          : [],
      );
      return all;
    });

/** Wanted ranges about what the pattern gives, some of them out of it. */
const wishes = (measurements: readonly MeasurementWanted[]) =>
  fc
    .tuple(
      ...measurements.map(() =>
        fc.record({ asked: fc.boolean(), off: share(0.86, 1.14), half: share(0.01, 0.05) }),
      ),
    )
    .map((all) =>
      all.flatMap(({ asked, off, half }, k): ForecastQuestion['wanted'] => {
        if (!asked) return [];
        const { landmark, values } = measurements[k]!;
        const middle = values[1]! * off;
        const [min, max] = [mm(middle * (1 - half)), mm(middle * (1 + half))];
        return [{ landmark, body: null, bodyFrom: null, kind: 'finished', min, max }];
      }),
    );

const tapes = (measurements: readonly MeasurementWanted[]) =>
  fc.array(
    fc.record({
      at: fc.integer({ min: 0, max: measurements.length - 1 }),
      off: share(0.94, 1.06),
      state: fc.constantFrom('asKnit' as const, 'dried' as const, 'rewashed' as const),
    }),
    { maxLength: 2 },
  );

const progress = (kind: GarmentKind) =>
  fc
    .tuple(...outlineOf(kind, {}).pieces.map(() => fc.constantFrom(0, 0.2, 0.5, 0.8, 1)))
    .map((shares) =>
      outlineOf(kind, {}).pieces.map(({ name }, k) => ({ piece: name, share: shares[k]! })),
    );

const needle = fc.constantFrom<Millimetres | null>(null, mm(3.5), mm(4), mm(5));

/** One garment with everything that bears on its routes. */
export const garment: fc.Arbitrary<RoutesQuestion> = fc
  .constantFrom(...GARMENT_KINDS)
  .chain((kind) => fc.record({ kind: fc.constant(kind), measurements: pattern(kind) }))
  .chain(({ kind, measurements }) =>
    fc.record({
      kind: fc.constant(kind),
      measurements: fc.constant(measurements),
      wanted: wishes(measurements),
      tapes: tapes(measurements),
      progress: progress(kind),
      specimens,
      needle,
      drying: fc.constantFrom('lay' as const, 'pin' as const),
      judgeAt: fc.constantFrom('dried' as const, 'worn' as const, 'rewashed' as const),
      repeat: fc.constantFrom(null, { stitches: 4, plus: 2 }),
    }),
  )
  .map(({ tapes: taped, progress: knit, repeat, ...asked }) => ({
    ...QUESTION,
    forecast: {
      ...QUESTION.forecast,
      ...asked,
      patternNeedle: asked.needle,
      mass: null,
      patternGauge: { stitch: mm(STITCH_MM), row: mm(ROW_MM), state: 'asKnit' },
      sizes: SIZES,
      chosen: 1,
      measured: taped.map(({ at, off, state }, k) => ({
        id: `tape-${k}`,
        measurement: asked.measurements[at]!.id,
        state,
        value: mm(asked.measurements[at]!.values[1]! * off),
        span: asked.measurements[at]!.span,
      })),
      pinTo: [],
    },
    people: [],
    tables: false,
    progress: knit,
    progressSaid: true,
    repeat,
  }));
