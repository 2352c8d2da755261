import { type MatStep, type MatWork, pinsIn, pinTotal } from '@dryflat/record';
import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { pinsForEachWire, pinsToCome } from './pins-to-come.ts';

const step = (kind: MatStep['kind'], done?: MatStep['done']): MatStep => ({
  xMm: 0,
  yMm: 0,
  kind,
  edge: 'selvedge',
  from: [
    { name: 'a', mm: 1 },
    { name: 'b', mm: 1 },
  ],
  pullN: 0,
  ...(done && { done }),
});

const kinds = fc.array(fc.constantFrom('straight' as const, 't-pin', 'comb', 'wire'), {
  maxLength: 20,
});

const workOf = (steps: MatStep[], pinsForWires: number): MatWork => ({
  id: 'w',
  piece: 'back',
  copy: '',
  mirrored: false,
  layers: 1,
  gentle: true,
  begun: '2031-02-20T10:00:00Z',
  steps,
  at: 0,
  told: [],
  pinsForWires,
});

test('PN2: what is to come is counted by kind, with the pins of wires, without what is in or left out', () => {
  const steps = [
    step('straight', 'in'),
    step('straight', 'passed'),
    step('wire', 'in'),
    step('wire'),
    step('t-pin'),
    step('straight'),
  ];
  expect(pinsToCome({ steps, pinsForWires: 3 })).toEqual({
    straight: 1 + 1,
    tPins: 1,
    combs: 0,
    wires: 1,
  });
});

test('PN2: pins that hold wires are shared out whole, to wires only, and all of them', () => {
  fc.assert(
    fc.property(kinds, fc.integer({ min: 0, max: 50 }), (kinds, pinsForWires) => {
      const each = pinsForEachWire({ steps: kinds.map((kind) => step(kind)), pinsForWires });
      const all = kinds.includes('wire') ? pinsForWires : 0;
      expect(each.reduce((a, b) => a + b, 0)).toBe(all);
      expect(each.every((n, k) => n >= 0 && (n === 0 || kinds[k] === 'wire'))).toBe(true);
    }),
  );
});

test('PN2: at every step what is in and what is to come make the plan', () => {
  fc.assert(
    fc.property(kinds, fc.nat(20), (kinds, at) => {
      const steps = kinds.map((kind, k) => step(kind, k < at ? 'in' : undefined));
      const work = workOf(steps, kinds.includes('wire') ? 3 : 0);
      expect(pinTotal(pinsIn(work)) + pinTotal(pinsToCome(work))).toBe(
        steps.length + work.pinsForWires,
      );
    }),
  );
});
