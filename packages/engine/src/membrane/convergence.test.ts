import { expect, test } from 'vitest';
import { KNIT } from './check/materials.ts';
import { type Carried, carriedTo, onBorder, sheetOf, solved } from './check/sheets.ts';
import { Frames } from './frames.ts';
import { EVALUATED, evaluate, G1, G2, G3 } from './material.ts';
import { structuredRectangle } from './mesh/structured-rectangle.ts';
import { newton } from './newton.ts';
import { partsOf } from './parts.ts';
import { deformation } from './sheet.ts';
import { System } from './system.ts';

const [WIDTH, HEIGHT] = [100, 80];

/** A smooth stretch of 8 to 36 %, taut everywhere. */
const exact: Carried = (x, y) => [
  1.22 * x + 5 * Math.sin((Math.PI * x) / WIDTH) * Math.cos((Math.PI * y) / HEIGHT),
  1.2 * y + 3 * Math.cos((Math.PI * x) / WIDTH) * Math.sin((Math.PI * y) / HEIGHT) + 0.03 * x,
];

const STEP = 1e-4;
/** Columns of F = ∂exact/∂(x, y), by differences of fourth order (error 1e-12). */
const slopes = (x: number, y: number): readonly number[] => {
  const along = (dx: number, dy: number) =>
    [0, 1].map((k) => {
      const at = (s: number) => exact(x + s * dx, y + s * dy)[k]!;
      const h = 100 * STEP;
      return (8 * (at(h) - at(-h)) - (at(2 * h) - at(-2 * h))) / (12 * h);
    });
  return [...along(1, 0), ...along(0, 1)];
};

/** First Piola–Kirchhoff stress P = F S, columns along x and y at rest. */
const piola = (f: readonly number[]): readonly number[] => {
  const [a, b, c, d] = f as [number, number, number, number];
  const out = new Float64Array(EVALUATED);
  evaluate(KNIT, a * a + b * b, c * c + d * d, a * c + b * d, out);
  const [s11, s22, s12] = [2 * out[G1]!, 2 * out[G2]!, out[G3]!];
  return [a * s11 + c * s12, b * s11 + d * s12, a * s12 + c * s22, b * s12 + d * s22];
};

/** Load per area that keeps `exact` in equilibrium: −div P. */
const load = (x: number, y: number): readonly [number, number] => {
  const h = 0.05;
  const p = (dx: number, dy: number) => piola(slopes(x + dx, y + dy));
  const d = (k: number, dx: number, dy: number) =>
    (8 * (p(dx, dy)[k]! - p(-dx, -dy)[k]!) - (p(2 * dx, 2 * dy)[k]! - p(-2 * dx, -2 * dy)[k]!)) /
    (12 * h);
  return [-d(0, h, 0) - d(2, 0, h), -d(1, h, 0) - d(3, 0, h)];
};

/** Midpoints of the sides: exact for quadratics. */
const MIDPOINTS = [
  [0.5, 0.5, 0],
  [0, 0.5, 0.5],
  [0.5, 0, 0.5],
] as const;

const errors = (cells: number) => {
  const mesh = structuredRectangle(WIDTH, HEIGHT, cells, cells, 'alternate');
  const question = { ...sheetOf(mesh), held: carriedTo(mesh, exact, onBorder) };
  const parts = partsOf(question);
  const frames = new Frames(mesh.points.length / 2);
  for (const { node } of question.held) frames.hold(node);
  const loads = new Float64Array(mesh.points.length);
  const eachPoint = (
    put: (e: number, x: number, y: number, share: readonly number[], weight: number) => void,
  ) => {
    for (let e = 0; e < parts.sheet.rest.count; e++)
      for (const share of MIDPOINTS) {
        const at = (axis: number) =>
          share.reduce<number>(
            (sum, s, k) => sum + s * mesh.points[2 * mesh.triangles[3 * e + k]! + axis]!,
            0,
          );
        put(e, at(0), at(1), share, parts.sheet.rest.area[e]! / 3);
      }
  };
  eachPoint((e, x, y, share, weight) => {
    const [fx, fy] = load(x, y);
    share.forEach((s, k) => {
      const node = mesh.triangles[3 * e + k]!;
      loads[2 * node]! += weight * s * fx;
      loads[2 * node + 1]! += weight * s * fy;
    });
  });
  const system = new LoadedSystem(parts, frames, loads);
  const points = Float64Array.from(
    carriedTo(mesh, exact, () => true).flatMap(({ x, y }) => [x, y]),
  );
  const end = newton(system, points, {
    tolerance: () => 1e-11,
    shift: 0,
    mostIterations: 20,
    mostCuts: 20,
    chordBelow: 0,
    onIteration: () => true,
  });
  expect(end.converged).toBe(true);
  let [place, slope] = [0, 0];
  const f = new Float64Array(4);
  eachPoint((e, x, y, share, weight) => {
    const wanted = exact(x, y);
    for (const axis of [0, 1] as const) {
      const ours = share.reduce(
        (sum, s, k) => sum + s * points[2 * mesh.triangles[3 * e + k]! + axis]!,
        0,
      );
      place += weight * (ours - wanted[axis]) ** 2;
    }
    deformation(parts.sheet, points, e, f);
    const right = slopes(x, y);
    f.forEach((value, k) => {
      slope += weight * (value - right[k]!) ** 2;
    });
  });
  return { place: Math.sqrt(place), slope: Math.sqrt(slope) };
};

