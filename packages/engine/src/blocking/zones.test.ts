import { describe, expect, it } from 'vitest';
import { MAT, PINS_ONLY, rectangle, sweaterBack } from './check/pieces.ts';
import { openSheet } from './piece-sheet.ts';
import { pinPiece } from './pinned-piece.ts';
import { inside } from './plane.ts';
import type { PieceToBlock, Zone } from './types.ts';

/** The lowest `depth` mm of a piece, a millimetre beyond its edges. */
const lowest = (piece: PieceToBlock, depth: number): Zone['polygon'] => {
  const [xs, ys] = [piece.outline.map(({ x }) => x), piece.outline.map(({ y }) => y)];
  const [left, right, low] = [Math.min(...xs) - 1, Math.max(...xs) + 1, Math.max(...ys) + 1];
  const high = low - 1 - depth;
  return [
    { x: left, y: high },
    { x: right, y: high },
    { x: right, y: low },
    { x: left, y: low },
  ];
};

/** Rest places of all that is held well inside the zone, and the ends of dimensions. */
const pinnedIn = (piece: PieceToBlock, zone: Zone) => {
  const opened = openSheet({ ...piece, zones: [zone] }, 300);
  if (!opened.ok) throw new Error('no mesh');
  const { ring } = opened.value;
  const question = { pieces: [], stock: PINS_ONLY, mat: MAT, gentle: false };
  const choosing = { scallopTolerance: 5, goOn: () => true };
  const { state, rulers } = pinPiece(opened.value, question, choosing);
  const held = state.fixed().map((k) => ({ x: ring[k]!.rest.x, y: -ring[k]!.rest.y, k }));
  // A hair above, the zone begins: its corners with the free edge may be pinned.
  const top = Math.min(...zone.polygon.map(({ y }) => y));
  const within = held.filter((at) => inside(zone.polygon, at) && at.y > top + 1);
  // Of a symmetric piece the mirror image of an end is one too.
  const ends = rulers.flatMap(({ from, to }) => [from, to]);
  const twins = ends.map((k) => opened.value.twins?.[k] ?? k);
  return { within, all: held.length, ends: new Set([...ends, ...twins]) };
};

const PIECES: readonly (readonly [string, PieceToBlock, number])[] = [
  ['a rectangle', rectangle([300, 300], [330, 315]), 50],
  ['a shallow band', rectangle([400, 300], [420, 310]), 20],
  ['a sweater back', sweaterBack(), 60],
];

describe('B11: no pin lies in a zone left alone unless it ends a pinned dimension', () => {
  it.each(PIECES)('%s with ribbing', (_, piece, depth) => {
    const { within, all, ends } = pinnedIn(piece, { polygon: lowest(piece, depth), kind: 'rib' });
    expect(all).toBeGreaterThan(within.length);
    expect(within.filter(({ k }) => !ends.has(k))).toEqual([]);
    // Two corners, and the place where a length ends between them with its mirror image.
    expect(within.length).toBeLessThanOrEqual(4);
  });

  it.each(PIECES)('%s with a part that is left gets none there', (_, piece, depth) => {
    const { within, all } = pinnedIn(piece, { polygon: lowest(piece, depth), kind: 'leave' });
    expect(all).toBeGreaterThan(2);
    expect(within).toEqual([]);
  });

  it('ribbing is still held in length', () => {
    const piece = rectangle([300, 300], [330, 330]);
    const { within } = pinnedIn(piece, { polygon: lowest(piece, 50), kind: 'rib' });
    expect(within.length).toBeGreaterThan(0);
  });
});
