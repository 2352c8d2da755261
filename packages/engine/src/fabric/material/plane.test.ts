import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { materialFaults } from '../../membrane/material.ts';
import { FIBRES } from '../../textile/index.ts';
import type { Direction } from '../specimen.ts';
import { loadAt } from '../stretch/law.ts';
import { MATERIAL_STITCHES } from './departures.ts';
import { fabricMaterial } from './fabric-material.ts';
import { couplingOf, MOST_SHARE, narrowingAt, type PlaneConstants, sheetOf } from './plane.ts';
import { drawnMaterial } from './scaled-material.ts';

const law = fc.record({
  slope: fc.double({ min: 0.002, max: 1, noNaN: true }),
  stiffening: fc.double({ min: 0.002, max: 0.1, noNaN: true }),
  limit: fc.double({ min: 0.2, max: 5, noNaN: true }),
  jam: fc.double({ min: 0.05, max: 0.9, noNaN: true }),
});
const planes: fc.Arbitrary<PlaneConstants> = fc.record({
  width: law,
  length: law,
  share: fc.double({ min: 0, max: MOST_SHARE, noNaN: true }),
  shearShare: fc.double({ min: 0.01, max: 0.5, noNaN: true }),
});
const directions = fc.constantFrom<Direction>('width', 'length');
const share = fc.double({ min: 0.001, max: 0.9, noNaN: true });
const lawsOf = (plane: PlaneConstants, d: Direction) => {
  const { along1, along2 } = sheetOf(plane);
  return d === 'width' ? { pulled: along1, across: along2 } : { pulled: along2, across: along1 };
};

test('MA1: a strip free to narrow carries exactly the load of its law', () => {
  fc.assert(
    fc.property(planes, directions, share, (plane, d, x) => {
      const strain = x * plane[d].limit;
      const { pulled, across } = lawsOf(plane, d);
      const narrowing = narrowingAt(plane, d, strain);
      // Near the jam the push that is asked back loses digits with 1 − x²; away from it, rounding.
      const room = 1 - (narrowing / -across.jam!) ** 2;
      fc.pre(room > 1e-3);
      const push = couplingOf(plane) * strain;
      expect((across.stress(-narrowing) + push) / Math.max(push, 1e-12)).toBeCloseTo(0, 9);
      const carried = pulled.stress(strain) - couplingOf(plane) * narrowing;
      const foretold = loadAt(plane[d], strain);
      // Difference of numbers that may be (ρ²/(1 − ρ²) + 1) times as large: twice.
      expect(carried / foretold).toBeCloseTo(1, 12);
    }),
  );
});

test('MA2: load is the slope of energy and stiffness the slope of load, on both sides of rest', () => {
  fc.assert(
    fc.property(planes, directions, share, fc.boolean(), (plane, d, x, squeezed) => {
      const { pulled } = lawsOf(plane, d);
      const end = squeezed ? pulled.jam! : pulled.limit;
      const strain = x * end;
      const h = 1e-5 * Math.abs(end) * Math.min(x, 1 - x);
      const slope = (f: (strain: number) => number) => (f(strain + h) - f(strain - h)) / (2 * h);
      // Error of order 1e-10 by Taylor, except where the push across bends the law over a strain far
      // shorter than the limit: with slopes and jams this far apart up to 1e-4.
      expect(slope(pulled.energy) / pulled.stress(strain)).toBeCloseTo(1, 4);
      expect(slope(pulled.stress) / pulled.stiffness(strain)).toBeCloseTo(1, 3);
    }),
  );
});

test('MA2: rest is without load or energy, and as stiff squeezed as pulled', () => {
  fc.assert(
    fc.property(planes, directions, (plane, d) => {
      const { pulled } = lawsOf(plane, d);
      expect([pulled.stress(0), pulled.energy(0)]).toEqual([0, 0]);
      // Y = E/(1 − ρ²) from one side and E + c²/Y from the other; first-order terms are 1e-9 · 1e4.
      expect(pulled.stiffness(1e-10) / pulled.stiffness(-1e-10)).toBeCloseTo(1, 4);
      const raise = 1 / (1 - plane.share ** 2);
      expect(pulled.stiffness(0) / (plane[d].slope * raise)).toBeCloseTo(1, 12);
    }),
  );
});

