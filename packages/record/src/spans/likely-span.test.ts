import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { likelySpan, type SpanClues } from './likely-span.ts';

const clues = (some: Partial<SpanClues>): SpanClues => ({
  targetMm: null,
  bodyMm: null,
  group: 'woman',
  body: 'chest',
  ...some,
});

describe('likelySpan', () => {
  it.each([
    ['20 in for a body of 36 in', 508, { bodyMm: 914 }, 'flat', 'body'],
    ['40 in for a body of 36 in', 1016, { bodyMm: 914 }, 'around', 'body'],
    ['a metre for a body of 36 in', 1000, { bodyMm: 914 }, 'around', 'body'],
    ['20 in for a woman', 508, {}, 'flat', 'group'],
    ['a metre for a woman', 1000, {}, 'around', 'group'],
    ['a metre for a baby', 1000, { group: 'baby' }, null, 'group'],
    ['25 cm for a baby', 250, { group: 'baby' }, null, 'group'],
    ['20 in for nobody', 508, { group: 'nobody' }, null, 'none'],
    ['47 cm of a piece of 104 cm', 470, { targetMm: 1040, bodyMm: 980 }, 'flat', 'target'],
    ['a made-up place', 470, { body: null }, null, 'none'],
  ] as const)('R50: %s', (_, value, some, likely, by) => {
    expect(likelySpan(value, clues(some))).toMatchObject({ likely, by });
  });

  it('R51: flat and around agree: half the number reads flat where the number reads around', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 100, max: 2000, noNaN: true }),
        fc.double({ min: 0.8, max: 1.5, noNaN: true }),
        (bodyMm, ease) => {
          const girth = bodyMm * ease;
          const around = likelySpan(girth, clues({ bodyMm }));
          const flat = likelySpan(girth / 2, clues({ bodyMm }));
          // At these eases doubling always leaves the sensible range, and halving too (0.8 / 2 and 1.5 / 2 reach 0.75 only at the edge).
          expect(around.likely === 'around' || girth * 2 <= bodyMm * 1.6).toBe(true);
          expect(flat.likely === 'flat' || girth / 2 >= bodyMm * 0.75).toBe(true);
        },
      ),
    );
  });

  it('R51: scaling number and body alike changes nothing', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 100, max: 3000, noNaN: true }),
        fc.double({ min: 100, max: 3000, noNaN: true }),
        // Powers of two scale without rounding, so that a bound is met alike before and after.
        fc.constantFrom(0.25, 0.5, 2, 4),
        (value, bodyMm, scale) => {
          expect(likelySpan(value * scale, clues({ bodyMm: bodyMm * scale }))).toEqual(
            likelySpan(value, clues({ bodyMm })),
          );
        },
      ),
    );
  });
});
