import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { mm } from '../../units/index.ts';
import type { MaterialStitch } from './departures.ts';
import { edgeCord } from './edge-cord.ts';
import { CHAIN_YARN, chainLimit, EDGE_KINDS, TIGHTNESSES } from './edge-limits.ts';
import { fabricMaterial } from './fabric-material.ts';

const wool = (stitch: MaterialStitch) =>
  fabricMaterial(
    {
      stitch,
      fibres: [{ fibre: 'wool', share: 1 }],
      treatment: 'untreated',
      washing: 'by-hand',
      specimens: [],
    },
    'wet',
  ).constants;
const edge = fc.record({
  edge: fc.constantFrom(...EDGE_KINDS),
  tightness: fc.constantFrom(...TIGHTNESSES),
  beside: fc.constantFrom(
    ...(['stockinette', 'garter', 'rib-1x1'] as const).flatMap((s) => [
      wool(s).width,
      wool(s).length,
    ]),
  ),
  pitch: fc.double({ min: 1, max: 20, noNaN: true }).map(mm),
  ribbed: fc.boolean(),
});

test('MA15: load is the slope of energy, stiffness the slope of load, and a slack edge carries nothing', () => {
  fc.assert(
    fc.property(edge, fc.double({ min: 0.01, max: 0.9, noNaN: true }), (question, x) => {
      const { law } = edgeCord(question);
      const strain = x * law.limit;
      const h = 1e-5 * law.limit * Math.min(x, 1 - x);
      const slope = (f: (strain: number) => number) => (f(strain + h) - f(strain - h)) / (2 * h);
      // Central difference: 1e-10, and cancellation of 1e-16/1e-7.
      expect(slope(law.energy) / law.stress(strain)).toBeCloseTo(1, 5);
      expect(slope(law.stress) / law.stiffness(strain)).toBeCloseTo(1, 5);
      expect([law.energy(-x), law.stress(-x), law.stiffness(-x)]).toEqual([0, 0, 0]);
      expect(law.stress(law.limit)).toBe(Number.POSITIVE_INFINITY);
    }),
  );
});

test('MA15: looser is further, whatever the edge', () => {
  for (const kind of EDGE_KINDS) {
    const limits = TIGHTNESSES.map(
      (tightness) =>
        edgeCord({
          edge: kind,
          tightness,
          beside: wool('stockinette').width,
          pitch: mm(3),
          ribbed: false,
        }).law.limit,
    );
    expect(limits).toEqual(limits.toSorted((a, b) => a - b));
    expect(new Set(limits).size).toBe(3);
  }
});

test('MA15: a plain bound-off edge ends long before stockinette does, a stretchy one does not', () => {
  const bound = (tightness: 'normal' | 'stretchy') =>
    edgeCord({
      edge: 'bound-off',
      tightness,
      beside: wool('stockinette').width,
      pitch: mm(3),
      ribbed: false,
    }).limitOverFabric;
  expect(bound('normal')).toBeLessThan(0.5);
  expect(bound('stretchy')).toBeGreaterThan(0.95);
});

test('MA15: a chain has no give left when its yarn only goes there and back', () => {
  // Two legs and half a turn: 2 w + π d. A stitch of 22 d of yarn is 22/4.1 = 5.37 d wide (Munden 1959,
  // wet relaxed), so that is 2.585 widths. From memory: three widths bind a stitch off.
  expect(chainLimit(2 + (Math.PI * 4.1) / 22)).toBeCloseTo(0, 12);
  expect(chainLimit(CHAIN_YARN.normal.low)).toBeCloseTo(0.2073, 3);
});

test('MA15: an edge across ribbing is as wide as plain fabric before it begins to hold', () => {
  const rib = edgeCord({
    edge: 'bound-off',
    tightness: 'normal',
    beside: wool('rib-1x1').width,
    pitch: mm(3),
    ribbed: true,
  });
  expect(rib.law.limit).toBeGreaterThan(1);
  expect(rib.limitOverFabric).toBeLessThan(1);
});

test('MA15: no width across is a bug', () => {
  const beside = wool('garter').width;
  expect(() =>
    edgeCord({ edge: 'seam', tightness: 'tight', beside, pitch: mm(0), ribbed: false }),
  ).toThrow(RangeError);
});
