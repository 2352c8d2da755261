import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { KNIT, LINEAR, materials, stretchWithin } from './check/materials.ts';
import { linearLaw, stiffeningLaw } from './law.ts';
import { EVALUATED, evaluate, materialFaults, W } from './material.ts';

const at = (material: typeof KNIT, c: readonly number[]) => {
  const out = new Float64Array(EVALUATED);
  evaluate(material, c[0]!, c[1]!, c[2]!, out);
  return out;
};

test('ME2: stress and stiffness of a sheet are the slopes of its energy', () => {
  const cases = materials(0.9).chain((material) =>
    fc.tuple(fc.constant(material), stretchWithin(material)),
  );
  fc.assert(
    fc.property(cases, ([material, c]) => {
      const here = at(material, c);
      fc.pre(Number.isFinite(here[W]!));
      const h = 1e-6;
      const moved = (k: number, by: number) => c.map((value, j) => (j === k ? value + by : value));
      const hessian = [
        [here[4]!, here[7]!, here[8]!],
        [here[7]!, here[5]!, here[9]!],
        [here[8]!, here[9]!, here[6]!],
      ];
      for (const k of [0, 1, 2]) {
        const [up, down] = [at(material, moved(k, h)), at(material, moved(k, -h))];
        fc.pre(Number.isFinite(up[W]!) && Number.isFinite(down[W]!));
        const size = 1 + Math.abs(here[4]!) + Math.abs(here[5]!);
        // Central differences: h² of third derivatives, which near a jam are 1e4 sizes; rounding 1e-10.
        expect(Math.abs((up[W]! - down[W]!) / (2 * h) - here[1 + k]!)).toBeLessThan(1e-6 * size);
        for (const j of [0, 1, 2])
          expect(Math.abs((up[1 + j]! - down[1 + j]!) / (2 * h) - hessian[j]![k]!)).toBeLessThan(
            1e-4 * size ** 2,
          );
      }
    }),
  );
});

test('ME2: a sheet at its limit, or crushed to nothing, has no finite energy', () => {
  expect(at(KNIT, [1.67 ** 2 + 1e-9, 1, 0])[W]).toBe(Number.POSITIVE_INFINITY);
  expect(at(LINEAR, [0, 1, 0])[W]).toBe(Number.POSITIVE_INFINITY);
});

test('ME3: a material that cannot be is a fault that names its field', () => {
  const field = (material: typeof KNIT) => materialFaults(material, 'm').map((f) => f.field);
  expect(field(KNIT)).toEqual([]);
  // c² < Y₁Y₂ = 0.1458, so c below 0.3818.
  expect(field({ ...LINEAR, coupling: 0.38 })).toEqual([]);
  expect(field({ ...LINEAR, coupling: -0.39 })).toEqual(['m.coupling']);
  expect(field({ ...LINEAR, shear: 0 })).toEqual(['m.shear']);
  expect(field({ ...LINEAR, along1: linearLaw(Number.NaN) })).toContain('m.along1');
  const jammed = stiffeningLaw({ slope: 1, stiffening: 1, limit: 1, jam: 0.2 });
  expect(field({ ...LINEAR, along2: jammed })).toEqual(['m.along2']);
});
