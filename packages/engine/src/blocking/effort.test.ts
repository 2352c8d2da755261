import { describe, expect, it } from 'vitest';
import { MAT, PINS_ONLY, rectangle, sweaterBack, wool } from './check/pieces.ts';
import { planBlock } from './plan.ts';
import type { BlockHooks, PieceToBlock } from './types.ts';

const sewn = (piece: PieceToBlock): PieceToBlock => ({
  ...piece,
  layers: 2,
  edges: piece.edges.map((kind) => (kind === 'selvedge' ? 'seam' : kind)),
});

const planned = (piece: PieceToBlock, hooks: BlockHooks = {}) => {
  const made = planBlock({ pieces: [piece], stock: PINS_ONLY, mat: MAT, gentle: false }, hooks);
  if (!made.ok) throw new Error('no plan');
  return { plan: made.value.pieces[0]!, notices: made.value.notices.map(({ code }) => code) };
};

/** A third more than the fabric and its seams will give, and worse. */
const HARD: readonly (readonly [string, PieceToBlock])[] = [
  ['a third larger, sewn', sewn(rectangle([300, 300], [400, 400]))],
  [
    'small ribbing, a third larger, sewn',
    {
      ...sewn(rectangle([150, 200], [200, 266])),
      fabric: wool('rib-1x1'),
    },
  ],
  ['a back half as large again, sewn', sewn(sweaterBack(0.66, 0.66))],
];

describe('B14: a plan costs no more than it states', () => {
  it.each(HARD)('%s', (_, piece) => {
    const { plan, notices } = planned(piece);
    const { evaluations, most, cutShort } = plan.effort;
    expect(most).toBe(3000);
    expect(evaluations).toBeGreaterThan(0);
    expect(evaluations).toBeLessThanOrEqual(most);
    expect(notices.includes('cut-short')).toBe(cutShort.length > 0);
    for (const { name, within } of plan.measurements)
      expect(plan.couldNot.some(({ what }) => what.startsWith(name))).toBe(!within);
  });

  it.each([100, 500])('with %i a hard piece is cut short, and that is said', (mostEvaluations) => {
    for (const [, piece] of HARD) {
      const { plan, notices } = planned(piece, { nodes: 200, mostEvaluations });
      expect(plan.effort.most).toBe(mostEvaluations);
      expect(plan.effort.evaluations).toBeLessThanOrEqual(mostEvaluations);
      expect(plan.effort.cutShort).not.toEqual([]);
      expect(notices).toContain('cut-short');
    }
  });

  it('a usual piece is done long before', () => {
    const { plan, notices } = planned(sweaterBack());
    expect(plan.effort.cutShort).toEqual([]);
    expect(plan.effort.evaluations).toBeLessThan(plan.effort.most / 4);
    expect(notices).not.toContain('cut-short');
  });
});
