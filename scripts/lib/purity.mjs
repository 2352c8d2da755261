// @ts-check

/** What a pure calculation has no use for: the clock, chance, the page, the network, the process. */
const IMPURE = [
  /\bMath\.random\b/,
  /\bDate\.now\b/,
  /\bnew Date\(\s*\)/,
  /\bperformance\.now\b/,
  /\bfetch\(/,
  /\b(?:localStorage|sessionStorage|indexedDB)\b/,
  /\b(?:document|window|globalThis)\.\w/,
  /\bprocess\.\w/,
  /\bset(?:Timeout|Interval)\(/,
];

/** @param {string} source */
const withoutComments = (source) =>
  source.replace(/\/\*[\s\S]*?\*\//g, '').replace(/(^|\s)\/\/.*$/gm, '$1');

/**
 * Names of impure things that a source file reaches for, comments left aside.
 * @param {string} source
 * @returns {string[]}
 */
export const impurities = (source) =>
  IMPURE.flatMap((pattern) => withoutComments(source).match(pattern)?.[0] ?? []);
