import { randomSource } from '../../stats/index.ts';
import type { BlockQuestion, EdgeKind, PieceToBlock } from '../types.ts';
import { AFTER, wool } from './pieces.ts';

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
export const randomQuestion = (seed: number): BlockQuestion => {
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
