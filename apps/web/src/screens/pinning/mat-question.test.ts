import type { MatStep, MatTold, MatWork } from '@dryflat/record';
import { emptyRecord } from '@dryflat/record';
import { expect, test } from 'vitest';
import { againQuestion, inMatOf, leftInBox, toldAt } from './mat-question.ts';

const MAT = { widthMm: 900, heightMm: 600, tileMm: 300 };
const NOW = '2031-02-20T10:00:00Z';

const step = (
  xMm: number,
  yMm: number,
  from: MatStep['from'],
  done?: MatStep['done'],
): MatStep => ({
  xMm,
  yMm,
  kind: 'straight',
  edge: 'selvedge',
  on: { from: 0, to: 0 },
  from,
  pullN: 0,
  ...(done && { done }),
});

const told = (at: number, tapeMm: MatTold['tapeMm'], part: Partial<MatTold> = {}): MatTold => ({
  id: `t${at}`,
  step: at,
  at: NOW,
  tapeMm,
  felt: 'right',
  measured: [],
  ...part,
});

const workOf = (part: Partial<MatWork> = {}): MatWork => ({
  id: 'w',
  piece: 'front',
  copy: '',
  mirrored: false,
  layers: 1,
  gentle: true,
  begun: NOW,
  steps: [
    step(
      300,
      300,
      [
        { name: 'top left corner of the mat', mm: Math.hypot(300, 300) },
        { name: 'top right corner of the mat', mm: Math.hypot(600, 300) },
      ],
      'in',
    ),
    step(300, 100, [
      { name: 'pin 1', mm: 200 },
      { name: 'top left corner of the mat', mm: Math.hypot(300, 100) },
    ]),
  ],
  lies: {
    mat: MAT,
    outline: [0, 0, 1, 0, 1, 1],
    reaches: [{ landmark: 'chest', targetMm: 500, pinnedMm: 495, dryLowMm: 480, dryHighMm: 500 }],
  },
  at: 1,
  told: [],
  pinsForWires: 0,
  ...part,
});

const record = emptyRecord({ id: 'g', name: 'G', kind: 'vest' });

test('PN10: what is in stands where the tape found it, else where it was planned', () => {
  const planned = inMatOf(workOf(), MAT);
  expect(planned.ok && planned.value.map(({ to, order }) => [to, order])).toEqual([
    [{ x: 300, y: 300 }, 1],
  ]);
  const tape = [Math.hypot(310, 290), Math.hypot(590, 290)];
  const found = inMatOf(workOf({ told: [told(0, tape)] }), MAT);
  // Two circles meet to rounding.
  expect(found.ok && found.value[0]!.to.x).toBeCloseTo(310, 6);
  expect(found.ok && found.value[0]!.to.y).toBeCloseTo(290, 6);
});

test('PN10: tapes that cannot meet are a fault that names the step and the field', () => {
  const found = inMatOf(workOf({ told: [told(0, [10, 20])] }), MAT);
  expect(found.ok).toBe(false);
  expect(!found.ok && found.faults[0]!.field).toBe('step 1, tape');
});

test('PN10: one tape that puts a pin beyond any mat is a fault that names the step', () => {
  const found = inMatOf(workOf({ told: [told(0, [50_000, null])] }), MAT);
  expect(!found.ok && found.faults.map(({ code, field }) => [code, field])).toEqual([
    ['mat-tape-away', 'step 1, tape'],
  ]);
});

test('PN10: a step that does not say what it holds is a fault, and is named', () => {
  const work = workOf();
  delete work.steps[0]!.on;
  const found = inMatOf(work, MAT);
  expect(!found.ok && found.faults[0]!.field).toBe('step 1');
});

test('PN10: the last of what was told of a step counts', () => {
  const [first, last] = [told(0, [1, 2]), told(0, [3, 4])];
  expect(toldAt({ told: [first, last] }, 0)).toBe(last);
  expect(toldAt({ told: [first] }, 1)).toBeUndefined();
});

test('PN10: the question holds what is in, what was told while it lay so, the box and what was to come', () => {
  const measured = [{ landmark: 'chest', mm: 490 }];
  const asked = againQuestion(
    workOf({ told: [told(0, [null, null], { felt: 'at-limit', measured })] }),
    record,
  );
  if (!asked.ok) throw new Error('it was refused');
  expect(asked.value.readings).toEqual([{ afterStep: 1, felt: 'at-limit', measured }]);
  expect(asked.value.before.pins.map(({ order }) => order)).toEqual([2]);
  expect(asked.value.before.measurements).toEqual([
    { landmark: 'chest', name: 'chest', reachedMm: { p50Mm: 495 } },
  ]);
  expect(asked.value.mat).toEqual(MAT);
});

test('PN10: what was told at a step before any pin is in is no reading of the piece', () => {
  const work = workOf({ told: [told(0, [null, null], { felt: 'slack' })] });
  delete work.steps[0]!.done;
  const asked = againQuestion(work, record);
  expect(asked.ok && asked.value.readings).toEqual([]);
});

test('PN10: the box is what was said, else what the plan began with less what is in', () => {
  const stock = { straight: 10, tPins: 4, combs: [], wires: [] };
  const stocked = { ...record, plan: { ...record.plan, stock } };
  expect(leftInBox(workOf(), stocked)).toEqual({ ...stock, straight: 9 });
  const extra = { straight: 2, tPins: 1, combs: 0, wires: 0 };
  expect(leftInBox(workOf({ extra }), stocked)).toEqual({ ...stock, straight: 7, tPins: 3 });
  const left = { straight: 1, tPins: 0, combs: [], wires: [] };
  expect(leftInBox(workOf({ left }), stocked)).toEqual(left);
});
