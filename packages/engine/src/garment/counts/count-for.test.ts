import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { countFor } from './count-for.ts';

const question = fc.record({
  wantedMm: fc.double({ min: 1, max: 2000, noNaN: true }),
  pitchMm: fc.double({ min: 1, max: 12, noNaN: true }),
  repeat: fc.option(
    fc.record({ stitches: fc.integer({ min: 1, max: 24 }), plus: fc.integer({ min: 0, max: 9 }) }),
    { nil: undefined },
  ),
  parity: fc.constantFrom('any', 'even', 'odd') as fc.Arbitrary<'any' | 'even' | 'odd'>,
  atLeast: fc.integer({ min: 0, max: 40 }),
});

describe('counts for a length', () => {
  it('CN2: 51 cm at 20 stitches over 10 cm are 102, on a repeat of 8 plus 3 they are 99 or 107', () => {
    expect(countFor({ wantedMm: 510, pitchMm: 5 })).toMatchObject({
      value: { count: 102, errorMm: 0, below: { count: 101 }, above: { count: 103 } },
    });
    expect(countFor({ wantedMm: 510, pitchMm: 5, repeat: { stitches: 8, plus: 3 } })).toMatchObject(
      {
        value: { count: 99, mm: 495, errorMm: -15, below: { count: 91 }, above: { count: 107 } },
      },
    );
  });

  it('CN2: none of the allowed counts is nearer, found by trying them all', () => {
    fc.assert(
      fc.property(question, (q) => {
        const { stitches, plus } = q.repeat ?? { stitches: 1, plus: 0 };
        const allowed = Array.from({ length: 2100 }, (_, i) => i).filter(
          (n) =>
            n >= Math.max(1, q.atLeast) &&
            n >= stitches + plus &&
            (n - plus) % stitches === 0 &&
            (q.parity === 'any' || (n % 2 === 0) === (q.parity === 'even')),
        );
        const answer = countFor(q);
        if (allowed.length === 0) return !answer.ok;
        if (!answer.ok) return false;
        const off = (n: number) => Math.abs(n * q.pitchMm - q.wantedMm);
        const { count, below, above } = answer.value;
        const at = allowed.indexOf(count);
        // Ties are settled at a ten-millionth of a repeat, some 0.00003 mm here.
        expect(off(count)).toBeLessThan(Math.min(...allowed.map(off)) + 1e-4);
        expect([below?.count, above.count]).toEqual([allowed[at - 1], allowed[at + 1]]);
        return true;
      }),
    );
  });

  it('CN2: halfway between two the larger is taken, and nothing is below the first', () => {
    expect(countFor({ wantedMm: 12.5, pitchMm: 5 })).toMatchObject({ value: { count: 3 } });
    expect(countFor({ wantedMm: 1, pitchMm: 5 })).toMatchObject({
      value: { count: 1, below: null },
    });
  });

  it('CN12: what cannot be counted is a fault with its mend', () => {
    const good = { wantedMm: 100, pitchMm: 5 };
    for (const [bad, code, field] of [
      [{ ...good, wantedMm: -4 }, 'count-length', 'wantedMm'],
      [{ ...good, wantedMm: Number.NaN }, 'count-length', 'wantedMm'],
      [{ ...good, pitchMm: 0 }, 'count-length', 'pitchMm'],
      [{ ...good, pitchMm: 1e-9 }, 'count-too-many', 'pitchMm'],
      [{ ...good, repeat: { stitches: 0, plus: 1 } }, 'count-not-whole', 'repeat.stitches'],
      [{ ...good, repeat: { stitches: 4, plus: 0.5 } }, 'count-not-whole', 'repeat.plus'],
      [{ ...good, atLeast: -1 }, 'count-not-whole', 'atLeast'],
      [
        { ...good, repeat: { stitches: 4, plus: 1 }, parity: 'even' as const },
        'count-parity-impossible',
        'parity',
      ],
    ] as const) {
      const answer = countFor(bad);
      expect(answer).toMatchObject({ ok: false, faults: [{ code, field }] });
      if (!answer.ok) expect(answer.faults[0]!.mend).toMatch(/^[A-Z].+\.$/);
    }
  });
});
