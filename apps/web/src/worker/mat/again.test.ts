import { mirroredInMat, planBlock } from '@dryflat/engine/blocking';
import { findExample, type GarmentRecord } from '@dryflat/record';
import { askBlockingWith, USUAL_STOCK } from '@dryflat/record/block';
import { expect, test } from 'vitest';
import { draws } from '../../../../../scripts/lib/draws.mjs';
import { planAgain } from './again.ts';
import { HAND_NODES } from './hand.ts';
import type { AgainQuestion } from './protocol.ts';

// The front of the waistcoat takes three times as long.
const { record } = findExample(draws('lace-shawl', 'waistcoat'))!;

/** The first piece with its first three pins in, so that left and right are not alike. */
const question = (record: GarmentRecord): AgainQuestion => {
  const asked = askBlockingWith(record, true);
  if (!asked.ok) throw new Error(asked.faults[0]?.problem);
  const piece = asked.value.question.pieces[0]!;
  const made = planBlock({ ...asked.value.question, pieces: [piece] }, { nodes: HAND_NODES });
  if (!made.ok) throw new Error(made.faults[0]?.problem);
  const { pins, measurements } = made.value.pieces[0]!;
  return {
    record,
    piece: piece.name,
    gentle: true,
    mirrored: false,
    mat: asked.value.question.mat,
    inMat: pins.slice(0, 3).map(({ kind, on, along, xMm, yMm, order }) => ({
      kind,
      on,
      along,
      order,
      to: { x: xMm, y: yMm },
    })),
    readings: [],
    left: { straight: 12, tPins: 6, combs: [], wires: [] },
    before: { pins: pins.slice(3), measurements },
  };
};

test('MV9: the rest is planned with what is left, after what is in; left and right exchanged, the answer is too', () => {
  const asked = question(record);
  const done: number[] = [];
  const plain = planAgain(asked, (share) => done.push(share));
  if (!plain.ok) throw new Error(plain.faults[0]?.problem);
  const { pins } = plain.value.replanned.plan;
  expect(pins.length).toBeGreaterThan(0);
  expect(pins.length).toBeLessThanOrEqual(12 + 6);
  expect(pins.map(({ order }) => order)).toEqual(pins.map((_, k) => 4 + k));
  expect(plain.value.replanned.changes.length).toBeGreaterThan(0);
  expect(done.every((share) => share >= 0 && share <= 1)).toBe(true);

  const other = planAgain(
    { ...asked, mirrored: true, inMat: mirroredInMat(asked.inMat, asked.mat) },
    () => {},
  );
  if (!other.ok) throw new Error(other.faults[0]?.problem);
  const { widthMm } = asked.mat;
  other.value.replanned.plan.pins.forEach((pin, k) => {
    // Exchanged twice: rounding of the mat's width.
    expect(pin.xMm).toBeCloseTo(widthMm - pins[k]!.xMm, 6);
    expect(pin.yMm).toBeCloseTo(pins[k]!.yMm, 6);
  });
});

test('MV9: where nothing was told and nothing ran out, nothing changes, though a dimension is out of reach', () => {
  const linen = findExample('linen-top')!.record;
  const made = planAgain({ ...question(linen), left: linen.plan.stock ?? USUAL_STOCK }, () => {});
  if (!made.ok) throw new Error(made.faults[0]?.problem);
  const { changes, plan } = made.value.replanned;
  expect(plan.couldNot.length).toBeGreaterThan(0);
  expect(changes).toEqual([]);
});

test('MV9: a piece that the garment no longer has is a fault that names it', () => {
  const nothing = {
    mirrored: false,
    inMat: [],
    readings: [],
    before: { pins: [], measurements: [] },
  };
  const left = { straight: 1, tPins: 0, combs: [], wires: [] };
  const mat = { widthMm: 900, heightMm: 900, tileMm: 0 };
  const asked = { ...nothing, record, piece: 'tail', gentle: true, mat, left };
  const made = planAgain(asked, () => {});
  expect(!made.ok && made.faults.map(({ field, given }) => [field, given])).toEqual([
    ['piece', 'tail'],
  ]);
});
