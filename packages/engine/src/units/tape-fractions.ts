/** Fractions as a tape shows them. `of`: parts of an inch, 8 for eighths. */
export type TapeFraction = 4 | 8 | 16;

const GLYPHS = new Map([
  ['1/2', '½'],
  ['1/4', '¼'],
  ['3/4', '¾'],
  ['1/8', '⅛'],
  ['3/8', '⅜'],
  ['5/8', '⅝'],
  ['7/8', '⅞'],
]);

const NAMES: Readonly<Record<number, string>> = {
  4: 'quarter',
  8: 'eighth',
  16: 'sixteenth',
  32: 'thirty-second',
  64: 'sixty-fourth',
};

export interface Mixed {
  readonly whole: number;
  /** Zero where there is no fraction; otherwise below `bottom` and in lowest terms. */
  readonly top: number;
  readonly bottom: number;
}

/** `count` parts of which `of` make a whole, in lowest terms. `of` is a power of two, count ≥ 0. */
export function mixed(count: number, of: number): Mixed {
  const whole = Math.floor(count / of);
  let [top, bottom] = [count - whole * of, of];
  while (bottom > 1 && top % 2 === 0) [top, bottom] = [top / 2, bottom / 2];
  return { whole, top, bottom };
}

/** `13⅜`, `½`, `13 5/16`, `0`. Only halves, quarters and eighths have a character of their own. */
export function asGlyphs({ whole, top, bottom }: Mixed): string {
  if (top === 0) return `${whole}`;
  const glyph = GLYPHS.get(`${top}/${bottom}`);
  if (glyph) return `${whole || ''}${glyph}`;
  return asAscii({ whole, top, bottom });
}

/** `13 3/8`, `1/2`, `0`. */
export function asAscii({ whole, top, bottom }: Mixed): string {
  if (top === 0) return `${whole}`;
  return `${whole ? `${whole} ` : ''}${top}/${bottom}`;
}

/** `13 and 3 eighths`, `13 and a half`, `3 quarters`: what a voice should say. */
export function asWords({ whole, top, bottom }: Mixed): string {
  if (top === 0) return `${whole}`;
  const name = NAMES[bottom] ?? `${bottom}th`;
  const part = bottom === 2 ? 'a half' : `${top} ${name}${top > 1 ? 's' : ''}`;
  return whole ? `${whole} and ${part}` : part;
}
