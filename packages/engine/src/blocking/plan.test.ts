import { beforeAll, describe, expect, it } from 'vitest';
import { once } from '../../../../scripts/lib/once.mjs';
import { explain } from '../units/index.ts';
import { MAT, PINS_ONLY, rectangle, sweaterBack } from './check/pieces.ts';
import { planBlock } from './plan.ts';
import { angleBetween } from './tape.ts';
import type { BlockHooks, BlockQuestion, PiecePlan, PieceToBlock } from './types.ts';

const asked = (piece: PieceToBlock, more: Partial<BlockQuestion> = {}): BlockQuestion => ({
  pieces: [piece],
  stock: PINS_ONLY,
  mat: MAT,
  gentle: false,
  ...more,
});

const planned = (
  piece: PieceToBlock,
  more: Partial<BlockQuestion> = {},
  hooks: BlockHooks = { nodes: 300 },
): PiecePlan => {
  const made = planBlock(asked(piece, more), hooks);
  if (!made.ok) throw new Error(made.faults.map(explain).join('\n'));
  return made.value.pieces[0]!;
};

const middle = (plan: PiecePlan, name: string): number =>
  plan.measurements.find((each) => each.name === name)!.reachedMm.p50Mm;

const back = once(() => planned(sweaterBack()));

describe('a back that lies 5 % too narrow and 4 % too short', () => {
  let plan: PiecePlan;
  beforeAll(() => {
    plan = back();
  });

  it('B1: every dimension is reached within its tolerance', () => {
    expect(plan.converged).toBe(true);
    expect(plan.couldNot).toEqual([]);
    for (const { within, toleranceMm, reachedMm, targetMm } of plan.measurements) {
      expect(within).toBe(true);
      expect(Math.abs(reachedMm.p50Mm - targetMm)).toBeLessThanOrEqual(toleranceMm);
    }
  });

  it('B2: no gap scallops deeper than the tolerance, and far fewer pins leave some that do', () => {
    expect(plan.scallopMm.max).toBeLessThanOrEqual(5);
    expect(plan.scallopMm.max).toBe(Math.max(...plan.scallopMm.gaps.map(({ mm }) => mm)));
    const few = planned(sweaterBack(), { stock: { ...PINS_ONLY, straight: 14, tPins: 0 } });
    expect(few.pins.length).toBeLessThanOrEqual(14);
    expect(few.scallopMm.max).toBeGreaterThan(5);
    expect(few.moreStock[0]?.gains).toContain('scallop');
    expect(few.couldNot.map(({ why }) => why)).toContain('there are not enough pins at hand');
  });

  it('B4: both orders are tried at the same places, and the planned one pulls less hard', () => {
    const { planned: own, other } = plan.orders;
    expect(own!.slipped).toBe(0);
    expect(other!.slipped).toBe(0);
    expect(own!.way).not.toBe(other!.way);
    expect(own!.highestPullN).toBeLessThanOrEqual(other!.highestPullN);
    // The last step of either order has all pins at the places of the plan: that much is borne in both.
    const most = Math.max(...plan.pins.map(({ pullN }) => pullN));
    for (const { highestPullN } of [own!, other!]) {
      expect(highestPullN).toBeGreaterThanOrEqual(most);
      expect(highestPullN).toBeLessThanOrEqual(5 + 1e-9);
    }
    expect(plan.pins.map(({ order }) => order)).toEqual(plan.pins.map((_, k) => k + 1));
  });

  it('B5: both distances of each pin hold, from what is in before it, at an angle that tells', () => {
    const places = new Map<string, { x: number; y: number }>([
      ['top left corner of the mat', { x: 0, y: 0 }],
      ['top right corner of the mat', { x: MAT.widthMm, y: 0 }],
      ['bottom left corner of the mat', { x: 0, y: MAT.heightMm }],
      ['bottom right corner of the mat', { x: MAT.widthMm, y: MAT.heightMm }],
    ]);
    for (let i = 1; i < 3; i++)
      for (let j = 1; j < 3; j++)
        places.set(`tile crossing ${i} from the left, ${j} from the top`, {
          x: 300 * i,
          y: 300 * j,
        });
    for (const { xMm: x, yMm: y, from, order } of plan.pins) {
      const [a, b] = from.map(({ name }) => places.get(name));
      if (a === undefined || b === undefined)
        throw new Error(`pin ${order}: ${from[0].name}, ${from[1].name}`);
      expect(Math.hypot(x - a.x, y - a.y)).toBeCloseTo(from[0].mm, 9);
      expect(Math.hypot(x - b.x, y - b.y)).toBeCloseTo(from[1].mm, 9);
      const angle = angleBetween({ x, y }, a, b);
      expect(angle).toBeGreaterThanOrEqual(30);
      expect(angle).toBeLessThanOrEqual(150);
      places.set(`pin ${order}`, { x, y });
    }
  });

  it('B6: T-pins stand where the pull is strongest', () => {
    const pulls = (kind: string) => plan.pins.filter((p) => p.kind === kind).map((p) => p.pullN);
    expect(pulls('t-pin').length).toBeGreaterThan(0);
    expect(Math.min(...pulls('t-pin'))).toBeGreaterThanOrEqual(Math.max(...pulls('straight')));
  });

  it('B8: dried it lies between its rest and the mat, rewashed at its rest', () => {
    for (const each of plan.measurements) {
      const dry = Math.exp(-0.02);
      const kept = each.restMm + 0.6 * (each.reachedMm.p50Mm - each.restMm);
      expect(each.afterDryingMm.p50Mm).toBeCloseTo(dry * kept, 6);
      expect(each.afterRewashMm.p50Mm).toBeCloseTo(Math.exp(-0.025) * each.restMm, 6);
    }
  });

  it('B9: less stretch is told, down to what is published as safe', () => {
    const [full, ...less] = plan.gentler;
    expect(full!.beyondSafe).toContain('chest');
    expect(less.some(({ beyondSafe }) => beyondSafe.length === 0)).toBe(true);
    for (const [k, each] of less.entries())
      expect(each.largestStretch).toBeLessThan(plan.gentler[k]!.largestStretch);
  });

  it('B9: where a tape finds nothing stretched, no less of it is told', () => {
    const { dimensions, wanted: _, ...piece } = sweaterBack();
    const asItLies = dimensions.map((each, k) => ({
      ...each,
      targetMm: plan.measurements[k]!.restMm + 1,
    }));
    const { gentler } = planned({ ...piece, wanted: null, dimensions: asItLies });
    expect(gentler.map(({ share }) => share)).toEqual([1]);
  });

  it('B13: the same question gives the same plan, and a stopped one says so', () => {
    expect(planned(sweaterBack())).toEqual(plan);
    const stopped = planBlock(asked(sweaterBack()), { nodes: 100, onStep: () => false });
    expect(stopped.ok ? '' : stopped.faults[0]!.code).toBe('block-stopped');
  });
});

