import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { KNIT, LINEAR, materials, stretchWithin } from './check/materials.ts';
import { EVALUATED, evaluate, type Material, W } from './material.ts';
import { type Branch, relaxation, SLACK, TAUT, WRINKLED } from './relaxation.ts';
import { eigen } from './two-by-two.ts';

type C = readonly [number, number, number];

const relaxed = (material: Material, c: C) => {
  const out = new Float64Array(EVALUATED);
  const z = new Float64Array(2);
  const { relax, resistance } = relaxation(material);
  const branch: Branch = relax(...c, z, 0, out);
  const stress = [2 * out[1]!, 2 * out[2]!, out[3]!] as const;
  return { out, z, branch, resistance, stress, least: eigen(...stress).low };
};

const cases = (most?: number) =>
  materials(most).chain((material) => fc.tuple(fc.constant(material), stretchWithin(material)));

test('ME4: no principal stress is below the push of the wrinkles that are hidden, and taut places are exactly those of W', () => {
  const seen = new Set<Branch>();
  fc.assert(
    fc.property(cases(), ([material, c]) => {
      const { out, branch, resistance, least, stress, z } = relaxed(material, c);
      seen.add(branch);
      // −½ρZ: of the wrinkle found, or where slack of a Z below 1 but for ρ/Y.
      const hidden = branch === WRINKLED ? z[0]! ** 2 + z[1]! ** 2 : 1.001;
      // Newton for the wrinkle ends at 1e-13 of the stiffness; stress itself rounds at 1e-15 of its size.
      expect(least).toBeGreaterThan(
        (-resistance / 2) * hidden - 1e-11 * (1 + stress[0] + stress[1]),
      );
      const own = new Float64Array(EVALUATED);
      evaluate(material, ...c, own);
      if (branch === TAUT) for (const k of [0, 1, 2, 3]) expect(out[k]).toBeCloseTo(own[k]!, 12);
      if (branch === SLACK) expect(stress[0]).toBeLessThan(1e-12);
    }),
    { numRuns: 1000 },
  );
  expect(seen.size).toBe(3);
});

test('ME4: no hidden wrinkles have less energy than those found', () => {
  const hidden = fc.tuple(
    fc.double({ min: -1, max: 1, noNaN: true }),
    fc.double({ min: -1, max: 1, noNaN: true }),
    fc.double({ min: 0, max: 0.5, noNaN: true }),
  );
  const own = new Float64Array(EVALUATED);
  fc.assert(
    fc.property(cases(), hidden, ([material, c], [p, q, r]) => {
      const { out, resistance } = relaxed(material, c);
      // Z = (p, q)(p, q)ᵀ + r I.
      evaluate(material, c[0] + p * p + r, c[1] + q * q + r, c[2] + p * q, own);
      const size = (p * p + r) ** 2 + (q * q + r) ** 2 + 2 * (p * q) ** 2;
      const energy = own[W]! + (resistance / 8) * size;
      expect(out[W]!).toBeLessThanOrEqual(energy + 1e-12 * (1 + Math.abs(energy)));
    }),
    { numRuns: 2000 },
  );
});

test('ME5: pulled along a line, sides free or squeezed, the load of that line with the contraction of its coupling', () => {
  for (const seen of [0.3, 0.6, 0.9, 0.962]) {
    const strain = 0.2;
    const { branch, resistance, stress, z } = relaxed(LINEAR, [1.2 ** 2, seen ** 2, 0]);
    expect(branch).toBe(WRINKLED);
    // Across: Y₂ε₂ + cε₁ = λ₂S₂₂ with S₂₂ = −½ρz₂² of the hidden height, at most 2e-5 N/mm.
    const hidden = z[1]! ** 2;
    const across = Math.sqrt(seen ** 2 + hidden) - 1;
    expect(stress[1]).toBeCloseTo((-resistance / 2) * hidden, 13);
    expect(0.54 * across + 0.1 * strain).toBeCloseTo((1 + across) * stress[1], 12);
    expect(across).toBeCloseTo((-0.1 * strain) / 0.54, 4);
    expect(stress[0]).toBeCloseTo((0.27 * strain + 0.1 * across) / 1.2, 12);
    expect(z[0]).toBeCloseTo(0, 12);
  }
});

test('ME5: drawn in as the coupling says, it bears nothing across', () => {
  const { branch, stress } = relaxed(LINEAR, [1.2 ** 2, (1 - 0.02 / 0.54) ** 2, 0]);
  expect(branch === TAUT || branch === WRINKLED).toBe(true);
  expect(stress[1]).toBeCloseTo(0, 14);
});

test('ME5: pulled aslant, only stress along the pull is left', () => {
  // At 45°, sides squeezed: S = s ttᵀ − r nnᵀ, so S₁₁ = S₂₂ and S₁₂ = S₁₁ + r for equal lines.
  const even = { ...LINEAR, along2: LINEAR.along1 };
  const [along, across] = [1.3 ** 2, 0.4 ** 2];
  const { branch, stress, resistance, z } = relaxed(even, [
    (along + across) / 2,
    (along + across) / 2,
    (along - across) / 2,
  ]);
  expect(branch).toBe(WRINKLED);
  expect(stress[0]).toBeCloseTo(stress[1], 12);
  expect(stress[2]).toBeCloseTo(stress[0] + (resistance / 2) * (z[0]! ** 2 + z[1]! ** 2), 12);
});

