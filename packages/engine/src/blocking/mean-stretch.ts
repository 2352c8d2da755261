import type { Direction } from '../fabric/index.ts';
import type { Point } from '../garment/index.ts';
import type { Equilibrium } from '../membrane/index.ts';
import { type PieceSheet, placeIn } from './piece-sheet.ts';
import { distance, turn } from './plane.ts';
import type { EdgeKind } from './types.ts';

/**
 * Strain is read as its mean around a place at rest, by weights that fall evenly to nothing at this distance,
 * mm. At a point that is held strain has no largest value: a finer mesh finds more of it. Four stitches either
 * way are what eye and hand take for one place.
 */
export const AROUND = 20;
/** Triangles are divided until the parts are this small a share of that. */
const PART = 1 / 3;
const NONE: readonly number[] = [];

export interface MeanStretch {
  /** Stretch over the wet size at each node: the most of across, lengthwise and along the edge; 0 or more. */
  readonly overWet: Float64Array;
  /** Node where that is largest, and what is stretched so. */
  readonly worst: {
    readonly node: number;
    readonly along: Direction;
    readonly edge: EdgeKind | null;
  };
  /** The largest as a share of what the fabric or the edge can do there, 0 to 1. */
  readonly ofLimit: number;
}

/** Ends of a scale of stretch over the wet size that double from one to the next. */
const ENDS = [0.05, 0.1, 0.2, 0.4, 0.8, 1.6, 3.2] as const;

/** The first end of a scale that holds the largest stretch. */
export const scaleEnd = (overWet: number): number => ENDS.find((end) => overWet <= end) ?? 6.4;

/** Sparse means: entries `starts[k]` up to `starts[k + 1]` make value k. */
interface Means {
  readonly starts: Uint32Array;
  readonly of: Uint32Array;
  readonly weights: Float64Array;
}

const meansOf = (rows: readonly ReadonlyMap<number, number>[]): Means => {
  const starts = new Uint32Array(rows.length + 1);
  rows.forEach((row, k) => {
    starts[k + 1] = starts[k]! + row.size;
  });
  const of = new Uint32Array(starts[rows.length]!);
  const weights = new Float64Array(of.length);
  rows.forEach((row, k) => {
    const all = [...row.values()].reduce((sum, each) => sum + each, 0);
    let at = starts[k]!;
    for (const [key, weight] of row) {
      of[at] = key;
      weights[at++] = weight / all;
    }
  });
  return { starts, of, weights };
};

/** Nodes by squares of a grid, to find those near a place, with the weight of each there. */
const nodesNear = (points: Float64Array) => {
  const lowest = (axis: 0 | 1) =>
    points.reduce(
      (low, v, k) => (k % 2 === axis ? Math.min(low, v) : low),
      Number.POSITIVE_INFINITY,
    );
  const [left, low] = [lowest(0), lowest(1)];
  const cell = (v: number, from: number) => Math.floor((v - from) / AROUND) + 1;
  /** More columns than any piece that is not too large to be worked out has: keys of cells are whole numbers. */
  const columns = 2 ** 20;
  const grid = new Map<number, number[]>();
  for (let i = 0; i < points.length / 2; i++) {
    const key = cell(points[2 * i + 1]!, low) * columns + cell(points[2 * i]!, left);
    const list = grid.get(key);
    if (list === undefined) grid.set(key, [i]);
    else list.push(i);
  }
  return (x: number, y: number, found: (node: number, weight: number) => void): void => {
    const [column, row] = [cell(x, left), cell(y, low)];
    for (let r = row - 1; r <= row + 1; r++)
      for (let c = column - 1; c <= column + 1; c++)
        for (const i of grid.get(r * columns + c) ?? NONE) {
          const weight = 1 - Math.hypot(points[2 * i]! - x, points[2 * i + 1]! - y) / AROUND;
          if (weight > 0) found(i, weight);
        }
  };
};

