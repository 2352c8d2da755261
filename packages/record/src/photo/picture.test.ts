import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fromBase64, toBase64 } from './bytes.ts';
import { cleanPicture } from './picture.ts';
import { anyMutated, anyPlanted } from './testing/any-picture.ts';
import { PLAIN, type Plain, TYPE_OF } from './testing/pictures.ts';
import { lettersOf, PLANTED, PLANTS, plantedAll } from './testing/planted.ts';

const KINDS = Object.keys(PLAIN) as Plain[];
const cleaned = (bytes: Uint8Array): Uint8Array | null => {
  const clean = cleanPicture(toBase64(bytes));
  return clean && fromBase64(clean.data);
};
/** What changes how a picture is shown: how it is turned, and how its colours are meant. */
const SHOWN: ReadonlySet<string> = new Set([
  ...['Exif', 'eXIf', 'EXIF', 'Adobe, with more', 'a profile that is none'],
]);
const held = (bytes: Uint8Array | null): boolean => lettersOf(bytes!).includes(PLANTED);

describe('what is beside a picture', () => {
  it.each(
    KINDS.flatMap((kind) => Object.keys(PLANTS[kind]).map((place) => [kind, place] as const)),
  )(
    'R90: of a picture (%s), %s is taken out, and what is left is as it is without',
    (kind, place) => {
      const planted = PLANTS[kind][place]!(PLAIN[kind], PLANTED);
      expect(held(planted)).toBe(true);
      const clean = cleaned(planted);
      expect(held(clean)).toBe(false);
      if (!SHOWN.has(place)) expect(clean).toEqual(cleaned(PLAIN[kind]));
    },
  );

  it.each(KINDS)('R90: in every place at once (%s)', (kind) => {
    const planted = plantedAll(kind, PLANTED);
    const clean = cleaned(planted);
    expect(held(planted)).toBe(true);
    expect(held(clean)).toBe(false);
    expect(cleanPicture(toBase64(planted))?.type).toBe(TYPE_OF[kind]);
  });

  it('R90: in some places, in any order', () => {
    fc.assert(
      fc.property(anyPlanted, ({ plain, bytes }) => {
        const clean = cleanPicture(toBase64(bytes));
        expect(clean?.type).toBe(TYPE_OF[plain]);
        expect(held(fromBase64(clean!.data))).toBe(false);
      }),
    );
  });
});

describe('whatever the bytes', () => {
  const anyBytes = fc.oneof(
    anyMutated,
    fc.uint8Array({ maxLength: 300 }),
    fc
      .tuple(fc.constantFrom(...KINDS), fc.nat(64), fc.uint8Array({ maxLength: 300 }))
      .map(([kind, kept, rest]) => Uint8Array.from([...PLAIN[kind].subarray(0, kept), ...rest])),
  );

  it('R91: cleaning never throws, never grows a picture, and cleaned once is clean', () => {
    fc.assert(
      fc.property(anyBytes, (bytes) => {
        const clean = cleaned(bytes);
        if (clean === null) return;
        expect(clean.length).toBeLessThanOrEqual(bytes.length);
        expect(cleaned(clean)).toEqual(clean);
      }),
      { numRuns: 1000 },
    );
  });

  it('R92: a picture that is cut off anywhere is refused', () => {
    for (const kind of KINDS)
      for (let length = 0; length < PLAIN[kind].length; length += 1)
        expect(cleaned(PLAIN[kind].subarray(0, length))).toBeNull();
  });

  it('R92: text that is no base64 is refused', () => {
    for (const data of ['', '!', 'iVBORw0KGgo', '/9j/4AAQ\u20ac', 'PLANTED'])
      expect(cleanPicture(data)).toBeNull();
  });
});
