import type { PiecePlan, PinPlaced } from '@dryflat/engine/blocking';
import { expect, test } from 'vitest';
import { freeze, layAgain, placedOf } from './freeze.ts';

const MAT = { widthMm: 900, heightMm: 600, tileMm: 300 };
const range = (mm: number) => ({ p05Mm: mm - 5, p50Mm: mm, p95Mm: mm + 5 });

const pin = (order: number, xMm: number, yMm: number, from: PinPlaced['from']): PinPlaced => ({
  xMm,
  yMm,
  kind: 'straight',
  order,
  piece: 'front',
  edge: 'selvedge',
  on: { from: order, to: order },
  from,
  pullN: 0.2,
  along: null,
});

const PINS = [
  pin(1, 200, 100, [
    { name: 'top left corner of the mat', mm: Math.hypot(200, 100) },
    { name: 'tile crossing 1 from the left, 1 from the top', mm: Math.hypot(100, 200) },
  ]),
  pin(2, 500, 100, [
    { name: 'pin 1', mm: 300 },
    { name: 'top right corner of the mat', mm: Math.hypot(400, 100) },
  ]),
];

const outline = [
  { x: 200, y: 100 },
  { x: 500, y: 100 },
  { x: 500, y: 400.06 },
];
const PLAN = {
  name: 'front',
  layers: 2,
  pins: PINS,
  pinsForWires: 3,
  measurements: [
    {
      name: 'chest',
      landmark: 'chest',
      direction: 'width',
      restMm: 290,
      targetMm: 300,
      toleranceMm: 5,
      reachedMm: range(300),
      afterDryingMm: range(296),
      afterRewashMm: range(292),
      within: true,
    },
  ],
  stretchUse: {
    max: 0,
    where: { x: 0, y: 0 },
    along: 'width',
    field: { points: [], triangles: [], overWet: [] },
  },
  outlines: { rest: outline, wanted: outline, pinned: outline },
} as unknown as PiecePlan;

const BEGUN = { id: 'w', copy: 'left', begun: '2031-02-20T10:00:00Z' };
const laid = freeze(PLAN, MAT, { ...BEGUN, gentle: true, mirrored: false });

test('PN5: a plan laid down holds its steps, how it lies and what it comes to', () => {
  expect(laid.steps.map((step, k) => placedOf(step, k + 1, 'front'))).toEqual(PINS);
  expect(laid.lies).toEqual({
    mat: MAT,
    outline: [200, 100, 500, 100, 500, 400.1],
    reaches: [{ landmark: 'chest', targetMm: 300, pinnedMm: 300, dryLowMm: 291, dryHighMm: 301 }],
  });
  expect([laid.layers, laid.pinsForWires, laid.at, laid.copy]).toEqual([2, 3, 0, 'left']);
});

test('PN5: its mirror has left and right exchanged with the same distances, and twice is the same again', () => {
  const other = layAgain(laid, { ...BEGUN, copy: 'right' }, true)!;
  expect(other.mirrored).toBe(true);
  expect(other.steps.map(({ xMm }) => xMm)).toEqual([700, 400]);
  expect(other.steps[0]!.from.map(({ name }) => name)).toEqual([
    'top right corner of the mat',
    'tile crossing 2 from the left, 1 from the top',
  ]);
  expect(other.steps[1]!.from).toEqual([
    { name: 'pin 1', mm: 300 },
    { name: 'top left corner of the mat', mm: Math.hypot(400, 100) },
  ]);
  expect(other.lies!.outline).toEqual([700, 100, 400, 100, 400, 400.1]);
  expect(layAgain(other, BEGUN, true)).toEqual(laid);
  expect(layAgain(other, BEGUN, false)!.steps).toEqual(other.steps);
});

test('PN5: the mirror of a plan is laid down like the mirror of what was laid', () => {
  const mirrored = freeze(PLAN, MAT, { ...BEGUN, gentle: true, mirrored: true });
  expect(mirrored).toEqual(layAgain(laid, BEGUN, true));
});

test('PN5: work without what steps hold cannot be laid again', () => {
  const { on: _on, ...step } = laid.steps[0]!;
  expect(layAgain({ ...laid, steps: [step] }, BEGUN, true)).toBeNull();
});
