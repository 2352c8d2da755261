import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { loadAt, strainAt } from '../stretch/law.ts';
import { fabricMaterial } from './fabric-material.ts';
import { MOST_SHARE } from './plane.ts';
import {
  drawnMaterial,
  type MaterialNormals,
  MOST_JAM,
  scaledMaterial,
} from './scaled-material.ts';

const wool = fabricMaterial(
  {
    stitch: 'stockinette',
    fibres: [{ fibre: 'wool', share: 1 }],
    treatment: 'untreated',
    washing: 'by-hand',
    specimens: [],
  },
  'wet',
);
const factors = fc.double({ min: 0.2, max: 5, noNaN: true });

test('MA14: a fabric that gives k times as far carries a k-th of the load at any strain', () => {
  fc.assert(
    fc.property(factors, factors, fc.double({ min: 0.001, max: 0.9, noNaN: true }), (w, l, x) => {
      const scaled = scaledMaterial(wool, { give: { width: w, length: l } });
      const times = (d: 'width' | 'length') => {
        const strain = x * wool.constants[d].limit;
        return loadAt(wool.constants[d], strain) / loadAt(scaled.constants[d], strain);
      };
      expect(times('width') / w).toBeCloseTo(1, 12);
      expect(times('length') / l).toBeCloseTo(1, 12);
      // Under a load so small that nothing stiffens (0.1 % of strain and less) it gives k times as far.
      const far = (m: typeof wool) => strainAt(m.constants.width, 1e-5).value;
      expect(far(scaled) / far(wool) / w).toBeCloseTo(1, 2);
    }),
  );
});

test('MA14: a limit is moved and nothing else', () => {
  const { constants } = scaledMaterial(wool, { limit: 1.3 });
  expect(constants.width.limit).toBeCloseTo(1.3 * wool.constants.width.limit, 12);
  expect(constants.width.slope).toBe(wool.constants.width.slope);
  expect(constants.share).toBe(wool.constants.share);
});

test('MA14: coupling and jam stay inside what a sheet can have', () => {
  fc.assert(
    fc.property(factors, factors, (coupling, jam) => {
      const { constants } = scaledMaterial(wool, { coupling, jam });
      expect(constants.share).toBeLessThanOrEqual(MOST_SHARE);
      expect(constants.length.jam).toBeLessThanOrEqual(MOST_JAM);
    }),
  );
  const half = scaledMaterial(wool, { coupling: 0.5, shear: 2, jam: 0.5 });
  expect(half.constants.share).toBeCloseTo(wool.constants.share / 2, 15);
  expect(half.constants.shearShare).toBeCloseTo(wool.constants.shearShare * 2, 15);
  expect(half.constants.width.jam).toBeCloseTo(wool.constants.width.jam / 2, 15);
});

const none: MaterialNormals = {
  give: { width: 0, length: 0 },
  limit: { width: 0, length: 0 },
  coupling: 0,
  shear: 0,
  jam: 0,
};

test('MA14: a draw of zeros is the fabric itself, one of ones is a log-SD away', () => {
  expect(drawnMaterial(wool, none).constants).toEqual(wool.constants);
  const one = drawnMaterial(wool, { ...none, give: { width: 1, length: 0 } }).constants;
  const softer = (d: 'width' | 'length') => Math.log(wool.constants[d].slope / one[d].slope);
  expect(softer('width')).toBeCloseTo(wool.doubt.give.width, 12);
  // Correlated with the width, so it moves the same way, by less than its own log-SD.
  expect(softer('length')).toBeGreaterThan(0);
  expect(softer('length')).toBeLessThan(wool.doubt.give.length / 2);
  const far = drawnMaterial(wool, { ...none, limit: { width: 0, length: 1 } }).constants;
  expect(Math.log(far.length.limit / wool.constants.length.limit)).toBeCloseTo(
    wool.doubt.limit.length,
    12,
  );
});

test('MA14: a factor that is not above 0 is a bug', () => {
  for (const give of [0, -1, Number.NaN, Number.POSITIVE_INFINITY])
    expect(() => scaledMaterial(wool, { give })).toThrow(RangeError);
});
