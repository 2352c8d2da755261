import fc from 'fast-check';
import { expect, test } from 'vitest';
import { grams } from '../units/index.ts';
import { blendRegain, contentOfRegain, dryMass, massAtRegain, regainOfContent } from './regain.ts';

const regains = fc.double({ min: 0, max: 3, noNaN: true });

test('T3: a 50 g ball sold at the agreed 18.25 % weighs 48.20 g in a room where wool holds 14 %', () => {
  // The agreed allowance is of Regulation (EU) 1007/2011; 50 · 1.14 / 1.1825 = 48.2029 by the
  // definition of regain. Half of the last printed digit.
  expect(massAtRegain(grams(50), 0.1825, 0.14)).toBeCloseTo(48.2, 2);
});

test('T3: content and regain are inverse', () => {
  fc.assert(
    fc.property(regains, (regain) => {
      // Two roundings of a number up to 3; 1 − content loses up to two digits.
      expect(regainOfContent(contentOfRegain(regain))).toBeCloseTo(regain, 12);
    }),
  );
  // D1909 works with both: a regain of 13.6 % is a content of 11.97 % (definition, four figures).
  expect(contentOfRegain(0.136)).toBeCloseTo(0.1197, 4);
});

test('T3: going to another regain and back gives the same mass', () => {
  fc.assert(
    fc.property(fc.double({ min: 1, max: 2000, noNaN: true }), regains, regains, (mass, a, b) => {
      const there = massAtRegain(grams(mass), a, b);
      expect(Math.abs(massAtRegain(there, b, a) / mass - 1)).toBeLessThan(1e-12);
    }),
  );
});

test('T3: a blend of one fibre has the regain of that fibre', () => {
  const blend = blendRegain([{ fibre: 'cotton', share: 1 }], 'agreed');
  expect(blend.ok && blend.value.low).toBeCloseTo(0.085, 12);
});

test('T3: a half and half blend by label: dry masses add', () => {
  // 50 g wool at 18.25 % and 50 g cotton at 8.5 %: dry 42.283 + 46.083 = 88.366 g, water 11.634 g.
  const blend = blendRegain(
    [
      { fibre: 'wool', share: 0.5 },
      { fibre: 'cotton', share: 0.5 },
    ],
    'agreed',
  );
  const dry = dryMass(grams(50), 0.1825) + dryMass(grams(50), 0.085);
  expect(blend.ok && blend.value.low).toBeCloseTo((100 - dry) / dry, 12);
  expect(blend.ok && blend.value.low).toBeCloseTo(0.1317, 4);
});

test('T3: a blend lies between its fibres', () => {
  fc.assert(
    fc.property(fc.double({ min: 0.01, max: 0.99, noNaN: true }), (share) => {
      const blend = blendRegain(
        [
          { fibre: 'silk', share },
          { fibre: 'nylon', share: 1 - share },
        ],
        'agreed',
      );
      expect(blend.ok && blend.value.low).toBeGreaterThanOrEqual(0.0625 - 1e-12);
      expect(blend.ok && blend.value.low).toBeLessThanOrEqual(0.11 + 1e-12);
    }),
  );
});

test('T3: an unknown fibre widens the range, and rounding of a label is forgiven', () => {
  const unknown = blendRegain([{ fibre: 'other', share: 0.99 }], 'real');
  expect(unknown.ok && unknown.value.low).toBeLessThan(0.01);
  expect(unknown.ok && unknown.value.high).toBeGreaterThan(0.17);
});

test('T3: shares that do not make a whole are a fault that says so', () => {
  const result = blendRegain([{ fibre: 'wool', share: 0.75 }], 'real');
  expect(result.ok).toBe(false);
  if (!result.ok) expect(result.faults[0]?.given).toBe('wool 75 %');
  expect(blendRegain([], 'real').ok).toBe(false);
});

test('T3: an impossible regain is a bug and throws', () => {
  expect(() => massAtRegain(grams(50), -0.1, 0)).toThrow(RangeError);
  expect(() => regainOfContent(1)).toThrow(RangeError);
});
