import { describe, expect, it } from 'vitest';
import { once } from '../../../../scripts/lib/once.mjs';
import { MAT, PINS_ONLY, rectangle } from './check/pieces.ts';
import { planBlock } from './plan.ts';
import type { MatSpec, PieceToBlock } from './types.ts';

/** A shawl twice as long as the mat, wanted a little larger than it lies. */
const shawl = (): PieceToBlock => rectangle([1800, 500], [1836, 510]);

const planned = (piece: PieceToBlock, mat: MatSpec) => {
  const made = planBlock({ pieces: [piece], stock: PINS_ONLY, mat, gentle: false }, { nodes: 200 });
  if (!made.ok) throw new Error(JSON.stringify(made.faults));
  return { plan: made.value.pieces[0]!, notices: made.value.notices };
};

const onTiles = once(() => planned(shawl(), MAT));

describe('B24: a piece that is larger than the mat', () => {
  it('is said first, with what would do', () => {
    const [first] = onTiles().notices;
    expect(first!.code).toBe('mat-too-small');
    // 1836 by 510 on tiles of 300: seven by two, and the mat has nine.
    expect(first!.text).toContain(
      'Lay out 14 tiles, 7 across and 2 down: 5 more than the mat has.',
    );
    expect(first!.text).toContain('on a carpet');
    expect(first!.text).not.toContain('Folded');
  });

  it('is planned for what it takes: every place and every distance lies on that', () => {
    const { plan } = onTiles();
    expect(plan).toMatchObject({
      fitsMat: false,
      laidOn: { widthMm: 2100, heightMm: 600, tileMm: 300 },
    });
    const most = Math.hypot(2100, 600);
    for (const { xMm, yMm, from } of plan.pins) {
      expect(xMm).toBeGreaterThanOrEqual(0);
      expect(xMm).toBeLessThanOrEqual(2100);
      expect(yMm).toBeGreaterThanOrEqual(0);
      expect(yMm).toBeLessThanOrEqual(600);
      for (const { mm } of from) {
        expect(mm).toBeGreaterThan(0);
        expect(mm).toBeLessThan(most);
      }
    }
    expect(plan.stretchUse.where.x).toBeGreaterThanOrEqual(0);
    expect(plan.stretchUse.where.y).toBeGreaterThanOrEqual(0);
  });

  it('without tiles a rectangle of whole decimetres is marked on a carpet', () => {
    const { plan, notices } = planned(shawl(), { ...MAT, tileMm: 0 });
    expect(plan.laidOn).toEqual({ widthMm: 1900, heightMm: 600, tileMm: 0 });
    expect(notices[0]!.text).toContain('Mark {mm:1900} by {mm:600} with tape on a carpet');
  });

  it('tiles that are enough are laid another way', () => {
    const { plan, notices } = planned(rectangle([1000, 250], [1020, 255]), MAT);
    expect(plan.laidOn).toEqual({ widthMm: 1200, heightMm: 300, tileMm: 300 });
    expect(notices[0]!.text).toContain('Lay its tiles 4 across and 1 down.');
  });

  it('one that fits when folded is told so, with what that does to its pins', () => {
    const { notices } = planned(rectangle([1400, 500], [1428, 510]), MAT);
    expect(notices[0]!.text).toContain('Folded in half down its middle it fits');
    expect(notices[0]!.text).toContain('twice as hard');
  });

  it('nothing is said of one that fits', () => {
    const { plan, notices } = planned(rectangle([500, 400], [510, 408]), MAT);
    expect(plan).toMatchObject({ fitsMat: true, laidOn: MAT });
    expect(notices.map(({ code }) => code)).not.toContain('mat-too-small');
  });
});
