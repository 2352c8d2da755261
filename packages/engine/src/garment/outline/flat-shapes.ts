import type { Dimensioner } from './dimension.ts';
import type { Ledger } from './ledger.ts';
import { cubic, line, point, withMirror } from './path.ts';
import { needLead, needShare, PROPORTIONS, type Proportions } from './proportions.ts';
import type { EdgeKind, OutlinePiece, PieceName, Segment } from './types.ts';

const shawl = (half: number, depth: number, path: Segment[], dim: Dimensioner): OutlinePiece => ({
  name: 'shawl',
  copies: 1,
  symmetric: true,
  path,
  details: [],
  dimensions: [
    dim('span', point(-half, 0), point(half, 0), 'top'),
    dim('depth', point(0, 0), point(0, depth), 'inside'),
  ],
  shownOn: null,
});

const shawlSizes = (ledger: Ledger): [number, number] => [
  needLead(ledger, PROPORTIONS.shawl) / 2,
  needShare(ledger, PROPORTIONS.shawl, 'depth'),
];

/** Straight top edge, point down at the centre. */
export const triangle = (ledger: Ledger, dim: Dimensioner): OutlinePiece => {
  const [half, depth] = shawlSizes(ledger);
  const right = [
    line(point(0, 0), point(half, 0), 'selvedge'),
    line(point(half, 0), point(0, depth), 'bound-off'),
  ];
  return shawl(half, depth, withMirror(right), dim);
};

/** Handle length that makes a cubic hug a quarter of an ellipse: 4/3·(√2 − 1). */
const QUARTER = (4 / 3) * (Math.SQRT2 - 1);

/** Straight top edge, half an ellipse below it. */
export const halfRound = (ledger: Ledger, dim: Dimensioner): OutlinePiece => {
  const [half, depth] = shawlSizes(ledger);
  const right = [
    line(point(0, 0), point(half, 0), 'selvedge'),
    cubic(
      point(half, 0),
      point(half, QUARTER * depth),
      point(QUARTER * half, depth),
      point(0, depth),
      'bound-off',
    ),
  ];
  return shawl(half, depth, withMirror(right), dim);
};

/** A rectangle knit from the bottom up. */
export const rectangle = (
  ledger: Ledger,
  dim: Dimensioner,
  name: PieceName,
  proportions: Proportions,
): OutlinePiece => {
  const half = needLead(ledger, proportions) / 2;
  const length = needShare(ledger, proportions, 'length');
  const edge = (x1: number, y1: number, x2: number, y2: number, kind: EdgeKind) =>
    line(point(x1, y1), point(x2, y2), kind);
  return {
    name,
    copies: 1,
    symmetric: true,
    path: withMirror([
      edge(0, 0, half, 0, 'bound-off'),
      edge(half, 0, half, length, 'selvedge'),
      edge(half, length, 0, length, 'cast-on'),
    ]),
    details: [],
    dimensions: [
      dim('width', point(-half, length), point(half, length), 'bottom'),
      dim('length', point(half, 0), point(half, length), 'right'),
    ],
    shownOn: null,
  };
};
