import type { Arrangement } from './arrange.ts';
import type { SizeField, Xy } from './mesh.ts';
import { between, distanceOf } from './segments.ts';

/** A straight stretch between two nodes that were given. */
export interface Piece {
  readonly a: number;
  readonly b: number;
  /** Index of the edge that it belongs to. */
  readonly edge: number;
  readonly boundary: boolean;
}

/** Pieces divided to their size: `points` are those of the arrangement, then the new ones. */
export interface Divided {
  readonly points: Xy[];
  readonly pieces: Piece[];
  /** Node a, node b and piece of every segment. */
  readonly segments: number[];
  /** Piece of every new node, from the first new one on. */
  readonly pieceOfNew: number[];
  /** False when the limit of nodes left a piece undivided. */
  readonly complete: boolean;
}

/** Most samples of the size along one piece, a bound on time; twice the nodes of a whole hem. */
const MOST_SAMPLES = 400;

/** A piece may be longer than its size by this share before it is divided. */
const SLACK = 0.25;

/** Divides pieces into parts that are equally long against the wanted size. */
export const divide = (from: Arrangement, size: SizeField, maxPoints: number): Divided => {
  const points = [...from.points];
  const pieces = from.edges.flatMap((e, edge) =>
    e.nodes.slice(1).map((b, i) => ({ a: e.nodes[i]!, b, edge, boundary: e.boundary })),
  );
  const segments: number[] = [];
  const pieceOfNew: number[] = [];
  let complete = true;
  pieces.forEach((piece, k) => {
    let shares = sharesOf(points[piece.a]!, points[piece.b]!, size, maxPoints - points.length);
    if (shares === undefined) {
      complete = false;
      shares = [];
    }
    let last = piece.a;
    for (const share of shares) {
      const node = points.push(between(points[piece.a]!, points[piece.b]!, share)) - 1;
      pieceOfNew.push(k);
      segments.push(last, node, k);
      last = node;
    }
    segments.push(last, piece.b, k);
  });
  return { points, pieces, segments, pieceOfNew, complete };
};

/** Shares of the way from a to b at which to divide; none when more than `most` are wanted. */
const sharesOf = (a: Xy, b: Xy, size: SizeField, most: number): number[] | undefined => {
  const length = distanceOf(a, b);
  const smallest = Math.min(size(a[0], a[1]), size(b[0], b[1]));
  const samples = Math.min(MOST_SAMPLES, Math.max(2, Math.ceil((2 * length) / smallest)));
  const sums = lengthInSizes(a, b, size, samples);
  const parts = Math.max(1, Math.ceil(sums[samples]! - SLACK));
  if (parts - 1 > most) return undefined;
  const shares: number[] = [];
  for (let k = 1, i = 0; k < parts; k++) {
    const wanted = (k * sums[samples]!) / parts;
    while (sums[i + 1]! < wanted) i++;
    shares.push((i + (wanted - sums[i]!) / (sums[i + 1]! - sums[i]!)) / samples);
  }
  return shares;
};

/** ∫ ds / size from a, at equal steps, by the trapezium rule. */
const lengthInSizes = (a: Xy, b: Xy, size: SizeField, samples: number): Float64Array => {
  const step = distanceOf(a, b) / samples;
  const sums = new Float64Array(samples + 1);
  let before = 1 / size(a[0], a[1]);
  for (let i = 1; i <= samples; i++) {
    const [x, y] = between(a, b, i / samples);
    const here = 1 / size(x, y);
    sums[i] = sums[i - 1]! + 0.5 * step * (before + here);
    before = here;
  }
  return sums;
};
