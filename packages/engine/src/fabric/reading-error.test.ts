import { expect, test } from 'vitest';
import { mm } from '../units/index.ts';
import {
  countResolution,
  countSd,
  edgeSd,
  extentSd,
  garmentTapeSd,
  roundingSd,
} from './reading-error.ts';
import type { CountReading, Specimen } from './specimen.ts';

const reading = (over: number): CountReading => ({
  kind: 'count',
  id: 'r',
  direction: 'width',
  count: 20,
  over: mm(over),
  state: 'dried',
  read: 'flat',
  place: null,
});

const swatch = (width: number | null): Specimen => ({
  id: 's',
  name: 'Swatch',
  kind: 'swatch',
  stitch: 'stockinette',
  workedAsGarment: true,
  washed: 'as-garment',
  width: width === null ? null : mm(width),
  height: null,
  readings: [],
});

test('K1: a count of whole stitches errs by 1/√12 = 0.29 stitch, a half-stitch count by half of that', () => {
  // Variance of a uniform distribution of width h is h²/12 (any table of distributions).
  expect(roundingSd(20) * 20).toBeCloseTo(0.2887, 4);
  expect(roundingSd(20.5) * 20.5).toBeCloseTo(0.1443, 4);
  expect([21, 21.5, 21.25, 21.2].map(countResolution)).toEqual([1, 0.5, 0.25, 0.1]);
});

test('K2: half a stitch at 20 over 4 in is 2.5 %, and half of that over 8 in', () => {
  // Arithmetic: ½ / 20 and ½ / 40; the SD is the half-width over √3.
  expect(roundingSd(20) * Math.sqrt(3)).toBeCloseTo(0.025, 12);
  expect(roundingSd(40) * Math.sqrt(3)).toBeCloseTo(0.0125, 12);
});

test('K3: counting close to the edge of a small swatch costs doubt, a wide margin does not', () => {
  expect(edgeSd(reading(100), swatch(150))).toBe(0);
  expect(edgeSd(reading(100), swatch(130))).toBe(0.01);
  expect(edgeSd(reading(100), swatch(105))).toBe(0.02);
  expect(edgeSd(reading(100), swatch(null))).toBe(0.01);
  expect(countSd(reading(100), swatch(105))).toBeGreaterThan(countSd(reading(100), swatch(150)));
});

test('K4: a longer piece is measured more surely, in proportion', () => {
  expect(garmentTapeSd(1000)).toBeLessThan(garmentTapeSd(300));
  const extent = {
    kind: 'extent',
    id: 'e',
    direction: 'width',
    state: 'dried',
    read: 'flat',
    place: null,
  } as const;
  const known = extentSd({ ...extent, extent: mm(400), count: 80 });
  const unknown = extentSd({ ...extent, extent: mm(400), count: null });
  expect(known).toBeGreaterThan(unknown);
});