describe('stock', () => {
  it('B3: wires and combs take straight edges first, and save pins', () => {
    const rest = sweaterBack();
    const stock = {
      straight: 100,
      tPins: 10,
      combs: [{ lengthMm: 60, count: 6 }],
      wires: [{ lengthMm: 600, count: 1 }],
    };
    const plan = planned(rest, { stock });
    const plain = back();
    expect(plan.pins.filter(({ kind }) => kind === 'wire')).toHaveLength(1);
    expect(plan.pins.filter(({ kind }) => kind === 'comb').length).toBeGreaterThan(0);
    expect(plan.pins.length).toBeLessThan(plain.pins.length);
    expect(plan.couldNot).toEqual([]);
  });

  it.each([0, 1])('B3: with %i pins it lies as it lay, and more would help', (straight) => {
    const plan = planned(rectangle([200, 200], [220, 210]), {
      stock: { straight, tPins: 0, combs: [], wires: [] },
    });
    expect(plan.pins).toHaveLength(straight);
    expect(middle(plan, 'width')).toBeCloseTo(200, 6);
    expect(plan.moreStock[0]!.what).toMatch(/more pins/);
    expect(plan.couldNot).toHaveLength(2);
  });
});

describe('what a piece will not do', () => {
  it('B7: wanted smaller than it lies, it stays, as pins do not push', () => {
    const plan = planned(rectangle([300, 300], [270, 300]));
    expect(middle(plan, 'width')).toBeCloseTo(300, 0);
    expect(plan.couldNot[0]!.why).toContain('pins pull but do not push');
  });

  it('B7: beyond twice what the fabric has, it stops at its end and names it', () => {
    const piece = rectangle([300, 300], [1200, 300]);
    // More than any hand: else that would end it before the fabric does.
    const plan = planned(piece, { mostPullN: 1e6 }, { nodes: 120 });
    const limit = piece.fabric.constants.width.limit;
    expect(middle(plan, 'width')).toBeLessThan(300 * (1 + limit));
    expect(middle(plan, 'width')).toBeGreaterThan(330);
    expect(plan.stretchUse.max).toBeLessThan(1);
    expect(plan.couldNot.find(({ what }) => what.startsWith('width'))!.why).toContain(
      'stretched out',
    );
  });

  it.each([1.25, 1.3, 4])(
    'B22: wanted %f times as wide, no pin bears more than a hand gives',
    (times) => {
      const plan = planned(rectangle([300, 300], [300 * times, 300]));
      expect(plan.converged).toBe(true);
      expect(Math.max(...plan.pins.map(({ pullN }) => pullN))).toBeLessThanOrEqual(5 + 1e-9);
      const reached = middle(plan, 'width');
      expect(reached).toBeGreaterThan(345);
      const width = plan.couldNot.find(({ what }) => what.startsWith('width'))!;
      expect(width.what).toContain(`{mm:${(300 * times - reached).toFixed(1)}} short`);
      expect(width.why).toContain('more than 5 N');
    },
  );

  it('B22: hands that give more bring it further, and those that give less not as far', () => {
    const widths = [2, 5, 20].map((mostPullN) => {
      const plan = planned(rectangle([300, 300], [390, 300]), { mostPullN });
      expect(Math.max(...plan.pins.map(({ pullN }) => pullN))).toBeLessThanOrEqual(
        mostPullN + 1e-9,
      );
      return middle(plan, 'width');
    });
    // The edges that hold the fabric come to their ends between: ten times the force is a few millimetres.
    expect(widths[0]!).toBeLessThan(widths[1]! - 2);
    expect(widths[1]!).toBeLessThan(widths[2]! - 2);
  });

  it('B22: a comb bears as much as one hand, a wire as much at each pin along it', () => {
    const stock = {
      straight: 60,
      tPins: 10,
      combs: [{ lengthMm: 60, count: 8 }],
      wires: [{ lengthMm: 600, count: 2 }],
    };
    const plan = planned(rectangle([300, 300], [390, 300]), { stock });
    const kinds = new Set(plan.pins.map(({ kind }) => kind));
    expect(kinds.has('wire') || kinds.has('comb')).toBe(true);
    for (const { pullN } of plan.pins) expect(pullN).toBeLessThanOrEqual(5 + 1e-9);
  });

  it('B9: gentle, nothing is stretched beyond 5 % and what is missed says why', () => {
    const plan = planned(rectangle([300, 300], [360, 303]), { gentle: true });
    expect(middle(plan, 'width')).toBeLessThanOrEqual(300 * 1.0511);
    expect(plan.couldNot[0]!.why).toContain('makers of wool call safe');
  });

  it('B10: a seam holds a sewn piece back; before sewing more was possible', () => {
    const piece = rectangle([300, 300], [300, 360]);
    const edges = piece.edges.map((kind) => (kind === 'selvedge' ? 'seam' : kind));
    const sewn = planned({ ...piece, layers: 2, edges }, {}, { nodes: 120 });
    const before = sewn.beforeSewing!.find(({ name }) => name === 'length')!.mm;
    expect(middle(sewn, 'length')).toBeLessThan(before - 5);
    expect(sewn.couldNot.map(({ why }) => why).join()).toContain('seam');
    expect(planned(piece, {}, { nodes: 120 }).beforeSewing).toBeNull();
  });

  it('B11: ribbing is held in length and keeps its width', () => {
    const piece = rectangle([300, 300], [330, 315]);
    const polygon = [
      { x: -1, y: 250 },
      { x: 301, y: 250 },
      { x: 301, y: 301 },
      { x: -1, y: 301 },
    ];
    const plan = planned({ ...piece, zones: [{ polygon, kind: 'rib' }] });
    expect(middle(plan, 'length')).toBeCloseTo(315, 0);
    expect(middle(plan, 'width')).toBeLessThan(303);
    expect(plan.couldNot[0]!.why).toBe('ribbing is left to draw in');
  });
});

