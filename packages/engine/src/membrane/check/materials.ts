import * as fc from 'fast-check';
import { linearLaw, stiffeningLaw } from '../law.ts';
import type { Material } from '../material.ts';

/** About a plain knit (laws of Singal et al. 2024), with a jam and a shear stiffness of our own. */
export const KNIT: Material = {
  along1: stiffeningLaw({ slope: 0.27, stiffening: 0.0175, limit: 0.67, jam: -0.5 }),
  along2: stiffeningLaw({ slope: 0.54, stiffening: 0.042, limit: 0.46, jam: -0.5 }),
  coupling: 0.1,
  shear: 0.05,
};

export const LINEAR: Material = {
  along1: linearLaw(0.27),
  along2: linearLaw(0.54),
  coupling: 0.1,
  shear: 0.05,
};

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

const law = (slope: number) =>
  fc
    .record({
      stiffening: between(0.01, 0.2),
      limit: between(0.3, 2),
      jam: between(-0.7, -0.3),
    })
    .map(({ stiffening, limit, jam }) =>
      stiffeningLaw({ slope, stiffening: slope * stiffening, limit, jam }),
    );

/** Stiffening sheets; `most` is the largest |c|/√(Y₁Y₂). Up to 0.15 their W is convex in C. */
export const materials = (most = 0.15): fc.Arbitrary<Material> =>
  fc
    .record({
      slope1: between(0.05, 1),
      slope2: between(0.05, 1),
      share: between(-most, most),
      shear: between(0.02, 0.5),
    })
    .chain(({ slope1, slope2, share, shear }) =>
      fc.record({
        along1: law(slope1),
        along2: law(slope2),
        coupling: fc.constant(share * Math.sqrt(slope1 * slope2)),
        shear: fc.constant(shear),
      }),
    );

/** C of a stretch within 0.85 of the limits of `material` along any direction, squeezed or sheared. */
export const stretchWithin = ({ along1, along2 }: Material) =>
  fc
    .record({
      l1: between(0.2, 1 + 0.85 * along1.limit),
      l2: between(0.2, 1 + 0.85 * along2.limit),
      sine: between(-0.9, 0.9),
    })
    .map(({ l1, l2, sine }) => [l1 * l1, l2 * l2, l1 * l2 * sine] as const);
