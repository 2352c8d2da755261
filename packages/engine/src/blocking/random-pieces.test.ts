import { describe, expect, it } from 'vitest';
import { draws } from '../../../../scripts/lib/draws.mjs';
import { randomSource } from '../stats/index.ts';
import { explain } from '../units/index.ts';
import { AFTER, wool } from './check/pieces.ts';
import { planBlock } from './plan.ts';
import type { BlockQuestion, EdgeKind, PieceToBlock } from './types.ts';

const KINDS: readonly EdgeKind[] = [
  'cast-on',
  'bound-off',
  'selvedge',
  'seam',
  'picked-up',
  'rib',
  'fold',
  'open',
];
const FABRICS = [wool(), wool('rib-1x1'), wool('garter')] as const;

/** Of wanted over rest: smaller, alike, usual, much, and beyond all that a fabric can. */
const FACTORS = [0.7, 0.98, 1, 1, 1.05, 1.05, 1.3, 3] as const;

/** A source of plain choices from one seed. */
const chooser = (seed: number) => {
  const source = randomSource(seed);
  const unit = () => source.uniform();
  return {
    unit,
    between: (a: number, b: number) => a + (b - a) * unit(),
    of: <T>(list: readonly T[]): T =>
      list[Math.min(list.length - 1, Math.floor(unit() * list.length))]!,
    whole: (most: number) => Math.floor(unit() * (most + 1)),
  };
};

/** One question: a star of a few corners from the size of a stitch to that of a blanket, and what is wrong with it, if anything. */
const question = (seed: number): BlockQuestion => {
  const c = chooser(seed);
  const corners = 3 + c.whole(2);
  const size = c.of([5, 40, 300, 900]);
  const star = Array.from({ length: corners }, (_, i) => {
    const angle = (2 * Math.PI * (i + c.between(-0.3, 0.3))) / corners;
    const radius = size * c.between(0.3, 1);
    return { x: radius * Math.cos(angle), y: radius * Math.sin(angle) };
  });
  const outline = [...star];
  // One in three is spoilt in one of the ways that a drawing or a file can be.
  const spoil = c.whole(14);
  if (spoil === 0) [outline[0], outline[2]] = [outline[2]!, outline[0]!];
  if (spoil === 1) outline[1] = outline[0]!;
  if (spoil === 2) outline[1] = { x: Number.NaN, y: 0 };
  if (spoil === 3) outline.length = 2;
  const [fx, fy] = [c.of(FACTORS), c.of(FACTORS)];
  const wanted = outline.map(({ x, y }) => ({ x: x * fx, y: y * fy }));
  const span = Math.hypot(star[1]!.x - star[0]!.x, star[1]!.y - star[0]!.y) || 1;
  const piece: PieceToBlock = {
    name: 'piece',
    outline,
    edges: outline.map(() => c.of(KINDS)),
    layers: c.of([1, 1, 1, 2] as const),
    wanted: c.unit() < 0.8 ? wanted : null,
    dimensions: [
      {
        name: 'one',
        landmark: 'one',
        direction: c.of(['width', 'length'] as const),
        from: 0,
        to: 1,
        targetMm: spoil === 4 ? -1 : span * c.of([0.6, 1, 1.1, 2.5]),
      },
    ],
    zones:
      c.unit() < 0.2 ? [{ polygon: star.slice(0, 3), kind: c.of(['rib', 'leave'] as const) }] : [],
    pinned:
      c.unit() < 0.2
        ? [{ at: { x: c.between(-size, size), y: c.between(-size, size) }, to: { x: 0, y: 0 } }]
        : [],
    fabric: c.of(FABRICS),
    restLogSd: { width: c.between(0, 0.1), length: c.between(0, 0.1) },
    after: AFTER,
  };
  return {
    pieces: [piece],
    stock: {
      straight: c.of([0, 1, 3, 6]),
      tPins: c.of([0, 0, 3]),
      combs: c.of([[], [{ lengthMm: 80, count: 3 }]]),
      wires: c.of([[], [{ lengthMm: 900, count: 2 }]]),
    },
    mat: { widthMm: 900, heightMm: 600, tileMm: c.of([0, 300]) },
    gentle: c.of([false, true]),
  };
};

const numbersIn = (value: unknown): number[] => {
  if (typeof value === 'number') return [value];
  if (typeof value !== 'object' || value === null) return [];
  return Object.values(value).flatMap(numbersIn);
};

/** Enough to hold a star's edges; the laws do not ask for a fine answer. */
const NODES = 8;
const BATCHES = draws(4, 20);
const EACH = 500;
/** One in so many is worked out in full; of the others only as much as tells faults from answers, cut short. */
const IN_FULL = 10;
/** Evaluations of a sheet that is cut short: a few solves. */
const FEW = 100;

const tally = { planned: 0, refused: 0 };

describe('B12: any piece gets a clear answer', () => {
  it.each(Array.from({ length: BATCHES }, (_, k) => k))('random pieces, batch %i', (batch) => {
    for (let k = 0; k < EACH; k++) {
      const seed = batch * EACH + k;
      const asked = question(seed);
      const cost = seed % IN_FULL === 0 ? {} : { mostEvaluations: FEW };
      const made = planBlock(asked, { nodes: NODES, ...cost });
      if (!made.ok) {
        tally.refused += 1;
        expect(made.faults.length, `seed ${seed}`).toBeGreaterThan(0);
        for (const fault of made.faults) expect(explain(fault)).toMatch(/^\S.*: .+\. .+/s);
        continue;
      }
      tally.planned += 1;
      const piece = made.value.pieces[0]!;
      const wrong = numbersIn(piece).filter((v) => !Number.isFinite(v));
      if (wrong.length > 0) throw new Error(`seed ${seed}: ${wrong.length} numbers are none`);
      const { straight, tPins } = asked.stock;
      const singles = piece.pins.filter(({ along }) => along === null).length + piece.pinsForWires;
      expect(singles, `seed ${seed}`).toBeLessThanOrEqual(straight + tPins);
      for (const { name, reachedMm, within } of piece.measurements) {
        expect(reachedMm.p05Mm <= reachedMm.p50Mm && reachedMm.p50Mm <= reachedMm.p95Mm).toBe(true);
        // What is off is said, and why.
        const said = piece.couldNot.some(({ what, why }) => what.startsWith(name) && why !== '');
        expect(said, `seed ${seed} ${name}`).toBe(!within);
      }
    }
  });

  it('most of them are planned, and some are refused', () => {
    expect(tally.planned + tally.refused).toBe(BATCHES * EACH);
    expect(tally.planned).toBeGreaterThan(0.5 * BATCHES * EACH);
    expect(tally.refused).toBeGreaterThan(0.1 * BATCHES * EACH);
  });
});
