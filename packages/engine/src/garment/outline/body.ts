import { halfFront, halfNeckline, sideSeam, wholeBody } from './body-path.ts';
import type { Dimensioner } from './dimension.ts';
import { line, point, withMirror } from './path.ts';
import type { Detail, Dimension, EdgeKind, OutlinePiece, Point } from './types.ts';
import { topDepth, type UpperSizes } from './upper-sizes.ts';

const at = (half: number, y: number): [Point, Point] => [point(-half, y), point(half, y)];
const down = (x: number, from: number, to: number): [Point, Point] => [
  point(x, from),
  point(x, to),
];

const acrossBody = (s: UpperSizes, dim: Dimensioner): Dimension[] => [
  dim('neck-width', ...at(s.halfNeck, 0), 'top'),
  ...(s.construction === 'set-in'
    ? [
        dim(
          'cross-back',
          ...at(s.halfShoulder, s.shoulderY + 0.4 * (s.underarmY - s.shoulderY)),
          'right',
          false,
        ),
      ]
    : []),
  dim('chest', ...at(s.halfChest, s.underarmY), 'inside'),
  ...(s.waist ? [dim('waist', ...at(s.waist.half, s.waist.y), 'inside')] : []),
  ...(s.hip ? [dim('hip', ...at(s.hip.half, s.hip.y), 'inside')] : []),
  dim('hem', ...at(s.halfHem, s.hemY), 'bottom'),
];

const downBody = (s: UpperSizes, dim: Dimensioner): Dimension[] => [
  dim(topDepth(s.construction), ...down(-s.halfShoulder, s.shoulderY, s.underarmY), 'left'),
  dim('underarm-length', ...down(-s.halfChest, s.underarmY, s.hemY), 'left'),
  dim('body-length', ...down(s.halfNeck, 0, s.hemY), 'right'),
  ...(s.rib > 0 ? [dim('rib-depth', ...down(s.halfHem, s.hemY - s.rib, s.hemY), 'right')] : []),
];

const frontNeck = (s: UpperSizes, dim: Dimensioner): Dimension =>
  dim('front-neck-depth', ...down(0, 0, s.frontNeck), 'inside');

const backNeck = (s: UpperSizes, dim: Dimensioner): Dimension =>
  dim('back-neck-depth', ...down(-0.3 * s.halfNeck, 0, s.backNeck), 'left', false);

const ribLine = (s: UpperSizes, left: number): Detail[] => {
  if (s.rib === 0) return [];
  const right = sideSeam(s).at(-1)!.from;
  return [{ kind: 'ribbing', path: [line(point(left * right.x, right.y), right, 'cast-on')] }];
};

const armholeEnds = (s: UpperSizes, sides: readonly number[]): Detail[] =>
  s.construction === 'drop-shoulder'
    ? sides.map((side) => ({
        kind: 'armhole-end',
        path: [
          line(
            point(side * s.halfChest, s.underarmY),
            point(side * 0.93 * s.halfChest, s.underarmY),
            'seam',
          ),
        ],
      }))
    : [];

const backDetail = (s: UpperSizes): Detail => ({
  kind: 'back-neckline',
  path: withMirror(halfNeckline(s, s.backNeck)).sort((a, b) => a.from.x - b.from.x),
});

/** Back and front of a body that is closed all around: the front's drawing shows the back too. */
export const closedBody = (s: UpperSizes, dim: Dimensioner, edge: EdgeKind): OutlinePiece[] => {
  const rest = [...acrossBody(s, dim), ...downBody(s, dim)];
  const details = [...ribLine(s, -1), ...armholeEnds(s, [-1, 1])];
  const shape = { copies: 1, symmetric: true } as const;
  return [
    {
      ...shape,
      name: 'front',
      path: wholeBody(s, s.frontNeck, edge),
      details: [...details, backDetail(s)],
      dimensions: [...rest, frontNeck(s, dim), backNeck(s, dim)],
      shownOn: null,
    },
    {
      ...shape,
      name: 'back',
      path: wholeBody(s, s.backNeck, edge),
      details,
      dimensions: [...rest, backNeck(s, dim)],
      shownOn: 'front',
    },
  ];
};

/** A back, and two fronts that open at the centre and meet there edge to edge. */
export const openBody = (s: UpperSizes, dim: Dimensioner, edge: EdgeKind): OutlinePiece[] => [
  {
    name: 'back',
    copies: 1,
    symmetric: true,
    path: wholeBody(s, s.backNeck, edge),
    details: [...ribLine(s, -1), ...armholeEnds(s, [-1, 1])],
    dimensions: [...acrossBody(s, dim), ...downBody(s, dim), backNeck(s, dim)],
    shownOn: null,
  },
  {
    name: 'front',
    copies: 2,
    symmetric: false,
    path: halfFront(s, edge),
    details: [...ribLine(s, 0), ...armholeEnds(s, [1])],
    dimensions: [dim('front-neck-depth', ...down(0, 0, s.frontNeck), 'left')],
    shownOn: null,
  },
];
