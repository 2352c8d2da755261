import { describe, expect, it, test } from 'vitest';
import { planOf } from './check/mat.ts';
import { rectangle, sweaterBack } from './check/pieces.ts';
import { solveWith } from './lie.ts';
import { scaleEnd, stretchReader } from './mean-stretch.ts';
import { openSheet, type PieceSheet } from './piece-sheet.ts';

const sheetOf = (piece: Parameters<typeof openSheet>[0], nodes: number): PieceSheet => {
  const opened = openSheet(piece, nodes);
  if (!opened.ok) throw new Error('no mesh');
  return opened.value;
};

/** The whole edge carried to `wide` and `high` times its size. */
const stretched = (sheet: PieceSheet, wide: number, high: number) =>
  solveWith(sheet, {
    held: [],
    slides: [],
    pins: sheet.ring.map(({ node, rest }) => ({ node, x: wide * rest.x, y: high * rest.y })),
  });

const MIDDLE = { x: 150, y: 300 };

describe('B23: how far the fabric is stretched', () => {
  it.each([100, 400])('on %i nodes, stretched evenly, it is that everywhere', (nodes) => {
    const sheet = sheetOf(rectangle([300, 200], [300, 200]), nodes);
    const eq = stretched(sheet, 1.08, 1.03);
    expect(eq.converged).toBe(true);
    const { overWet, ofLimit } = stretchReader(sheet)(eq);
    // Means of one number, in rounding.
    for (const each of overWet) expect(each).toBeCloseTo(0.08, 6);
    const { width, length } = sheet.piece.fabric.constants;
    const edge = Math.min(...sheet.ring.map(({ limit }) => limit));
    expect(ofLimit).toBeGreaterThanOrEqual(Math.max(0.08 / width.limit, 0.03 / length.limit));
    expect(ofLimit).toBeLessThanOrEqual(0.08 / Math.min(edge, width.limit, length.limit) + 1e-6);
  });

  it('an edge is read along itself, and names itself where it is the worst', () => {
    const piece = rectangle([300, 200], [300, 200]);
    const sheet = sheetOf(piece, 300);
    // Only the lower edge, y = −200, is pulled out along itself, as far again as it is long beyond its middle.
    const low = sheet.ring.filter(({ rest }) => rest.y < -199.9);
    const pins = low.map(({ node, rest }) => ({ node, x: 150 + 1.12 * (rest.x - 150), y: rest.y }));
    // Its sides, pinned nowhere, may fold in beside it.
    const eq = solveWith(sheet, { held: [], pins, slides: [] }, true);
    const { overWet, worst, ofLimit } = stretchReader(sheet)(eq);
    expect(worst.edge).not.toBeNull();
    expect(worst.along).toBe('width');
    expect(overWet[worst.node]).toBeCloseTo(0.12, 3);
    const line = sheet.ring.find(({ node }) => node === low[1]!.node)!.limit;
    expect(ofLimit).toBeCloseTo(0.12 / line, 3);
  });

  it('a point that is pulled out has no more of it on a finer mesh', () => {
    const piece = rectangle([300, 300], [300, 300]);
    const peaks = [150, 600, 2400].map((nodes) => {
      const sheet = sheetOf({ ...piece, pinned: [{ at: MIDDLE, to: MIDDLE }] }, nodes);
      // The corners stay; the middle of the lower edge is drawn down by 20 mm.
      const pins = sheet.ring
        .filter(({ role }) => role === 'corner' || role === 'asked')
        .map(({ node, rest, role }) => ({
          node,
          x: rest.x,
          y: role === 'asked' ? rest.y - 20 : rest.y,
        }));
      const eq = solveWith(sheet, { held: [], pins, slides: [] });
      const { overWet, worst } = stretchReader(sheet)(eq);
      return { mean: overWet[worst.node]!, raw: Math.max(...eq.use) };
    });
    // What a triangle has rises with every mesh, without end; the mean around it settles.
    expect(peaks[2]!.raw).toBeGreaterThan(1.15 * peaks[1]!.raw);
    expect(Math.abs(peaks[2]!.mean / peaks[1]!.mean - 1)).toBeLessThan(0.05);
  });

  it('plans of a back on two meshes tell the same of it, within 5 %', () => {
    const uses = [300, 800].map((nodes) => planOf(sweaterBack(), {}, nodes).stretchUse.max);
    const mean = uses.reduce((sum, each) => sum + each / uses.length, 0);
    for (const use of uses) expect(Math.abs(use / mean - 1)).toBeLessThan(0.05);
  });
});

test('B23: a scale ends at the first of its ends that holds the largest', () => {
  expect([0, 0.05, 0.06, 0.14, 0.9, 50].map(scaleEnd)).toEqual([0.05, 0.05, 0.1, 0.2, 1.6, 6.4]);
});
