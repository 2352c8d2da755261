import { expect, test } from 'vitest';
import { mm } from '../../units/index.ts';
import type { CountReading, Direction, ExtentReading, Specimen } from '../specimen.ts';
import { weighedFrom } from './weighed-from.ts';

const count = (direction: Direction, n: number, over: number): CountReading => ({
  kind: 'count',
  id: `${direction}-${n}`,
  direction,
  count: n,
  over: mm(over),
  state: 'dried',
  read: 'flat',
  place: null,
});
const extent = (direction: Direction, length: number, n: number | null): ExtentReading => ({
  kind: 'extent',
  id: `${direction}-extent`,
  direction,
  extent: mm(length),
  count: n,
  state: 'dried',
  read: 'flat',
  place: null,
});
const specimen = (readings: Specimen['readings'], size: number | null = null): Specimen => ({
  id: 's',
  name: 'Swatch',
  kind: 'swatch',
  stitch: 'stockinette',
  workedAsGarment: true,
  washed: 'as-garment',
  width: size === null ? null : mm(size),
  height: size === null ? null : mm(size),
  readings,
});

test('Y2: counted extents are exact', () => {
  const made = weighedFrom(specimen([extent('width', 160, 32), extent('length', 150, 42)]), 14);
  expect(made).toMatchObject({ across: 32, up: 42, counts: 'counted', massG: 14 });
});

test('Y2: without counts its stitches are its extents times its gauge, all readings alike', () => {
  const readings = [count('width', 20, 100), count('width', 21, 100), count('length', 28, 100)];
  expect(weighedFrom(specimen(readings, 200), 14)).toMatchObject({
    across: expect.closeTo(41, 9),
    up: expect.closeTo(56, 9),
    counts: 'from-extents',
  });
  const half = [extent('width', 160, 32), extent('length', 150, null), count('length', 28, 100)];
  expect(weighedFrom(specimen(half), 14)).toMatchObject({
    across: 32,
    up: expect.closeTo(42, 9),
    counts: 'from-extents',
  });
});

test('Y2: without stitches, or without rows, a mass tells nothing; nor do stretched readings', () => {
  expect(weighedFrom(specimen([], 200), 14)).toBeNull();
  expect(weighedFrom(specimen([extent('width', 160, 32)]), 14)).toBeNull();
  const stretched: CountReading = { ...count('length', 20, 100), read: 'stretched' };
  expect(weighedFrom(specimen([count('width', 20, 100), stretched], 200), 14)).toBeNull();
});