/** Least of W₁₁W₂₂ / c² over strains from near the jams to near the limits. Convex where above 1. */
const leastConvexity = (plane: PlaneConstants): number => {
  const sheet = sheetOf(plane);
  const strains = (d: Direction) =>
    [-0.9, -0.5, -0.1, 0, 0.01, 0.03, 0.06, 0.1, 0.2, 0.4, 0.6, 0.8, 0.95].map((x) =>
      x < 0 ? x * plane[d].jam : x * plane[d].limit,
    );
  let least = Number.POSITIVE_INFINITY;
  for (const a of strains('width'))
    for (const b of strains('length'))
      least = Math.min(least, sheet.along1.stiffness(a) * sheet.along2.stiffness(b));
  return least / couplingOf(plane) ** 2;
};

test('MA3: every stitch in every fibre is a usable sheet of convex energy, also at the edge of doubt', () => {
  for (const stitch of MATERIAL_STITCHES)
    for (const fibre of FIBRES)
      for (const state of ['dry', 'wet'] as const) {
        const fabric = fabricMaterial(
          {
            stitch,
            fibres: [{ fibre, share: 1 }],
            treatment: 'unknown',
            washing: 'not-said',
            specimens: [],
          },
          state,
        );
        for (const z of [-2, 0, 2]) {
          const drawn = drawnMaterial(fabric, {
            give: { width: z, length: -z },
            limit: { width: z, length: z },
            coupling: 2,
            shear: z,
            jam: -2,
          });
          expect(materialFaults(drawn.sheet, 'fabric')).toEqual([]);
          expect(leastConvexity(drawn.constants)).toBeGreaterThan(1);
        }
      }
});

test('MA3: by C = FᵀF too it is convex wherever the sheet is taut, up to the loads that were pulled', () => {
  // The membrane has one equilibrium where W is convex in C = λ²: (w₁″ − s₁/λ₁)(w₂″ − s₂/λ₂) > c². Rib
  // is left out: pulled hard in length and held at its width it wants to draw in more than its soft
  // width resists, and there the membrane leaves out the negative curvature.
  const shares = [
    -0.9, -0.6, -0.3, -0.1, 0, 0.02, 0.05, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9,
  ];
  let taut = 0;
  for (const stitch of MATERIAL_STITCHES.filter((each) => each !== 'rib-1x1'))
    for (const fibre of FIBRES) {
      const { constants, sheet } = fabricMaterial(
        {
          stitch,
          fibres: [{ fibre, share: 1 }],
          treatment: 'unknown',
          washing: 'not-said',
          specimens: [],
        },
        'wet',
      );
      const strains = (d: Direction) =>
        shares.map((x) => (x < 0 ? x * constants[d].jam : x * constants[d].limit));
      for (const a of strains('width'))
        for (const b of strains('length')) {
          const s1 = sheet.along1.stress(a) + sheet.coupling * b;
          const s2 = sheet.along2.stress(b) + sheet.coupling * a;
          // 0.3 N/mm is the most that any strip was pulled to.
          if (s1 < 0 || s2 < 0 || s1 > 0.3 || s2 > 0.3) continue;
          taut++;
          const one = sheet.along1.stiffness(a) - s1 / (1 + a);
          const two = sheet.along2.stiffness(b) - s2 / (1 + b);
          expect(one).toBeGreaterThan(0);
          expect(one * two).toBeGreaterThan(sheet.coupling ** 2);
        }
    }
  expect(taut).toBeGreaterThan(1000);
});

test('MA3: a coupling above what keeps the energy convex is a bug', () => {
  const one = { slope: 0.1, stiffening: 0.01, limit: 1, jam: 0.3 };
  const plane = { width: one, length: one, share: 0.71, shearShare: 0.1 };
  expect(() => sheetOf(plane)).toThrow(RangeError);
});