/** With loads that do not depend on the places. */
class LoadedSystem extends System {
  private readonly loads: Float64Array;

  constructor(parts: System['parts'], frames: Frames, loads: Float64Array) {
    super(parts, frames);
    this.loads = loads;
  }

  override evaluate(points: Float64Array, wanted: Parameters<System['evaluate']>[1]): void {
    super.evaluate(points, wanted);
    this.loads.forEach((force, k) => {
      this.totals.energy -= force * points[k]!;
      this.totals.forces[k]! -= force;
    });
  }
}

test('ME11: a manufactured solution is met at the rates of linear triangles: h in slope, h² in place', () => {
  const [coarse, middle, fine] = [8, 16, 32].map(errors);
  const rate = (a: number, b: number) => Math.log2(a / b);
  // Rates of the theory, 1 and 2; a tenth for meshes that are not yet fine.
  expect(Math.abs(rate(coarse!.slope, middle!.slope) - 1)).toBeLessThan(0.1);
  expect(Math.abs(rate(middle!.slope, fine!.slope) - 1)).toBeLessThan(0.05);
  expect(Math.abs(rate(coarse!.place, middle!.place) - 2)).toBeLessThan(0.2);
  expect(Math.abs(rate(middle!.place, fine!.place) - 2)).toBeLessThan(0.1);
});

test("ME12: Newton's method ends quadratically on a smooth case", () => {
  const mesh = structuredRectangle(WIDTH, HEIGHT, 12, 10, 'alternate');
  const question = { ...sheetOf(mesh), held: carriedTo(mesh, exact, onBorder) };
  const system = new System(partsOf(question), new Frames(mesh.points.length / 2));
  for (const { node } of question.held) system.frames.hold(node);
  const bump = (x: number, y: number) =>
    3 * Math.sin((Math.PI * x) / WIDTH) * Math.sin((Math.PI * y) / HEIGHT);
  const off: Carried = (x, y) => [exact(x, y)[0] + bump(x, y), exact(x, y)[1] - bump(x, y)];
  const points = Float64Array.from(carriedTo(mesh, off, () => true).flatMap(({ x, y }) => [x, y]));
  const { history, converged } = newton(system, points, {
    tolerance: () => 1e-12,
    shift: 0,
    mostIterations: 20,
    mostCuts: 20,
    chordBelow: 0,
    onIteration: () => true,
  });
  expect(converged).toBe(true);
  // Residuals r that are small but above rounding: log r roughly doubles; 1.6 leaves room for constants.
  const orders = history
    .slice(1)
    .map((r, k) => ({ before: history[k]!, r }))
    .filter(({ before, r }) => before < 0.05 && r > 1e-12)
    .map(({ before, r }) => Math.log(r) / Math.log(before));
  expect(orders.length).toBeGreaterThan(0);
  for (const order of orders) expect(order).toBeGreaterThan(1.6);
});

test('ME12: and a whole cold solve of a taut sheet takes few iterations', () => {
  const mesh = structuredRectangle(WIDTH, HEIGHT, 12, 10, 'alternate');
  const result = solved({ ...sheetOf(mesh), held: carriedTo(mesh, exact, onBorder) });
  expect(result.converged).toBe(true);
  expect(result.iterations).toBeLessThanOrEqual(6);
});
