/** Parts of a name shorter than this are words of their own as often as not. */
const LEAST = 3;

const literal = (text: string): string => text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');

/**
 * The whole name, then each part of it: given names, family names, halves of double names. Where some
 * have a capital, those without one are none: `de`, `van`, `the`.
 */
const partsOf = (name: string): string[] => {
  const whole = name.normalize('NFC').trim();
  const words = whole.split(/[\s,.]+/).flatMap((part) => [part, ...part.split('-')]);
  const parts = words.some((part) => /^\p{Lu}/u.test(part))
    ? words.filter((part) => !/^\p{Ll}/u.test(part))
    : words;
  return [...new Set([whole, ...parts])]
    .filter((part) => part !== '')
    .sort((a, b) => b.length - a.length);
};

/** Scripts that write words together, or put small words before a name: it stands within other letters. */
const JOINED =
  /[\p{sc=Han}\p{sc=Hiragana}\p{sc=Katakana}\p{sc=Hangul}\p{sc=Thai}\p{sc=Lao}\p{sc=Khmer}\p{sc=Myanmar}\p{sc=Arabic}\p{sc=Hebrew}]/u;

/** A name, or that of somebody's with an s; alone among letters, where letters make words. */
const pattern = (part: string): string =>
  JOINED.test(part)
    ? literal(part)
    : `(?<![\\p{L}\\p{N}])${literal(part)}(?:s(?![\\p{L}\\p{N}])|(?![\\p{L}\\p{N}]))`;

const finding = (parts: readonly string[], flags: string): RegExp | null =>
  parts.length === 0 ? null : new RegExp(parts.map(pattern).join('|'), flags);

/**
 * Says `instead` for every mention of a person's name, or of a part of it. A part of one or two letters
 * is one only where it is written as in the name, with a capital: `Bo`.
 */
export const withoutName = (name: string, instead: string): ((text: string) => string) => {
  const [whole, ...parts] = partsOf(name);
  if (whole === undefined) return (text) => text;
  const long = finding([whole, ...parts.filter((part) => part.length >= LEAST)], 'giu');
  const short = finding(
    parts.filter((part) => part.length < LEAST && /^\p{Lu}/u.test(part)),
    'gu',
  );
  return (text) =>
    [long, short].reduce<string>(
      (said, names) => (names === null ? said : said.replace(names, instead)),
      text.normalize('NFC'),
    );
};
