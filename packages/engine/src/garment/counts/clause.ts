import { toPlain } from '../../units/index.ts';

/** One statement of a line, with what stood in brackets behind it. */
export interface Clause {
  /** From 1. */
  readonly line: number;
  /** As it was given. */
  readonly given: string;
  /** In plain words, one space between, abbreviations written out. */
  readonly words: string;
  /** Stitches that the text says there are then: `(84 sts)`. */
  readonly claims: number | null;
}

const NUMBERS = 'one two three four five six seven eight nine ten eleven twelve'.split(' ');
const ORDINALS = 'first second third fourth fifth sixth seventh eighth ninth tenth'.split(' ');

const SHORT: Readonly<Record<string, string>> = {
  st: 'stitch',
  sts: 'stitch',
  stitches: 'stitch',
  dec: 'decrease',
  decs: 'decrease',
  decreasing: 'decrease',
  inc: 'increase',
  incs: 'increase',
  increasing: 'increase',
  foll: 'following',
  alt: 'alternate',
  beg: 'beginning',
  start: 'beginning',
  rem: 'remaining',
  rep: 'repeat',
  rnd: 'round',
  rnds: 'round',
  rounds: 'round',
  rows: 'row',
  ends: 'end',
  edges: 'edge',
  sides: 'side',
  both: 'each',
  center: 'centre',
  cont: 'continue',
  once: '1 times',
  twice: '2 times',
  time: 'times',
  ribbing: 'rib',
  bo: 'bind off',
  ...Object.fromEntries(NUMBERS.map((word, i) => [word, String(i + 1)])),
  ...Object.fromEntries(ORDINALS.map((word, i) => [word, `${i + 1}th`])),
};

/** A dot after these, before a small letter or a digit, ends no sentence. */
const DOTTED =
  /\b(st|sts|dec|decs|inc|incs|foll|alt|beg|rem|rep|rnd|rnds|cont|approx|in|cm|mm)\.(?=\s+[a-z\d(])/g;

const CLAIM = /[([]\s*(\d+)\s*(?:sts?|stitches)\b[^)\]]*[)\]]/i;
const BRACKETS = /[([][^)\]]*[)\]]/g;

const expanded = (text: string): string =>
  text
    .toLowerCase()
    .replace(/\bcast(?:ing)? off\b|\bbinding off\b/g, 'bind off')
    .replace(/\b(\d+)(st|nd|rd|th)\b/g, '$1th')
    .replace(/-/g, ' ')
    .split(/[\s,]+|:(?=\s|$)/)
    .map((word) => SHORT[word] ?? word)
    .join(' ')
    .trim();

/** Sentences of a line: ended by a full stop or a semicolon, not by the dot of an abbreviation or a decimal. */
const sentences = (line: string): string[] =>
  line
    .replace(DOTTED, '$1')
    .split(/[.;](?=\s|$)/)
    .filter((part) => part.trim() !== '');

/** `Dec 1 st at each end, then work 4 rows` is one statement: only stops part them. */
export const clausesOf = (text: string): Clause[] =>
  text.split(/\r\n|\r|\n/).flatMap((line, i) =>
    sentences(toPlain(line).plain).flatMap((given) => {
      const claims = CLAIM.exec(given)?.[1];
      const words = expanded(given.replace(BRACKETS, ' '));
      if (words === '' && claims === undefined) return [];
      return [{ line: i + 1, given: given.trim(), words, claims: claims ? Number(claims) : null }];
    }),
  );
