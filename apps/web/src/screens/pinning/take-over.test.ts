import type { PiecePlan, PinPlaced } from '@dryflat/engine/blocking';
import type { MatStep, MatWork } from '@dryflat/record';
import { expect, test } from 'vitest';
import { takeOver } from './take-over.ts';

const MAT = { widthMm: 900, heightMm: 600, tileMm: 0 };
const NOW = '2031-02-20T10:00:00Z';

const step = (
  xMm: number,
  done?: MatStep['done'],
  kind: MatStep['kind'] = 'straight',
): MatStep => ({
  xMm,
  yMm: 0,
  kind,
  edge: 'selvedge',
  on: { from: 0, to: 0 },
  from: [
    { name: 'top left corner of the mat', mm: xMm },
    { name: 'top right corner of the mat', mm: 900 - xMm },
  ],
  pullN: 0,
  ...(kind === 'wire' && { along: { lengthMm: 500, dx: 1, dy: 0 } }),
  ...(done && { done }),
});

const told = (at: number) => ({
  id: `t${at}`,
  step: at,
  at: NOW,
  tapeMm: [null, null],
  felt: 'right' as const,
  measured: [],
});

const workOf = (steps: MatStep[], pinsForWires = 0): MatWork => ({
  id: 'w',
  piece: 'front',
  copy: '',
  mirrored: false,
  layers: 1,
  gentle: true,
  begun: NOW,
  steps,
  lies: { mat: MAT, outline: [0, 0, 1, 0, 1, 1], reaches: [] },
  at: 1,
  told: steps.map((_, k) => told(k)),
  pinsForWires,
  pinned: NOW,
});

const placed = (order: number): PinPlaced => ({
  ...(step(10 * order) as Omit<MatStep, 'from'>),
  on: { from: 0, to: 0 },
  from: [
    { name: 'pin 1', mm: 1 },
    { name: 'pin 2', mm: 2 },
  ],
  along: null,
  order,
  piece: 'front',
});

const planOf = (pins: PinPlaced[], pinsForWires = 0): PiecePlan => {
  const outline = [
    { x: 0, y: 0 },
    { x: 5, y: 0 },
    { x: 5, y: 5 },
  ];
  return {
    pins,
    pinsForWires,
    measurements: [],
    outlines: { rest: outline, wanted: outline, pinned: outline },
  } as unknown as PiecePlan;
};

test('PN11: what is in stays with its number, the rest is new, and the next open step is shown', () => {
  const work = workOf([step(1, 'in'), step(2), step(3, 'in'), step(4, 'passed'), step(5)]);
  takeOver(work, planOf([placed(4), placed(5)]), []);
  expect(work.steps.map(({ xMm, done }) => [xMm, done])).toEqual([
    [1, 'in'],
    [2, 'passed'],
    [3, 'in'],
    [40, undefined],
    [50, undefined],
  ]);
  expect([work.at, work.pinned]).toEqual([3, undefined]);
  expect(work.told.map(({ step }) => step)).toEqual([0, 1, 2]);
  expect(work.lies!.outline).toEqual([0, 0, 5, 0, 5, 5]);
});

test('PN11: pins of wires that are in stay counted, beside those of the new plan', () => {
  const work = workOf([step(1, 'in', 'wire'), step(2, undefined, 'wire')], 4);
  takeOver(work, planOf([placed(2)], 1), []);
  expect(work.pinsForWires).toBe(2 + 1);
});

test('PN11: a step that the tape found elsewhere stands there, with the distances that are so', () => {
  const work = workOf([step(100, 'in'), step(200)]);
  const to = { x: 120, y: 50 };
  takeOver(work, planOf([]), [
    { kind: 'straight', on: { from: 0, to: 0 }, along: null, to, order: 1 },
  ]);
  expect([work.steps[0]!.xMm, work.steps[0]!.yMm]).toEqual([120, 50]);
  expect(work.steps[0]!.from.map(({ mm }) => mm)).toEqual([
    Math.hypot(120, 50),
    Math.hypot(780, 50),
  ]);
});
