import { describe, expect, it } from 'vitest';
import { mm } from '../units/index.ts';
import { PULLOVER } from './check/questions.ts';
import { forecast } from './forecast.ts';
import type { PieceCount } from './forecast-types.ts';

/** 100 stitches measuring 53 cm, in a pattern of 104 cm: nothing else is known of the piece. */
const told = (knit?: PieceCount) => {
  const measurements = PULLOVER.measurements.map((m) => (m.id === 'chest' ? { ...m, knit } : m));
  const found = forecast(
    {
      ...PULLOVER,
      measurements,
      specimens: [
        {
          id: 'half',
          name: 'Half a back',
          kind: 'part',
          stitch: 'stockinette',
          workedAsGarment: true,
          washed: 'not',
          width: null,
          height: null,
          readings: [
            {
              kind: 'extent',
              id: 'w',
              direction: 'width',
              extent: mm(530),
              count: 100,
              state: 'asKnit',
              read: 'flat',
              place: null,
            },
          ],
        },
      ],
    },
    { draws: 1000 },
  );
  const of = (id: string) => found.measurements.find((each) => each.id === id)!.states.asKnit;
  return { found, chest: of('chest').p50Mm, waist: of('waist').p50Mm };
};
const HALF: PieceCount = { piece: 'Half a back', across: 100, stitches: 200 };

describe('a piece with stitches of its own', () => {
  it('F31: is as wide as they are; the rest goes by the gauge alone', () => {
    const [own, pattern] = [told(HALF), told()];
    // The pattern's own gauge pulls what was read back by a part of its 6 %.
    expect(Math.abs(own.chest - 1060)).toBeLessThan(12);
    expect(pattern.chest).toBeGreaterThan(1085);
    expect(own.waist).toBeCloseTo(pattern.waist, 6);
  });

  it('F31: begun afresh it has the pattern’s', () => {
    const sizes = (of: ReturnType<typeof told>) => of.found.sizes.map(({ chanceAll }) => chanceAll);
    const [own, pattern] = [sizes(told(HALF)), sizes(told())];
    own.forEach((chance, k) => {
      // Draws of another number of unknowns: a standard error of 1,000 of them is at most 1.6 %, of a difference 2.3.
      expect(Math.abs(chance - pattern[k]!)).toBeLessThan(0.07);
    });
  });

  it('F31: says so, and asks whether it is of another place', () => {
    const notices = (of: ReturnType<typeof told>) => of.found.notices.map(({ code }) => code);
    expect(notices(told(HALF))).toContain('counted-on-piece');
    expect(notices(told())).not.toContain('counted-on-piece');
  });
});
