import fc from 'fast-check';
import { expect, test } from 'vitest';
import { mm } from '../units/index.ts';
import { NEEDLES, nearestNeedle, needleFromUkOld, needleFromUs } from './needles.ts';

// Published conversion charts, in agreement.
test.each([
  ['0', 2],
  ['1', 2.25],
  ['2', 2.75],
  ['3', 3.25],
  ['4', 3.5],
  ['5', 3.75],
  ['6', 4],
  ['7', 4.5],
  ['8', 5],
  ['9', 5.5],
  ['10', 6],
  ['US 10 1/2', 6.5],
  ['10.5', 6.5],
  ['11', 8],
  ['13', 9],
  ['15', 10],
] as const)('T6: US %s is %d mm', (us, size) => {
  const result = needleFromUs(us);
  expect(result.ok && result.value).toBe(size);
});

test.each([
  ['14', 2],
  ['10', 3.25],
  ['8', 4],
  ['UK 7', 4.5],
  ['3', 6.5],
  ['000', 10],
] as const)('T6: old UK %s is %d mm', (uk, size) => {
  const result = needleFromUkOld(uk);
  expect(result.ok && result.value).toBe(size);
});

test('T6: sizes rise, and no name is given twice', () => {
  const sizes = NEEDLES.map((each) => each.size);
  expect([...sizes].sort((a, b) => a - b)).toEqual(sizes);
  for (const system of ['us', 'ukOld'] as const) {
    const names = NEEDLES.map((each) => each[system]).filter((name) => name !== null);
    expect(new Set(names).size).toBe(names.length);
  }
});

test('T6: a size that no chart has is a fault that repeats it', () => {
  const result = needleFromUs('12');
  expect(result.ok).toBe(false);
  if (!result.ok) expect(result.faults[0]).toMatchObject({ code: 'needle-unknown', given: '12' });
});

test('T6: every size is nearest to itself, and nothing is nearer', () => {
  for (const each of NEEDLES) expect(nearestNeedle(each.size)).toBe(each);
  fc.assert(
    fc.property(fc.double({ min: 0.5, max: 40, noNaN: true }), (size) => {
      const gap = Math.abs(nearestNeedle(mm(size)).size - size);
      for (const each of NEEDLES) expect(Math.abs(each.size - size)).toBeGreaterThanOrEqual(gap);
    }),
  );
});
