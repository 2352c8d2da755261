import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { KNIT, LINEAR } from './check/materials.ts';
import { carriedTo, largestDifference, onBorder, shaken, sheetOf, solved } from './check/sheets.ts';
import { EVALUATED, evaluate } from './material.ts';
import { RESIDUAL_SHARE } from './relaxation.ts';

const factor = (min: number, max: number) => fc.double({ min, max, noNaN: true });

test('ME9: patch test: a border carried evenly carries the inside evenly, whatever the triangles', () => {
  const even = fc.record({
    l1: factor(1.02, 1.4),
    l2: factor(1.02, 1.3),
    shear: factor(-0.02, 0.02),
    angle: factor(-Math.PI, Math.PI),
    turned: factor(-Math.PI, Math.PI),
  });
  fc.assert(
    fc.property(even, fc.integer({ min: 0, max: 3 }), ({ l1, l2, shear, angle, turned }, seed) => {
      const mesh = shaken(5 + seed, 4, 0.1 + 0.05 * seed);
      const [c, s] = [Math.cos(turned), Math.sin(turned)];
      const to = (x: number, y: number) => {
        const [p, q] = [l1 * x + shear * y, shear * x + l2 * y];
        return [c * p - s * q + 30, s * p + c * q - 10] as const;
      };
      const question = { ...sheetOf(mesh, KNIT, angle), held: carriedTo(mesh, to, onBorder) };
      const result = solved(question);
      expect(result.converged).toBe(true);
      const wanted = carriedTo(mesh, to, () => true).flatMap(({ x, y }) => [x, y]);
      // Rounding of places of 200 mm, with the tolerance of the residual over the least stiffness.
      if (result.gaveWay.length === 0)
        expect(largestDifference(result.points, wanted)).toBeLessThan(1e-6);
    }),
    { numRuns: 60 },
  );
});

/** S₁₁, S₂₂, S₁₂ of the material itself. */
const stressAt = (material: typeof KNIT, l1: number, l2: number, c12: number) => {
  const out = new Float64Array(EVALUATED);
  evaluate(material, l1 * l1, l2 * l2, c12, out);
  return [2 * out[1]!, 2 * out[2]!, out[3]!] as const;
};

const sideForce = (question: ReturnType<typeof sheetOf>, reactions: Float64Array, axis: 0 | 1) =>
  question.held.reduce((sum, { node }, k) => {
    const far = question.mesh.points[2 * node + axis]! > 79.999;
    return far ? sum + reactions[2 * k + axis]! : sum;
  }, 0);

