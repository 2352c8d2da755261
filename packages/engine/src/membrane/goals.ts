import type { Frames } from './frames.ts';
import type { Mesh } from './mesh/mesh.ts';
import type { ConstraintKind, Constraints, GaveWay, Pin, Slide } from './question.ts';

/** A constraint as the solver sees it. */
export interface Goal {
  readonly kind: ConstraintKind;
  readonly index: number;
  readonly node: number;
  /** Where it is to go, mm; for a slide a place on its line. */
  readonly x: number;
  readonly y: number;
  /** Unit vector along a slide's line. */
  readonly along: readonly [number, number];
  /** Unit vector in which a pin pulls; undefined where it holds whatever happens. */
  readonly outward: readonly [number, number] | undefined;
  /** Most force that it bears, N. */
  readonly most: number;
  /** A pin that has let go. */
  released: boolean;
  /** It bears all it can and is short of its place by as much as that takes. */
  slipped: boolean;
  /** What was at its limit where it gave way and stays; undefined where it did not. */
  frozen: GaveWay['by'] | undefined;
  /** How often it let go or was caught again. */
  changes: number;
}

const unit = (x: number, y: number): readonly [number, number] => {
  const size = Math.hypot(x, y);
  return [x / size, y / size];
};

/** Sum of the outward normals of the outline's edges at rest, each as long as its edge; 2 a node. */
export const outwardNormals = ({ points, triangles }: Mesh): Float64Array => {
  const nodes = points.length / 2;
  const normals = new Float64Array(points.length);
  const sides = new Map<number, number>();
  const eachSide = (put: (i: number, j: number) => void) => {
    for (let k = 0; k < triangles.length; k++)
      put(triangles[k]!, triangles[k % 3 === 2 ? k - 2 : k + 1]!);
  };
  const key = (i: number, j: number) => Math.min(i, j) * nodes + Math.max(i, j);
  eachSide((i, j) => sides.set(key(i, j), (sides.get(key(i, j)) ?? 0) + 1));
  eachSide((i, j) => {
    if (sides.get(key(i, j)) !== 1) return;
    for (const node of [i, j]) {
      normals[2 * node]! += points[2 * j + 1]! - points[2 * i + 1]!;
      normals[2 * node + 1]! -= points[2 * j]! - points[2 * i]!;
    }
  });
  return normals;
};

export const goalsOf = (constraints: Constraints, normals: Float64Array): Goal[] => {
  const state = { released: false, slipped: false, frozen: undefined, changes: 0 };
  const any = Number.POSITIVE_INFINITY;
  const along = [1, 0] as const;
  const pull = ({ node, outward }: Pin): Goal['outward'] => {
    const [x, y] = outward ?? [normals[2 * node]!, normals[2 * node + 1]!];
    return x === 0 && y === 0 ? undefined : unit(x, y);
  };
  const line = ({ ax, ay, bx, by }: Slide) => ({ x: ax, y: ay, along: unit(bx - ax, by - ay) });
  return [
    ...constraints.held.map(
      ({ node, x, y }, index): Goal => ({
        ...state,
        kind: 'held',
        index,
        node,
        x,
        y,
        along,
        outward: undefined,
        most: any,
      }),
    ),
    ...constraints.pins.map(
      (pin, index): Goal => ({
        ...state,
        kind: 'pin',
        index,
        node: pin.node,
        x: pin.x,
        y: pin.y,
        along,
        outward: pull(pin),
        most: pin.most ?? any,
      }),
    ),
    ...constraints.slides.map(
      (slide, index): Goal => ({
        ...state,
        kind: 'slide',
        index,
        node: slide.node,
        ...line(slide),
        outward: undefined,
        most: slide.most ?? any,
      }),
    ),
  ];
};

/** Prescribes in `frames` what the goals prescribe now. */
export const setFrames = (frames: Frames, goals: readonly Goal[]): void => {
  for (const { kind, node, released, slipped, along } of goals) {
    if (released || slipped) frames.free(node);
    else if (kind === 'slide') frames.slide(node, ...along);
    else frames.hold(node);
  }
};

/** Whether it still prescribes a place, and moves to it. */
export const moves = ({ released, slipped, frozen }: Goal): boolean =>
  !released && !slipped && frozen === undefined;

/** Way left to the goal in the node's own axes, mm: both ways, or across a slide's line. */
export const wayLeft = (goal: Goal, points: Float64Array): readonly [number, number] => {
  const [dx, dy] = [goal.x - points[2 * goal.node]!, goal.y - points[2 * goal.node + 1]!];
  if (goal.kind !== 'slide') return [dx, dy];
  return [0, goal.along[0] * dy - goal.along[1] * dx];
};

/** Ways left of all goals that still move, in own axes, and the longest of them. */
export const waysLeft = (goals: readonly Goal[], points: Float64Array) => {
  const moved = new Float64Array(points.length);
  let longest = 0;
  for (const goal of goals) {
    if (!moves(goal)) continue;
    const way = wayLeft(goal, points);
    moved.set(way, 2 * goal.node);
    longest = Math.max(longest, Math.hypot(...way));
  }
  return { moved, longest };
};