describe('B12: what cannot be asked', () => {
  const codes = (piece: Partial<PieceToBlock>): string[] => {
    const made = planBlock(asked({ ...rectangle([200, 200], [220, 210]), ...piece }));
    return made.ok ? [] : made.faults.map(({ code }) => code);
  };
  const at = (...places: [number, number][]) => places.map(([x, y]) => ({ x, y }));

  it.each([
    ['crosses itself', { outline: at([0, 0], [200, 200], [200, 0], [0, 200]) }, 'block-crossing'],
    [
      'has an edge without length',
      { outline: at([0, 0], [200, 0], [200, 0], [0, 200]) },
      'block-zero-edge',
    ],
    ['is a line', { outline: at([0, 0], [100, 0], [200, 0], [300, 0]) }, 'block-no-area'],
    [
      'has a place that is no number',
      { outline: at([0, 0], [Number.NaN, 0], [200, 200], [0, 200]) },
      'block-number',
    ],
    [
      'has a pin far from it',
      { pinned: [{ at: { x: 900, y: 0 }, to: { x: 900, y: 0 } }] },
      'block-pin-off-edge',
    ],
    [
      'has a wanted outline of other points',
      { wanted: at([0, 0], [1, 0], [1, 1]) },
      'block-wanted',
    ],
  ] as const)('a piece that %s', (_, piece, code) => {
    expect(codes(piece)).toContain(code);
  });

  it('a piece of one stitch is planned all the same', () => {
    const plan = planned(rectangle([5, 3.6], [5.2, 3.7]));
    expect(plan.converged).toBe(true);
    expect(plan.pins.length).toBeLessThan(3);
  });
});
