import { cubic, line, pathLength, point, withMirror, withoutNothing } from './path.ts';
import type { EdgeKind, Point, Segment } from './types.ts';
import type { UpperSizes } from './upper-sizes.ts';

/** From the neck corner to the shoulder tip; nothing where the sleeve reaches the neck. */
const shoulder = (s: UpperSizes): Segment[] =>
  s.construction === 'set-in' || s.construction === 'drop-shoulder'
    ? [line(point(s.halfNeck, 0), point(s.halfShoulder, s.shoulderY), 'seam')]
    : [];

/** Straight down from the tip, then a quarter curve out to the stitches bound off at the underarm. */
const setInArmhole = (s: UpperSizes, edge: EdgeKind): Segment[] => {
  const depth = s.underarmY - s.shoulderY;
  const inner = point(s.halfChest - s.underarm, s.underarmY);
  const across = inner.x - s.halfShoulder;
  const height = Math.min(0.55 * depth, 2.2 * across);
  const start = point(s.halfShoulder, s.underarmY - height);
  return [
    line(point(s.halfShoulder, s.shoulderY), start, edge),
    cubic(
      start,
      point(start.x, start.y + 0.55 * height),
      point(inner.x - 0.6 * across, inner.y),
      inner,
      edge,
    ),
    line(inner, point(s.halfChest, s.underarmY), 'bound-off'),
  ];
};

const dropArmhole = (s: UpperSizes, edge: EdgeKind): Segment[] => [
  line(point(s.halfChest, s.shoulderY), point(s.halfChest, s.underarmY), edge),
];

const raglan = (s: UpperSizes): Segment[] => {
  const inner = point(s.halfChest - s.underarm, s.underarmY);
  return [
    line(point(s.halfNeck, 0), inner, 'seam'),
    line(inner, point(s.halfChest, s.underarmY), 'join'),
  ];
};

/** A round yoke lies over the shoulder: it leaves the neck nearly level and turns down. */
const yoke = (s: UpperSizes): Segment[] => {
  const inner = point(s.halfChest - s.underarm, s.underarmY);
  const across = inner.x - s.halfNeck;
  const neck = point(s.halfNeck, 0);
  return [
    cubic(
      neck,
      point(neck.x + 0.45 * across, 0.1 * s.underarmY),
      point(inner.x - 0.1 * across, 0.45 * s.underarmY),
      inner,
      'fold',
    ),
    line(inner, point(s.halfChest, s.underarmY), 'join'),
  ];
};

/** The armhole of one side, from the shoulder tip (or neck corner) to the underarm's outer end. */
export const armhole = (s: UpperSizes, edge: EdgeKind): Segment[] => {
  if (s.construction === 'set-in') return setInArmhole(s, edge);
  if (s.construction === 'drop-shoulder') return dropArmhole(s, edge);
  return s.construction === 'raglan' ? raglan(s) : yoke(s);
};

/** Length of the armhole edge that a sleeve cap is sewn to, without the stitches bound off. */
export const armholeLength = (s: UpperSizes): number =>
  pathLength(
    withoutNothing(armhole(s, 'seam')).filter((each) => each.edge === 'seam'),
    s.hemY * 1e-4,
  );

/** Down a side with upright tangents at both ends: a width for every height, so it never crosses. */
const ease = (from: Point, to: Point): Segment => {
  const reach = 0.4 * (to.y - from.y);
  return cubic(from, point(from.x, from.y + reach), point(to.x, to.y - reach), to, 'seam');
};

/** Ribbing draws in below a body that keeps its width down to it; a wider hem flares all the way. */
const aboveRib = (s: UpperSizes, before: number): number =>
  s.halfHem < before ? before - 0.25 * (before - s.halfHem) : s.halfHem;

export const sideSeam = (s: UpperSizes): Segment[] => {
  const stations = [s.waist, s.hip].filter((each) => each !== null);
  const points = [point(s.halfChest, s.underarmY), ...stations.map((e) => point(e.half, e.y))];
  if (s.rib > 0) points.push(point(aboveRib(s, points.at(-1)!.x), s.hemY - s.rib));
  points.push(point(s.halfHem, s.hemY));
  const straight = stations.length === 0 && s.rib === 0;
  return points
    .slice(1)
    .map((to, i) => (straight ? line(points[i]!, to, 'seam') : ease(points[i]!, to)));
};

/** From the centre of the neck up to its right corner; a flat base, then a rise. */
export const halfNeckline = (s: UpperSizes, depth: number): Segment[] => {
  const corner = point(s.halfNeck, 0);
  if (depth === 0) return [line(point(0, 0), corner, 'neckline')];
  return [
    cubic(
      point(0, depth),
      point(0.6 * s.halfNeck, depth),
      point(s.halfNeck, 0.6 * depth),
      corner,
      'neckline',
    ),
  ];
};

const rightEdge = (s: UpperSizes, neck: number, edge: EdgeKind): Segment[] =>
  withoutNothing([
    ...halfNeckline(s, neck),
    ...shoulder(s),
    ...armhole(s, edge),
    ...sideSeam(s),
    line(point(s.halfHem, s.hemY), point(0, s.hemY), 'cast-on'),
  ]);

/** A whole back or front, centred on x = 0 with its neck corners at y = 0. */
export const wholeBody = (s: UpperSizes, neck: number, edge: EdgeKind): Segment[] =>
  withMirror(rightEdge(s, neck, edge));

/** One of two fronts that meet edge to edge at x = 0. */
export const halfFront = (s: UpperSizes, edge: EdgeKind): Segment[] => [
  ...rightEdge(s, s.frontNeck, edge),
  line(point(0, s.hemY), point(0, s.frontNeck), 'selvedge'),
];
