import { MOST_PULL, type PiecePlan, type PieceToBlock, planBlock } from '@dryflat/engine/blocking';
import { fabricMaterial } from '@dryflat/engine/fabric';
import { beforeAll, expect, test } from 'vitest';
import { HAND_NODES, type Hand, openHand } from './hand.ts';

const { constants, doubt } = fabricMaterial(
  {
    stitch: 'stockinette',
    fibres: [{ fibre: 'wool', share: 1 }],
    treatment: 'untreated',
    washing: 'by-hand',
    specimens: [],
  },
  'wet',
);
const box = (width: number, height: number) => [
  { x: 0, y: 0 },
  { x: width, y: 0 },
  { x: width, y: height },
  { x: 0, y: height },
];
const ratio = { width: { mean: 0, sd: 0.02 }, length: { mean: 0, sd: 0.02 } };
const piece: PieceToBlock = {
  name: 'piece',
  outline: box(300, 200),
  edges: ['open', 'open', 'open', 'open'],
  layers: 1,
  wanted: box(312, 206),
  dimensions: [
    { name: 'width', landmark: 'width', direction: 'width', from: 3, to: 2, targetMm: 312 },
    { name: 'length', landmark: 'length', direction: 'length', from: 1, to: 2, targetMm: 206 },
  ],
  zones: [],
  fabric: {
    constants,
    doubt,
    pitch: { stitch: 5, row: 3.5 },
    safe: { limit: 0.05, origin: 'published' },
  },
  restLogSd: { width: 0.02, length: 0.02 },
  after: { kept: { mean: 0.6, sd: 0.2 }, driedOverWet: ratio, rewashedOverWet: ratio },
};

const planned = (
  wires: readonly { lengthMm: number; count: number }[],
  turned = false,
): PiecePlan => {
  const made = planBlock(
    {
      pieces: [piece],
      stock: { straight: 0, tPins: 60, combs: [], wires },
      // Narrower than the piece is wide: it has to lie a quarter turned.
      mat: turned
        ? { widthMm: 250, heightMm: 600, tileMm: 0 }
        : { widthMm: 600, heightMm: 600, tileMm: 300 },
      gentle: true,
    },
    { nodes: HAND_NODES },
  );
  if (!made.ok) throw new Error(made.faults[0]?.problem);
  return made.value.pieces[0]!;
};
const held = (plan: PiecePlan): Hand => {
  const opened = openHand(piece, plan);
  if (!opened.ok) throw new Error(opened.faults[0]?.problem);
  return opened.value;
};
const placesOf = ({ pins }: PiecePlan): [number, number][] =>
  pins.map(({ xMm, yMm }) => [xMm, yMm]);

let plan: PiecePlan;
let hand: Hand;
beforeAll(() => {
  plan = planned([]);
  hand = held(plan);
}, 60_000);

/** Furthest that the edge lies from where the plan has it, mm. */
const offPlan = (own: PiecePlan, { cloth, lie }: Hand): number => {
  const { points } = lie(placesOf(own));
  return Math.max(
    ...own.outlines.pinned.map(({ x, y }, k) => {
      const node = cloth.ring[k]!;
      return Math.hypot(points[2 * node]! - x, points[2 * node + 1]! - y);
    }),
  );
};

test('MV5: with its pins as planned the piece lies as planned', () => {
  // Both are solved to 1e-10 of the fabric's stiffness; places are sent in single precision.
  expect(offPlan(plan, hand)).toBeLessThan(0.01);
  const { reached } = hand.lie(placesOf(plan));
  plan.measurements.forEach(({ reachedMm }, k) => {
    expect(reached[k]).toBeCloseTo(reachedMm.p50Mm, 3);
  });
});

test('MV5: so it does a quarter turned', () => {
  const turned = planned([], true);
  const own = held(turned);
  expect(own.cloth.frame.turned).toBe(true);
  expect(offPlan(turned, own)).toBeLessThan(0.01);
});

