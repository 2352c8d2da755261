/**
 * Text as people and typesetters write it, in plain letters: full-width forms, curly quotes,
 * primes, the many spaces and dashes, and fractions that are one character.
 */
export interface PlainText {
  readonly plain: string;
  /** For each code unit of `plain`, the index in the original text that it came from. */
  readonly at: readonly number[];
}

const FRACTIONS = new Map([
  ['½', '1/2'],
  ['⅓', '1/3'],
  ['⅔', '2/3'],
  ['¼', '1/4'],
  ['¾', '3/4'],
  ['⅕', '1/5'],
  ['⅖', '2/5'],
  ['⅗', '3/5'],
  ['⅘', '4/5'],
  ['⅙', '1/6'],
  ['⅚', '5/6'],
  ['⅐', '1/7'],
  ['⅛', '1/8'],
  ['⅜', '3/8'],
  ['⅝', '5/8'],
  ['⅞', '7/8'],
  ['⅑', '1/9'],
  ['⅒', '1/10'],
]);

const SAME: readonly (readonly [RegExp, string])[] = [
  [/[\u00a0\u1680\u2000-\u200a\u202f\u205f\u3000]/, ' '],
  [/[\u200b-\u200d\u2060\ufeff\u00ad]/, ''],
  [/[“”„‟″〃˝]/, '"'],
  [/[‘’‚‛′´`ʹʼ]/, "'"],
  [/[‐‑‒–—―−﹣]/, '-'],
  [/[⁄∕]/, '/'],
];
const SUPERSCRIPTS = '⁰¹²³⁴⁵⁶⁷⁸⁹';
const SUBSCRIPTS = '₀₁₂₃₄₅₆₇₈₉';

function fullWidthToAscii(char: string): string {
  const code = char.charCodeAt(0);
  return code >= 0xff01 && code <= 0xff5e ? String.fromCharCode(code - 0xfee0) : char;
}

/** `before`: what was written so far; a raised digit after a plain one starts a fraction. */
function plainChar(original: string, before: string): string {
  const char = fullWidthToAscii(original);
  const fraction = FRACTIONS.get(char);
  if (fraction !== undefined) return ` ${fraction} `;
  const raised = SUPERSCRIPTS.indexOf(char);
  if (raised >= 0) return `${/\d$/.test(before) ? ' ' : ''}${raised}`;
  const lowered = SUBSCRIPTS.indexOf(char);
  if (lowered >= 0) return `${lowered}`;
  return SAME.find(([pattern]) => pattern.test(char))?.[1] ?? char;
}

/** Never fails; characters without a plain form stay as they are. */
export function toPlain(text: string): PlainText {
  let plain = '';
  const at: number[] = [];
  for (let i = 0; i < text.length; i++) {
    const written = plainChar(text[i]!, plain.slice(-1));
    plain += written;
    for (let k = 0; k < written.length; k++) at.push(i);
  }
  return { plain, at };
}