describe('ME9: closed forms', () => {
  test('pulled both ways, each side bears the load of its line', () => {
    const mesh = shaken();
    const held = carriedTo(mesh, (x, y) => [1.3 * x, 1.2 * y], onBorder);
    const question = { ...sheetOf(mesh), held };
    const result = solved(question);
    // Load per width at rest along line i is λ_i S_ii: along 1 over 80 mm, along 2 over 100 mm.
    const load1 = KNIT.along1.stress(0.3) + 0.1 * 0.2;
    const load2 = KNIT.along2.stress(0.2) + 0.1 * 0.3;
    for (let e = 0; e < result.stress.length; e += 3) {
      expect(result.stress[e]! * 1.3).toBeCloseTo(load1, 9);
      expect(result.stress[e + 1]! * 1.2).toBeCloseTo(load2, 9);
      expect(result.stress[e + 2]).toBeCloseTo(0, 9);
    }
    const area = 100 * 80;
    const density = KNIT.along1.energy(0.3) + KNIT.along2.energy(0.2) + 0.1 * 0.3 * 0.2;
    expect(result.energy / (area * density)).toBeCloseTo(1, 10);
  });

  test('sheared while pulled, S₁₂ = G λ₁λ₂ sin γ', () => {
    const mesh = shaken();
    const held = carriedTo(mesh, (x, y) => [1.3 * x + 0.1 * y, 1.25 * y], onBorder);
    const result = solved({ ...sheetOf(mesh), held });
    const l2 = Math.hypot(0.1, 1.25);
    const [s11, s22, s12] = stressAt(KNIT, 1.3, l2, 1.3 * 0.1);
    for (let e = 0; e < result.stress.length; e += 3) {
      expect(result.stretch[e + 2]).toBeCloseTo(Math.asin(0.1 / l2), 9);
      expect(result.stress[e]).toBeCloseTo(s11, 9);
      expect(result.stress[e + 1]).toBeCloseTo(s22, 9);
      expect(result.stress[e + 2]).toBeCloseTo(s12, 9);
    }
  });

  test('pulled one way with free sides, it draws in as the coupling says and no more than that', () => {
    const mesh = shaken();
    // Left and right sides slide up and down their lines; one node is held against drifting.
    const slides = carriedTo(
      mesh,
      (x) => [1.2 * x, 0],
      (x, y) => x > 99.9 || (x < 1e-9 && y > 1e-9),
    );
    const question = {
      ...sheetOf(mesh, LINEAR),
      held: carriedTo(
        mesh,
        (x, y) => [1.2 * x, y],
        (x, y) => x < 1e-9 && y < 1e-9,
      ),
      slides: slides.map(({ node, x }) => ({ node, ax: x, ay: 0, bx: x, by: 1 })),
    };
    const result = solved(question);
    expect(result.converged).toBe(true);
    // Free sides bear nothing: Y₂ε₂ + cε₁ = 0.
    const across = (-0.1 * 0.2) / 0.54;
    const reactions = result.reactions.slice(2);
    const pull = question.slides.reduce(
      (sum, { ax }, k) => (ax > 1 ? sum + reactions[2 * k]! : sum),
      0,
    );
    for (let e = 0; e < result.stretch.length; e += 3) {
      expect(result.stretch[e]).toBeCloseTo(1.2, 7);
      expect(result.stretch[e + 1]).toBeCloseTo(1 + across, 7);
    }
    expect(pull).toBeCloseTo(80 * (0.27 * 0.2 + 0.1 * across), 6);
  });

  const resistance = RESIDUAL_SHARE * Math.sqrt(0.27 * 0.54);

  test('held narrower than it draws in, it wrinkles with the same pull', () => {
    const mesh = shaken();
    const held = carriedTo(mesh, (x, y) => [1.2 * x, 0.7 * y], onBorder);
    const question = { ...sheetOf(mesh, LINEAR), held };
    const result = solved(question);
    expect([...result.branch].every((branch) => branch === 1)).toBe(true);
    // But for the resistance of wrinkles, at most ½ρ across, which the coupling brings along.
    const across = (-0.1 * 0.2) / 0.54;
    for (let e = 0; e < result.stress.length; e += 3)
      expect(Math.abs(result.stress[e]! * 1.2 - (0.27 * 0.2 + 0.1 * across))).toBeLessThan(
        resistance / 2,
      );
    expect(Math.abs(sideForce(question, result.reactions, 1))).toBeLessThan((resistance / 2) * 100);
  });

  test('held smaller than rest, it is slack and bears no more than the resistance of wrinkles', () => {
    const mesh = shaken();
    const held = carriedTo(mesh, (x, y) => [0.9 * x, 0.8 * y], onBorder);
    const result = solved({ ...sheetOf(mesh), held });
    expect(result.converged).toBe(true);
    expect([...result.branch].every((branch) => branch === 2)).toBe(true);
    expect(Math.max(...result.stress.map(Math.abs))).toBeLessThan(resistance / 2);
  });

  test('left free at rest, nothing moves and nothing bears', () => {
    const mesh = shaken();
    const result = solved({
      ...sheetOf(mesh),
      held: carriedTo(
        mesh,
        (x, y) => [x, y],
        (x, y) => x < 1e-9 && y < 1e-9,
      ),
    });
    expect(result.converged).toBe(true);
    expect(largestDifference(result.points, mesh.points)).toBe(0);
    expect(Math.max(...result.stress.map(Math.abs))).toBeLessThan(1e-14);
  });
});