test('MV6: a corner pulled out takes its measure along, and back is where it was', () => {
  const places = placesOf(plan);
  const before = hand.lie(places);
  const corner = plan.pins.findIndex(({ xMm, yMm }) =>
    plan.pins.every((p) => xMm + yMm >= p.xMm + p.yMm),
  );
  const pulled = places.map(([x, y], k): [number, number] => (k === corner ? [x + 5, y] : [x, y]));
  const after = hand.lie(pulled);
  // Point 2 of the outline is that corner: the width ends there.
  expect(after.reached[0]! - before.reached[0]!).toBeCloseTo(5, 3);
  expect(after.pulls[corner]!).toBeGreaterThan(before.pulls[corner]!);
  expect(after.converged).toBe(true);
  const back = hand.lie(places);
  back.points.forEach((each, k) => {
    expect(Math.abs(each - before.points[k]!)).toBeLessThan(0.01);
  });
});

test('MV6: pins that leave the fabric more room than it fills hold nothing', () => {
  // A tenth smaller about the middle of the mat: inside the piece at rest on every side.
  const eased = placesOf(plan).map(([x, y]): [number, number] => [
    300 + 0.9 * (x - 300),
    300 + 0.9 * (y - 300),
  ]);
  expect(hand.lie(eased).loose).toHaveLength(plan.pins.length);
  expect(hand.lie(placesOf(plan)).loose).toHaveLength(0);
});

test('MV8: what takes too long is told as it stands, and goes on from there', () => {
  const places = placesOf(plan);
  hand.lie(places);
  const far = places.map(([x, y], k): [number, number] => (k === 0 ? [x, y - 60] : [x, y]));
  const first = hand.lie(far, () => false);
  expect([first.stopped, first.converged]).toEqual([true, false]);
  expect(first.points.every(Number.isFinite)).toBe(true);
  const last = hand.lie(far);
  expect([last.stopped, last.converged]).toEqual([false, true]);
});

test('MV8: a pin pulled far beyond what a hand gives bears that, and how far it is short is told', () => {
  const places = placesOf(plan);
  const far = places.map(([x, y], k): [number, number] => (k === 0 ? [x, y - 300] : [x, y]));
  const { pulls, short, converged } = hand.lie(far);
  expect(converged).toBe(true);
  expect(Math.max(...pulls)).toBeLessThanOrEqual(MOST_PULL + 1e-9);
  expect(short.find(({ pin }) => pin === 0)!.mm).toBeGreaterThan(100);
  hand.lie(places);
});

test('MV7: a wire follows the pins at its ends', () => {
  const wired = planned([{ lengthMm: 320, count: 1 }]);
  const own = held(wired);
  const wire = wired.pins.findIndex(({ kind }) => kind === 'wire');
  expect(wire).toBeGreaterThanOrEqual(0);
  expect(offPlan(wired, own)).toBeLessThan(0.01);
  const ends = own.cloth.wires[wire]!;
  const places = placesOf(wired);
  const lying = own.lie(places);
  const atEnd = (node: number) =>
    wired.pins.findIndex(
      ({ kind, xMm, yMm }) =>
        kind !== 'wire' &&
        Math.hypot(xMm - lying.points[2 * node]!, yMm - lying.points[2 * node + 1]!) < 1,
    );
  const [a, b] = ends.map(atEnd) as [number, number];
  // Across the wire, away from the middle of the mat.
  const { dx, dy } = wired.pins[wire]!.along!;
  const [x0, y0] = places[wire]!;
  const way = Math.sign((x0 - 300) * dy - (y0 - 300) * dx) * 4;
  const [nx, ny] = [way * dy, -way * dx];
  const off = (points: Float32Array, node: number) =>
    ((points[2 * node]! - x0) * nx + (points[2 * node + 1]! - y0) * ny) / 4;
  const out = own.lie(
    places.map(([x, y], k): [number, number] => (k === a || k === b ? [x + nx, y + ny] : [x, y])),
  );
  const onWire = [...own.cloth.ring].filter(
    (node) => Math.abs(off(lying.points, node)) < 0.05 && !ends.includes(node),
  );
  expect(onWire.length).toBeGreaterThan(2);
  for (const node of onWire) expect(off(out.points, node)).toBeCloseTo(4, 1);
});
