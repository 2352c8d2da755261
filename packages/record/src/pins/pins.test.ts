import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { matWork as anyWork } from '../arbitrary/mat-work.ts';
import { faultsOf } from '../check/faults-of.ts';
import { sample } from '../malformed/sample.ts';
import type { GarmentRecord, MatWork } from '../schema/index.ts';
import { finishFaults } from './finish-faults.ts';
import {
  pinsForEachWire,
  pinsIn,
  pinsMissing,
  pinsOut,
  pinsToCome,
  pinTotal,
} from './pin-counts.ts';
import { pinWords } from './pin-words.ts';

const NONE = { straight: 0, tPins: 0, combs: 0, wires: 0 };
const work = (): MatWork => structuredClone(sample().onMat?.[0] as MatWork);
const withWork = (...onMat: MatWork[]): GarmentRecord => ({ ...sample(), onMat });

describe('counting pins', () => {
  it('R80: pins in are steps that are in, pins beside the plan, and pins at the ends of wires', () => {
    // One wire and one T-pin are in, one straight pin is passed; 3 beside the plan, 2 hold the wire.
    expect(pinsIn(work())).toEqual({ straight: 5, tPins: 1, combs: 0, wires: 1 });
    expect(pinsIn({ ...work(), steps: [], extra: { ...NONE, combs: 2 } })).toEqual({
      ...NONE,
      combs: 2,
    });
  });

  it('R80: pins at wires are shared out by length, and count with the wires that are in', () => {
    const [wire] = work().steps;
    if (wire === undefined) throw new Error('the sample has a wire');
    const { done: _, ...waiting } = wire;
    const long = { ...waiting, along: { lengthMm: 800, dx: 1, dy: 0 } };
    const half = { ...work(), steps: [wire, long], extra: NONE, pinsForWires: 6 };
    expect(pinsForEachWire(half)).toEqual([2, 4]);
    expect(pinsIn(half)).toEqual({ ...NONE, straight: 2, wires: 1 });
    expect(pinsToCome(half)).toEqual({ ...NONE, straight: 4, wires: 1 });
    expect(pinsIn({ ...half, steps: [long] })).toEqual(NONE);
  });

  it('R80: pins of all wires together are the pins for wires, none for a step that is no wire', () => {
    fc.assert(
      fc.property(anyWork, (any) => {
        const each = pinsForEachWire(any);
        const wires = any.steps.map(({ kind }) => kind === 'wire');
        const total = each.reduce((sum, count) => sum + count, 0);
        expect(total).toBe(wires.includes(true) ? any.pinsForWires : 0);
        expect(each.every((count, at) => count >= 0 && (wires[at] || count === 0))).toBe(true);
      }),
    );
  });

  it('R80: placing one more raises one kind by one, and by none is anything lowered', () => {
    fc.assert(
      fc.property(anyWork, (any) => {
        const before = pinsIn({ ...any, pinsForWires: 0 });
        const [step] = work().steps.filter(({ kind }) => kind === 't-pin');
        const after = pinsIn({ ...any, pinsForWires: 0, steps: [...any.steps, step as never] });
        expect(after).toEqual({ ...before, tPins: before.tPins + 1 });
      }),
    );
  });

  it('R81: missing is what went in and is not out, over all pieces; too many out of one hide none of another', () => {
    const record = withWork(
      { ...work(), out: { ...NONE, straight: 9 } },
      { ...work(), id: 'other', out: NONE },
    );
    expect(pinsOut(record)).toEqual({ ...NONE, straight: 9 });
    expect(pinsMissing(record)).toEqual({ straight: 5, tPins: 2, combs: 0, wires: 2 });
    expect(pinsMissing({ ...sample(), onMat: [] })).toEqual(NONE);
  });

  it('R81: taking out exactly what went in leaves none missing', () => {
    fc.assert(
      fc.property(fc.array(anyWork, { maxLength: 3 }), (list) => {
        const record = withWork(...list.map((each) => ({ ...each, out: pinsIn(each) })));
        expect(pinTotal(pinsMissing(record))).toBe(0);
      }),
    );
  });

  it('R80: counts are told in words, kinds of which there are none left out', () => {
    expect(pinWords({ straight: 1, tPins: 2, combs: 1, wires: 0 })).toBe(
      '1 straight pin, 2 T-pins, 1 comb',
    );
    expect(pinWords(NONE)).toBe('no pins');
  });
});

describe('finishing', () => {
  it('R82: stands against it before it is marked, with kinds and counts, until all are accounted for', () => {
    const { finished: _, ...open } = sample();
    expect(finishFaults(open).map(({ code, problem }) => [code, problem])).toEqual([
      ['pins-unaccounted', '1 straight pin went in and did not come out'],
    ]);
    expect(faultsOf(open)).toEqual([]);
    expect(finishFaults(sample())).toEqual([]);
  });

  it('R82: what stands against finishing is a fault of the record once it is finished, and only then', () => {
    fc.assert(
      fc.property(fc.array(anyWork, { maxLength: 3 }), (list) => {
        const record = withWork(...list);
        const codes = faultsOf(record).map(({ code }) => code);
        const faults = finishFaults(record);
        expect(codes.filter((code) => /^pins-(unacc|not-m)/.test(code))).toEqual(
          faults.map(({ code }) => code),
        );
        const { finished: _, ...open } = record;
        expect(faultsOf(open).filter(({ field }) => field.startsWith('finished'))).toEqual([]);
      }),
    );
  });
});