test('ME5: slack in every direction, the stress is −½ρ of what is hidden', () => {
  // Rest hardly moves, by ρ/Y: C + Z = I to 1e-4.
  const { branch, stress, resistance } = relaxed(LINEAR, [0.64, 0.49, 0.1]);
  expect(branch).toBe(SLACK);
  const hidden = [0.36, 0.51, -0.1];
  hidden.forEach((z, k) => {
    expect(stress[k]! / ((-resistance / 2) * z)).toBeCloseTo(1, 2);
  });
});

test('ME6: energy and stress are continuous across taut, wrinkled and slack, and stress is its slope', () => {
  const h = 1e-5;
  fc.assert(
    fc.property(cases(), fc.integer({ min: 0, max: 2 }), ([material, c], k) => {
      const moved = (by: number) => c.map((v, j) => (j === k ? v + by : v)) as unknown as C;
      const [here, up, down] = [0, h, -h].map((by) => relaxed(material, moved(by)).out);
      fc.pre(up![W]! < 1e3 && down![W]! < 1e3);
      const size = 1 + Math.max(Math.abs(up![4]!), Math.abs(up![5]!), Math.abs(here![4]!));
      // C¹ with bounded curvature: across a change of branch the difference is off by curvature · h.
      expect(Math.abs((up![W]! - down![W]!) / (2 * h) - here![1 + k]!)).toBeLessThan(4 * h * size);
      for (const j of [1, 2, 3]) expect(Math.abs(up![j]! - down![j]!)).toBeLessThan(8 * h * size);
    }),
    { numRuns: 1000 },
  );
});

test('ME6: stiffness is the slope of stress within each branch', () => {
  const h = 1e-6;
  let wrinkled = 0;
  fc.assert(
    fc.property(cases(), ([material, c]) => {
      const here = relaxed(material, c);
      const o = here.out;
      const hessian = [
        [o[4]!, o[7]!, o[8]!],
        [o[7]!, o[5]!, o[9]!],
        [o[8]!, o[9]!, o[6]!],
      ];
      for (const k of [0, 1, 2]) {
        const moved = (by: number) => c.map((v, j) => (j === k ? v + by : v)) as unknown as C;
        const [up, down] = [relaxed(material, moved(h)), relaxed(material, moved(-h))];
        if (up.branch !== here.branch || down.branch !== here.branch) continue;
        wrinkled += here.branch === WRINKLED ? 1 : 0;
        const size = 1 + o[4]! + o[5]! + here.z[0]! ** -2 * 1e-6 + here.z[1]! ** -2 * 1e-6;
        if (!(size < 100)) continue;
        // h² of third derivatives and rounding of 1e-12/h in the wrinkle.
        for (const j of [0, 1, 2])
          expect(
            Math.abs((up.out[1 + j]! - down.out[1 + j]!) / (2 * h) - hessian[j]![k]!),
          ).toBeLessThan(1e-4 * size ** 2);
      }
    }),
    { numRuns: 500 },
  );
  expect(wrinkled).toBeGreaterThan(100);
});

test('ME7: relaxed energy is convex in C where W is', () => {
  const pairs = materials(0.15).chain((material) =>
    fc.tuple(fc.constant(material), stretchWithin(material), stretchWithin(material)),
  );
  fc.assert(
    fc.property(pairs, fc.double({ min: 0, max: 1, noNaN: true }), ([material, a, b], s) => {
      const middle = a.map((v, k) => v + s * (b[k]! - v)) as unknown as C;
      const [wa, wb, wm] = [a, b, middle].map((c) => relaxed(material, c).out[W]!);
      expect(wm!).toBeLessThanOrEqual(wa! + s * (wb! - wa!) + 1e-10 * (1 + wa! + wb!));
    }),
    { numRuns: 1000 },
  );
});

test('ME4: a wrinkle to start from changes nothing but rounding', () => {
  const start = fc.tuple(
    fc.double({ min: -0.6, max: 0.6, noNaN: true }),
    fc.double({ min: -0.6, max: 0.6, noNaN: true }),
  );
  fc.assert(
    fc.property(cases(), start, ([material, c], warm) => {
      const cold = relaxed(material, c);
      const out = new Float64Array(EVALUATED);
      relaxation(material).relax(...c, Float64Array.from(warm), 0, out);
      for (const k of [0, 1, 2, 3])
        expect(Math.abs(out[k]! - cold.out[k]!)).toBeLessThan(1e-10 * (1 + Math.abs(cold.out[k]!)));
    }),
    { numRuns: 1000 },
  );
});

test('ME4: a stretch at the limit has no finite energy, and any squeeze short of it has', () => {
  expect(relaxed(KNIT, [1.67 ** 2, 0.01, 0]).out[W]).toBe(Number.POSITIVE_INFINITY);
  for (const c of [
    [1.66 ** 2, 0.01, 0],
    [1e-6, 1e-6, 0],
    [1.6 ** 2, 0.04, 0.3],
    [0, 0, 0],
  ] as const)
    expect(relaxed(KNIT, c).out[W]).toBeLessThan(1e3);
});
