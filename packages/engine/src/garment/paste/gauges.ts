import { type CountOver, type Fault, parseCountOver, parseLength } from '../../units/index.ts';
import { isInstruction } from './prose.ts';
import { type Reading, tableFault } from './reading.ts';
import { type Source, sourceOf, spanOf } from './source.ts';
import type { PrintedGauge, TextSpan } from './types.ts';

const NUMBER = '\\d+(?:[.,]\\d+)?(?:\\s+\\d+\\/\\d+)?';
const UNIT = "(?:inch(?:es)?|ins?|cms?|centimet(?:re|er)s?|mms?)(?!\\p{L})\\.?|''|\"";

/** The next piece of a gauge: a count, two bare counts, a length, or what joins them. */
const PIECE = new RegExp(
  `\\s*(?:${[
    `(?<count>${NUMBER}\\s*(?:sts?|stitch(?:es)?|rows?|rnds?|rounds?|courses?)(?!\\p{L})\\.?)`,
    `(?<length>(?:${NUMBER}\\s*(?:x|×|by)\\s*)?${NUMBER}\\s*(?:${UNIT})|(?<=(?:per|\\/|the|an?)\\s*)(?:${UNIT}))`,
    `(?<pair>${NUMBER}\\s*(?:x|×|by|\\/)\\s*${NUMBER}(?=\\s*(?:=|(?:over|to|per|in|for)(?!\\p{L}))))`,
    '(?<join>[&+,;:=/()[\\]×-]|(?:and|x|by|per|over|to|in|for|the|an?|each|square|sq|equals?|measures?)(?!\\p{L})\\.?)',
  ].join('|')})`,
  'iuy',
);
/** Where one may begin. A number after another and a dash is the end of a range. */
const START = new RegExp(`(?<![\\p{L}\\d.,/])(?<!\\d\\s*-\\s*)(?=${NUMBER}|${UNIT})`, 'giu');

interface Piece {
  readonly kind: 'count' | 'length' | 'pair' | 'join';
  readonly text: string;
  readonly end: number;
}

/** The pieces that follow each other from a place on, up to the last that is no join. */
function piecesFrom(plain: string, start: number): Piece[] {
  const pieces: Piece[] = [];
  let last = 0;
  PIECE.lastIndex = start;
  for (let found = PIECE.exec(plain); found; found = PIECE.exec(plain)) {
    const [kind] = Object.entries(found.groups ?? {}).find(([, text]) => text !== undefined) ?? [];
    pieces.push({ kind: kind as Piece['kind'], text: found[0].trim(), end: PIECE.lastIndex });
    if (kind !== 'join') last = pieces.length;
  }
  return pieces.slice(0, last);
}

const NAMED = /\b(?:gauge|tension)\b/i;
const COUNTS = /(?<!\p{L})(?:sts?|stitch(?:es)?|rows?|rnds?|rounds?|courses?)(?!\p{L})/iu;
/** What makes a count with a length a gauge, where no word says so. */
const OVER = /[=/]|\b(?:over|to|per|in|for|equals?|measures?)\b/i;

const has = (pieces: readonly Piece[], ...kinds: readonly Piece['kind'][]): boolean =>
  pieces.some(({ kind }) => kinds.includes(kind));

/** Nothing before it, or words that end in a colon, such as `Stockinette, blocked:`, or the needles. */
const standsAlone = (label: string): boolean =>
  /^[^\p{L}\d]*(?:(?:over|in|to)\s)?$/iu.test(label) || /^[^\d:]{1,60}:\s*$/.test(label);
/** `With larger needles, 18 sts …` is no instruction. */
const NEEDLES = /^[^\p{L}\d]*(?:with|using|on)\s[^.\d]*\bneedles?[,:]?\s*$/iu;

/** Is this a gauge although no word says so? Its stitches, or else its rows with `=`, are over a length. */
const isUnnamedGauge = (label: string, pieces: readonly Piece[]): boolean => {
  const joins = pieces.filter(({ kind }) => kind === 'join').map(({ text }) => text);
  const stitches = pieces.some(({ kind, text }) => kind === 'count' && /st/i.test(text));
  return (
    (standsAlone(label) || NEEDLES.test(label)) &&
    [label, ...joins].some((each) => (stitches ? OVER : /=/).test(each))
  );
};

/** `4 in / 10 cm` are one length printed twice: they differ by 1.6 %, and so do other such pairs. */
const TWICE = 0.03;

/** The length of `10 x 10 cm` and the like, with its unit; null for any other piece. */
function lengthOf({ kind, text }: Piece): { mm: number; unit: 'in' | 'cm' } | null {
  const last = text.replace(/^.*(?:x|×|by)\s*/i, '');
  const read = kind === 'length' ? parseLength(last, { field: '' }) : null;
  if (!read?.ok) return null;
  return { mm: read.value.value, unit: read.value.unit === 'in' ? 'in' : 'cm' };
}

/**
 * Of a length that is printed in both units one after the other, the one in the unit asked for, else
 * the first. They are not the same length to a tenth of a stitch, so only one can be meant.
 */