/** Of each node the triangles around it. */
const fabricMeans = ({ mesh: { points, triangles } }: PieceSheet): Means => {
  const rows = Array.from({ length: points.length / 2 }, () => new Map<number, number>());
  const near = nodesNear(points);
  for (let t = 0; t < triangles.length / 3; t++) {
    const corner = (k: number): Point => placeIn(points, triangles[3 * t + k]!);
    const [a, b, c] = [corner(0), corner(1), corner(2)];
    const longest = Math.max(distance(a, b), distance(b, c), distance(c, a));
    const n = Math.max(1, Math.ceil(longest / (PART * AROUND)));
    const part = Math.abs(turn([a, b, c])) / (n * n);
    const add = (u: number, v: number) => {
      const [x, y] = [
        a.x + u * (b.x - a.x) + v * (c.x - a.x),
        a.y + u * (b.y - a.y) + v * (c.y - a.y),
      ];
      near(x, y, (i, weight) => rows[i]!.set(t, (rows[i]!.get(t) ?? 0) + weight * part));
    };
    // Middles of the n² parts: those that stand as the triangle does, and those on their heads.
    for (let i = 0; i < n; i++)
      for (let j = 0; i + j < n; j++) {
        add((i + 1 / 3) / n, (j + 1 / 3) / n);
        if (i + j < n - 1) add((i + 2 / 3) / n, (j + 2 / 3) / n);
      }
  }
  // Triangles so large that none of their parts is near a corner count by themselves.
  triangles.forEach((node, k) => {
    if (rows[node]!.size === 0) rows[node]!.set(Math.floor(k / 3), 1);
  });
  return meansOf(rows);
};

/**
 * Of each ring index the parts of the edge around it that a line holds, each from its ring index to the next.
 * Where none does, the fabric beside it says how far it is stretched.
 */
const edgeMeans = ({ ring, around }: PieceSheet): Means =>
  meansOf(
    ring.map((_, k) => {
      const row = new Map<number, number>();
      for (const way of [1, -1] as const) {
        let gone = 0;
        for (let step = 0; gone < AROUND && step < ring.length; step++) {
          const from = (k + (way === 1 ? step : -step - 1) + 2 * ring.length) % ring.length;
          const to = (from + 1) % ring.length;
          const length = (ring[to]!.around - ring[from]!.around + around) % around;
          const within = Math.min(length, AROUND - gone);
          const weight = within * (1 - (gone + within / 2) / AROUND);
          if (Number.isFinite(ring[from]!.limit)) row.set(from, (row.get(from) ?? 0) + weight);
          gone += length;
        }
      }
      return row;
    }),
  );

const meanAt = ({ starts, of, weights }: Means, k: number, value: (key: number) => number) => {
  let sum = 0;
  for (let p = starts[k]!; p < starts[k + 1]!; p++) sum += weights[p]! * value(of[p]!);
  return sum;
};

/** Reads how far a sheet is stretched, edges with it. The weights are worked out once, for any number of answers. */
export const stretchReader = (sheet: PieceSheet): ((eq: Equilibrium) => MeanStretch) => {
  const { ring, limits } = sheet;
  const [fabric, edge] = [fabricMeans(sheet), edgeMeans(sheet)];
  return ({ points, use }) => {
    const overWet = new Float64Array(points.length / 2);
    let ofLimit = 0;
    let worst: MeanStretch['worst'] = { node: 0, along: 'width', edge: null };
    let most = -1;
    const put = (node: number, value: number, along: Direction, kind: EdgeKind | null) => {
      overWet[node] = Math.max(overWet[node]!, value);
      if (value > most) [most, worst] = [value, { node, along, edge: kind }];
    };
    for (let node = 0; node < overWet.length; node++)
      for (const [axis, along] of [
        [0, 'width'],
        [1, 'length'],
      ] as const) {
        put(
          node,
          meanAt(fabric, node, (t) => use[2 * t + axis]! * limits[2 * t + axis]!),
          along,
          null,
        );
        ofLimit = Math.max(
          ofLimit,
          meanAt(fabric, node, (t) => use[2 * t + axis]!),
        );
      }
    const strains = ring.map(({ node, rest }, k) => {
      const next = ring[(k + 1) % ring.length]!;
      const now = Math.hypot(
        points[2 * next.node]! - points[2 * node]!,
        points[2 * next.node + 1]! - points[2 * node + 1]!,
      );
      return Math.max(0, now / Math.hypot(next.rest.x - rest.x, next.rest.y - rest.y) - 1);
    });
    ring.forEach(({ node, kind, rest }, k) => {
      const next = ring[(k + 1) % ring.length]!.rest;
      const along = Math.abs(next.x - rest.x) >= Math.abs(next.y - rest.y) ? 'width' : 'length';
      put(
        node,
        meanAt(edge, k, (i) => strains[i]!),
        along,
        kind,
      );
      ofLimit = Math.max(
        ofLimit,
        meanAt(edge, k, (i) => strains[i]! / ring[i]!.limit),
      );
    });
    return { overWet, worst, ofLimit };
  };
};
