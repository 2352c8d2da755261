import { expect, test } from 'vitest';
import { peirceDiameter } from '../textile/index.ts';
import { mm } from '../units/index.ts';
import {
  CLOSE_LOOP,
  isSlack,
  JAMMING_RATIO,
  PEIRCE_DIAMETERS,
  peirceLoopLength,
} from './peirce-loop.ts';

test("L3: Peirce's closest loop has Chamberlain's jamming ratio", () => {
  // 2 · 3.364 + 4 + 5.94 = 16.668; Kurbak 2016 prints 16.6688. The row is known to three decimals,
  // and counts twice: 0.001.
  const loop = peirceLoopLength({
    stitch: mm(CLOSE_LOOP.stitch.low),
    row: mm(CLOSE_LOOP.row.low),
    diameter: mm(1),
  });
  expect(loop).toBeCloseTo(16.668, 9);
  expect(Math.abs(loop - JAMMING_RATIO.low)).toBeLessThan(0.001);
});

test('L3: yarn grows by two row heights, one stitch width and 5.94 diameters', () => {
  const loop = (stitch: number, row: number, diameter: number) =>
    peirceLoopLength({ stitch: mm(stitch), row: mm(row), diameter: mm(diameter) });
  expect(loop(5, 4, 0.8) - loop(4, 4, 0.8)).toBeCloseTo(1, 12);
  expect(loop(5, 4, 0.8) - loop(5, 3, 0.8)).toBeCloseTo(2, 12);
  expect(loop(5, 4, 0.8) - loop(5, 4, 0)).toBeCloseTo(PEIRCE_DIAMETERS.low * 0.8, 12);
});

test('L3: a usual hand-knit loop is slack, a close one is not', () => {
  // Worsted of 200 m per 100 g (500 tex, 0.84 mm at 1.1 cm³/g), 19 mm of yarn per stitch.
  expect(isSlack(mm(19), peirceDiameter(500))).toBe(true);
  expect(isSlack(mm(16.7), mm(1))).toBe(false);
});
