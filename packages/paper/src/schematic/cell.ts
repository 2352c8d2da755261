import type { Dimension, Point } from '@dryflat/engine/garment';
import type { DrawnPiece } from './drawn-piece.ts';
import type { LabelSize } from './label-size.ts';
import { stack, stackDown } from './stack.ts';

/** A dimension line on the screen, its extension lines and its label, in px from the cell's corner. */
export interface PlacedDimension {
  readonly landmark: string;
  readonly from: Point;
  readonly to: Point;
  /** From the measured points out to the ends of the line; empty where it lies on the spot. */
  readonly extensions: readonly (readonly [Point, Point])[];
  readonly label: { readonly x: number; readonly y: number } & LabelSize;
  /** From the label to its line; null where the label sits on it. */
  readonly leader: readonly [Point, Point] | null;
}

/** One piece with its labels around it. `origin` is where the piece's (0, 0) falls. */
export interface Cell {
  readonly width: number;
  readonly height: number;
  readonly scale: number;
  readonly origin: Point;
  readonly dimensions: readonly PlacedDimension[];
  /** Where the piece's caption is centred. */
  readonly caption: Point;
}

export interface CellOptions {
  readonly piece: DrawnPiece;
  /** px per millimetre. */
  readonly scale: number;
  readonly sizeOf: (landmark: string) => LabelSize;
  /** True where there is room for labels on one side only: the right. */
  readonly narrow: boolean;
  readonly captionHeight: number;
}

type Column = 'left' | 'centre' | 'right';

/** px between the piece and its first line, and between one line and the next. */
const CLEAR = 14;
const TIER = 13;
/** px between labels, and between a label and anything beside it. */
const GAP = 4;

interface Draft {
  readonly d: Dimension;
  readonly size: LabelSize;
  readonly column: Column;
  readonly a: Point;
  readonly b: Point;
  readonly tier: number;
}

const mirrored = (d: Dimension): Dimension => ({
  ...d,
  from: { x: 0 - d.from.x, y: d.from.y },
  to: { x: 0 - d.to.x, y: d.to.y },
  side: 'right',
});

/** On a narrow screen what would sit left of a symmetric piece sits on its right instead. */
const sided = ({ piece, narrow }: CellOptions): Dimension[] =>
  piece.dimensions.map((d) =>
    narrow && piece.main.symmetric && d.side === 'left' ? mirrored(d) : d,
  );

/** A label inside needs half as much room again as it takes, or it would hide its piece. */
const columnOf = (d: Dimension, a: Point, b: Point, width: number, size: LabelSize): Column => {
  if (d.side === 'left' || d.side === 'right') return d.side;
  const across = a.y === b.y ? Math.abs(b.x - a.x) : width;
  return d.side === 'inside' && across < 1.5 * size.width ? 'right' : 'centre';
};

const overlaps = (a: Dimension, b: Dimension): boolean => {
  const [a1, a2] = [Math.min(a.from.y, a.to.y), Math.max(a.from.y, a.to.y)];
  const [b1, b2] = [Math.min(b.from.y, b.to.y), Math.max(b.from.y, b.to.y)];
  const slack = 0.01 * Math.max(a2 - a1, b2 - b1);
  return Math.min(a2, b2) - Math.max(a1, b1) > slack;
};

/** Short lines lie nearest; a line goes one further out than those beside it that it overlaps. */
const tiersOf = (all: readonly Dimension[]): Map<Dimension, number> => {
  const tiers = new Map<Dimension, number>();
  const length = (d: Dimension) => Math.hypot(d.to.x - d.from.x, d.to.y - d.from.y);
  for (const d of all.filter((e) => e.outside).sort((a, b) => length(a) - length(b))) {
    const below = [...tiers].filter(([e]) => e.side === d.side && overlaps(e, d));
    tiers.set(d, below.length === 0 ? 0 : 1 + Math.max(...below.map(([, t]) => t)));
  }
  return tiers;
};

/** px coordinates from the corner of the piece's own box. */
const toPx = ({ piece, scale }: CellOptions, p: Point): Point => ({
  x: (p.x - piece.box.left) * scale,
  y: (p.y - piece.box.top) * scale,
});

const pushedOut = (d: Dimension, p: Point, tier: number, w: number, h: number): Point => {
  const out = CLEAR + tier * TIER;
  if (!d.outside) return p;
  if (d.side === 'left') return { x: -out, y: p.y };
  if (d.side === 'right') return { x: w + out, y: p.y };
  return { x: p.x, y: d.side === 'top' ? -out : h + out };
};

const draftsOf = (options: CellOptions, w: number, h: number): Draft[] => {
  const dimensions = sided(options);
  const tiers = tiersOf(dimensions);
  return dimensions.map((d) => {
    const size = options.sizeOf(d.landmark);
    const tier = tiers.get(d) ?? 0;
    const a = pushedOut(d, toPx(options, d.from), tier, w, h);
    const b = pushedOut(d, toPx(options, d.to), tier, w, h);
    return { d, size, tier, a, b, column: columnOf(d, a, b, w, size) };
  });
};

