import * as fc from 'fast-check';
import type { CountReading, Direction, ExtentReading, Specimen } from '../../fabric/index.ts';
import { mm } from '../../units/index.ts';
import type { MeasuredOnGarment } from '../forecast-types.ts';

/** Evidence of a fabric of about 20 stitches and 28 rows over 10 cm, as knitters write it down. */

const direction = fc.constantFrom<Direction>('width', 'length');
const restState = fc.constantFrom('asKnit', 'wet', 'dried', 'rewashed') as fc.Arbitrary<
  CountReading['state']
>;
const place = fc.option(fc.constantFrom('left', 'middle', 'right'));

const countReading = fc
  .record({
    direction,
    state: restState,
    place,
    over: fc.constantFrom(50, 100, 101.6, 150),
    per100: fc.double({ min: 0.8, max: 1.25, noNaN: true }),
    read: fc.constantFrom<'flat' | 'stretched'>('flat', 'flat', 'flat', 'stretched'),
  })
  .map(({ per100, over, ...rest }): Omit<CountReading, 'id'> => {
    const typical = rest.direction === 'width' ? 20 : 28;
    const count = Math.max(2, Math.round((typical * per100 * over) / 50) / 2);
    return { kind: 'count', ...rest, over: mm(over), count };
  });

const extentReading = fc
  .record({
    direction,
    state: restState,
    place,
    extent: fc.integer({ min: 100, max: 700 }),
    known: fc.boolean(),
  })
  .map(({ known, extent, ...rest }): Omit<ExtentReading, 'id'> => {
    const pitch = rest.direction === 'width' ? 5 : 3.6;
    return {
      kind: 'extent',
      read: 'flat',
      ...rest,
      extent: mm(extent),
      count: known ? Math.round(extent / pitch) : null,
    };
  });

export const specimen = fc
  .record({
    kind: fc.constantFrom<Specimen['kind']>('swatch', 'part', 'piece', 'past-garment'),
    stitch: fc.constantFrom<Specimen['stitch']>('stockinette', 'stockinette', 'garter'),
    workedAsGarment: fc.boolean(),
    washed: fc.constantFrom<Specimen['washed']>('not', 'as-garment', 'otherwise'),
    width: fc.option(fc.integer({ min: 80, max: 300 }).map(mm)),
    readings: fc.array(fc.oneof(countReading, extentReading), { minLength: 1, maxLength: 5 }),
  })
  .map(
    (s): Omit<Specimen, 'id'> => ({
      ...s,
      name: s.kind,
      height: s.width,
      readings: s.readings.map((r, k) => ({ ...r, id: `r${k}` })),
    }),
  );

/** Up to four specimens with ids of their own. */
export const specimens = fc
  .array(specimen, { maxLength: 4 })
  .map((list): Specimen[] => list.map((s, k) => ({ ...s, id: `s${k}` })));

/** A tape reading of the chest or the armhole, at rest. */
export const tape = fc
  .record({
    state: fc.constantFrom('asKnit', 'wet', 'dried', 'rewashed') as fc.Arbitrary<
      MeasuredOnGarment['state']
    >,
    where: fc.constantFrom('chest', 'armhole-depth', 'body-length'),
    off: fc.double({ min: 0.9, max: 1.1, noNaN: true }),
  })
  .map(({ state, where, off }): Omit<MeasuredOnGarment, 'id'> => {
    const flatMm = { chest: 520, 'armhole-depth': 204, 'body-length': 596 }[where] ?? 100;
    return { measurement: where, state, value: mm(flatMm * off), span: 'flat' };
  });

export const tapes = fc
  .array(tape, { maxLength: 3 })
  .map((list): MeasuredOnGarment[] => list.map((t, k) => ({ ...t, id: `t${k}` })));
