import { describe, expect, it } from 'vitest';
import { draws } from '../../../../scripts/lib/draws.mjs';
import type { Point } from '../garment/index.ts';
import { randomSource } from '../stats/index.ts';
import { MAT, PINS_ONLY, rectangle, sweaterBack } from './check/pieces.ts';
import { outwardOrder } from './order.ts';
import { openSheet } from './piece-sheet.ts';
import { pinPiece } from './pinned-piece.ts';
import { placementsOf } from './placements.ts';
import { distance } from './plane.ts';
import { axisOf, mirrored } from './symmetry.ts';
import type { EdgeKind, PieceToBlock } from './types.ts';

/** A symmetric piece of two to four levels, its hem and top flat, stretched by up to 9 % each way. */
const random = (seed: number): PieceToBlock => {
  const source = randomSource(seed);
  const between = (a: number, b: number) => a + (b - a) * source.uniform();
  const levels = 2 + Math.floor(3 * source.uniform());
  const right = Array.from(
    { length: levels },
    (_, k): Point => ({ x: between(120, 250), y: 150 * k + between(0, 30) }),
  );
  const left = right.map((p) => mirrored(p, 0)).reverse();
  const outline = [...right, ...left];
  const [fx, fy] = [between(1, 1.09), between(1, 1.09)];
  const wanted = outline.map(({ x, y }) => ({ x: fx * x, y: fy * y }));
  const sides = right.slice(1).map((): EdgeKind => 'selvedge');
  const [top, low] = [levels - 1, levels];
  return {
    ...rectangle([1, 1], [1, 1]),
    outline,
    edges: [...sides, 'cast-on', ...sides, 'bound-off'],
    wanted,
    dimensions: [
      {
        name: 'width',
        landmark: 'width',
        direction: 'width',
        from: top,
        to: low,
        targetMm: distance(wanted[top]!, wanted[low]!),
      },
      {
        name: 'length',
        landmark: 'length',
        direction: 'length',
        from: { x: 0, y: right[0]!.y },
        to: { x: 0, y: right[top]!.y },
        targetMm: wanted[top]!.y - wanted[0]!.y,
      },
    ],
  };
};

const pinned = (piece: PieceToBlock) => {
  const opened = openSheet(piece, 300);
  if (!opened.ok) throw new Error('no mesh');
  const question = { pieces: [], stock: PINS_ONLY, mat: MAT, gentle: false };
  const choosing = { scallopTolerance: 5, goOn: () => true };
  return pinPiece(opened.value, question, choosing).state;
};

/** Solved places are alike within what a solve leaves open where pins give way, mm. */
const SOLVED = 0.5;

const expectSymmetric = (piece: PieceToBlock): void => {
  const axis = axisOf(piece);
  if (axis === null) throw new Error('no axis');
  const state = pinned(piece);
  const { twins } = state.sheet;
  if (twins === null) throw new Error('no twins');
  expect(state.pins.size).toBeGreaterThan(3);
  for (const k of state.pins) {
    expect(state.pins.has(twins[k]!)).toBe(true);
    const to = mirrored(state.targets[k]!, axis);
    expect(distance(state.targets[twins[k]!]!, to)).toBeLessThan(SOLVED);
  }
  const order = outwardOrder(state.sheet, placementsOf(state)).map(({ nodes }) => nodes[0]!);
  for (const [i, k] of order.entries())
    if (twins[k] !== k) expect([order[i - 1], order[i + 1]]).toContain(twins[k]);
};

describe('B15: a symmetric piece gets its pins in pairs', () => {
  it('random symmetric pieces', () => {
    for (let seed = 0; seed < draws(12, 200); seed++) expectSymmetric(random(seed));
  });

  it('a sweater back, little and much stretched', () => {
    expectSymmetric(sweaterBack());
    expectSymmetric(sweaterBack(0.88, 0.9));
  });

  it('a piece that differs on one side has no axis', () => {
    const piece = rectangle([300, 300], [330, 315]);
    expect(axisOf(piece)).toBe(150);
    const [a, b, c, d] = piece.outline as [Point, Point, Point, Point];
    expect(axisOf({ ...piece, outline: [a, { x: b.x + 1, y: 0 }, c, d] })).toBeNull();
    expect(axisOf({ ...piece, edges: ['bound-off', 'seam', 'cast-on', 'selvedge'] })).toBeNull();
    const zone = [a, { x: 50, y: 0 }, { x: 50, y: 300 }];
    expect(axisOf({ ...piece, zones: [{ polygon: zone, kind: 'leave' }] })).toBeNull();
  });
});