const middle = ({ a, b }: Draft): Point => ({ x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 });

/** Where the label would like its middle to be, down the cell. */
const wish = (draft: Draft): number => {
  const { y } = middle(draft);
  const clear = draft.size.height / 2 + GAP;
  if (draft.d.side === 'top') return y - clear;
  if (draft.d.side === 'bottom') return y + clear;
  return draft.column === 'centre' && draft.a.x === draft.b.x ? draft.b.y + clear : y;
};

/** The point of its line that a label beside the piece is led to: the near end, or the middle. */
const target = (draft: Draft): Point => {
  const flat = Math.abs(draft.a.y - draft.b.y) < Math.abs(draft.a.x - draft.b.x);
  if (!flat) return middle(draft);
  const right = draft.a.x > draft.b.x ? draft.a : draft.b;
  const left = right === draft.a ? draft.b : draft.a;
  return draft.column === 'left' ? left : right;
};

/** Labels on the piece only move down, so that none climbs over the neckline above it. */
const spread = (drafts: readonly Draft[], column: Column): [Draft, number][] => {
  const sorted = [...drafts].sort((p, q) => wish(p) - wish(q));
  const items = sorted.map((draft) => ({ want: wish(draft), height: draft.size.height }));
  const at = column === 'centre' ? stackDown(items, GAP) : stack(items, GAP);
  return sorted.map((draft, i) => [draft, at[i]!]);
};

const extensionsOf = (options: CellOptions, { d, a, b }: Draft): [Point, Point][] =>
  d.outside
    ? [
        [toPx(options, d.from), a],
        [toPx(options, d.to), b],
      ]
    : [];

const leaderOf = (draft: Draft, x: number, y: number): [Point, Point] | null => {
  const { size, column } = draft;
  if (column === 'centre') {
    const at = middle(draft);
    const off = at.y - y;
    if (Math.abs(off) <= size.height / 2 + GAP + 1) return null;
    return [{ x: x + size.width / 2, y: y + (Math.sign(off) * size.height) / 2 }, at];
  }
  return [{ x: column === 'left' ? x + size.width : x, y }, target(draft)];
};

const room = (drafts: readonly Draft[], column: 'left' | 'right') => {
  const here = drafts.filter((draft) => draft.column === column);
  const lines = drafts.filter((draft) => draft.d.outside && draft.d.side === column);
  const tiers = lines.length === 0 ? 0 : 1 + Math.max(...lines.map((draft) => draft.tier));
  return {
    lines: CLEAR + tiers * TIER,
    labels: Math.max(0, ...here.map((draft) => draft.size.width)),
  };
};

/**
 * Lays out one piece: three columns of labels (left of it, on it, right of it), each stacked so that
 * no label overlaps another, with its box grown to hold them all.
 */
export const cellOf = (options: CellOptions): Cell => {
  const { piece, scale } = options;
  const [w, h] = [
    (piece.box.right - piece.box.left) * scale,
    (piece.box.bottom - piece.box.top) * scale,
  ];
  const drafts = draftsOf(options, w, h);
  const columns = { left: room(drafts, 'left'), right: room(drafts, 'right') };
  const centre = Math.max(
    0,
    ...drafts.filter((e) => e.column === 'centre').map((e) => e.size.width),
  );
  /** A centre label wider than its piece keeps the side columns that much further out. */
  const over = Math.max(0, (centre - w) / 2 + GAP);
  const left = Math.max(columns.left.lines, over);
  const right = Math.max(columns.right.lines, over);
  const placed = (['left', 'centre', 'right'] as const).flatMap((column) =>
    spread(
      drafts.filter((draft) => draft.column === column),
      column,
    ).map(([draft, y]) => {
      const x =
        column === 'left'
          ? -left - draft.size.width
          : column === 'right'
            ? w + right
            : w / 2 - draft.size.width / 2;
      return { draft, x, y };
    }),
  );
  const top = Math.min(0, ...placed.map((e) => e.y - e.draft.size.height / 2)) - 2;
  const bottom = Math.max(h, ...placed.map((e) => e.y + e.draft.size.height / 2)) + 2;
  const shift = { x: left + columns.left.labels, y: -top };
  const move = (p: Point): Point => ({ x: p.x + shift.x, y: p.y + shift.y });
  const movePair = ([p, q]: readonly [Point, Point]): [Point, Point] => [move(p), move(q)];
  return {
    scale,
    width: shift.x + w + right + columns.right.labels,
    height: bottom - top + options.captionHeight,
    origin: move({ x: -piece.box.left * scale, y: -piece.box.top * scale }),
    caption: move({ x: w / 2, y: bottom + 0.65 * options.captionHeight }),
    dimensions: placed.map(({ draft, x, y }) => {
      const leader = leaderOf(draft, x, y);
      const corner = move({ x, y: y - draft.size.height / 2 });
      return {
        landmark: draft.d.landmark,
        from: move(draft.a),
        to: move(draft.b),
        extensions: extensionsOf(options, draft).map(movePair),
        label: { ...corner, ...draft.size },
        leader: leader && movePair(leader),
      };
    }),
  };
};