function withoutSecondUnit(pieces: readonly Piece[], unit: 'cm' | 'in' | undefined): Piece[] {
  const kept: Piece[] = [];
  for (const piece of pieces) {
    const at = kept.findLastIndex(({ kind }) => kind !== 'join');
    const before = kept[at] ? lengthOf(kept[at]) : null;
    const here = lengthOf(piece);
    const twice =
      before && here && before.unit !== here.unit && Math.abs(before.mm / here.mm - 1) < TWICE;
    if (!twice) kept.push(piece);
    else if (here.unit === unit) kept[at] = piece;
  }
  return kept;
}

/** `22 x 30`: stitches, then rows, as everywhere. */
const inWords = ({ kind, text }: Piece): string =>
  kind === 'pair'
    ? text.replace(/\s*(?:x|×|by|\/)\s*(?=\d+(?:[.,]\d+)?$)/i, ' sts ').concat(' rows')
    : text;

const UNWASHED =
  /\bun-?(?:blocked|washed)\b|\bbefore (?:blocking|washing|(?:any|the) wash)|\bnot (?:blocked|washed)|\bas knit\b|\boff the needles?\b/i;
const WASHED = /\b(?:(?:wet-?)?block(?:ed|ing)|wash(?:ed|ing)?|dried|steamed)\b/i;

const stateOf = (words: string): PrintedGauge['state'] =>
  UNWASHED.test(words) ? 'asKnit' : WASHED.test(words) ? 'dried' : null;

const notRead = (given: string): Fault =>
  tableFault(
    'gauge-unread',
    'gauge',
    given,
    'this gauge was not understood',
    'Type it under the pattern’s gauge, such as 20 sts and 28 rows = 4 in.',
  );

/** Where the sentence with the gauge ends: what follows may be a measurement. */
function sentenceEnd(plain: string, from: number): number {
  const end = /[.;](?=\s+\p{L})/u.exec(plain.slice(from));
  return end ? from + end.index + 1 : plain.length;
}

/** What `source` says of a gauge, and where that ends; null where it is about something else. */
function gaugeIn(
  source: Source,
  unit: 'cm' | 'in' | undefined,
): { gauge: Omit<PrintedGauge, 'from'> | null; end: number } | null {
  const { plain } = source;
  if (!/\d/.test(plain) || !(COUNTS.test(plain) || NAMED.test(plain))) return null;
  const start = [...plain.matchAll(START)].find(({ index }) =>
    has(piecesFrom(plain, index), 'count', 'length', 'pair'),
  )?.index;
  const label = plain.slice(0, start ?? plain.length);
  const named = NAMED.test(label);
  if (isInstruction(NEEDLES.test(label) ? plain.slice(start) : plain)) return null;
  const pieces = start === undefined ? [] : piecesFrom(plain, start);
  const whole = has(pieces, 'count', named ? 'pair' : 'count') && has(pieces, 'length');
  if (!named && !(whole && isUnnamedGauge(label, pieces))) return null;
  const end = sentenceEnd(plain, pieces.at(-1)?.end ?? 0);
  if (!whole || /\d/.test(label)) return { gauge: null, end };
  const text = withoutSecondUnit(pieces, unit).map(inWords).join(' ');
  const read = parseCountOver(text, { field: 'gauge' });
  if (!read.ok) return { gauge: null, end };
  const { stitches, rows } = read.value;
  return { gauge: { stitches, rows, state: stateOf(plain.slice(0, end)) }, end };
}

type Halves = readonly [CountOver | null, CountOver | null];

/** `Stitch gauge: …` above `Row gauge: …` are one. */
function joined(gauges: readonly PrintedGauge[]): PrintedGauge[] {
  const whole: PrintedGauge[] = [];
  for (const next of gauges) {
    const before = whole.at(-1);
    const complements = ([a, b]: Halves, [c, d]: Halves): boolean => (!a && !d) || (!b && !c);
    if (before && complements([before.stitches, before.rows], [next.stitches, next.rows]))
      whole[whole.length - 1] = {
        ...before,
        stitches: before.stitches ?? next.stitches,
        rows: before.rows ?? next.rows,
        state: before.state ?? next.state,
      };
    else whole.push(next);
  }
  return whole;
}

/**
 * Takes the gauge out of the lines of a text. Counts are kept with the length they are given over: where
 * that is printed in both units, in `unit`, else in the first. What stands beside a gauge belongs to it up
 * to the end of its sentence; `lines` is what is left to read.
 */
export function takeGauges(
  all: readonly TextSpan[],
  unit: 'cm' | 'in' | undefined,
  reading: Reading,
): { gauges: PrintedGauge[]; lines: TextSpan[] } {
  const gauges: PrintedGauge[] = [];
  const lines = all.flatMap(([start, end]): TextSpan[] => {
    const source = sourceOf(reading.text, start, end);
    const found = gaugeIn(source, unit);
    if (!found) return [[start, end]];
    const blank = source.plain.length - source.plain.trimStart().length;
    const from = spanOf(source, blank, source.plain.slice(0, found.end).trimEnd().length);
    if (found.gauge) {
      gauges.push({ ...found.gauge, from });
      reading.mark({ from, as: 'gauge' });
    } else reading.refuse(from, notRead(reading.text.slice(...from)));
    const [, rest] = spanOf(source, 0, found.end);
    return reading.text.slice(rest, end).trim() === '' ? [] : [[rest, end]];
  });
  return { gauges: joined(gauges), lines };
}
