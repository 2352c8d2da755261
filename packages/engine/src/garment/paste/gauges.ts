import { type CountOver, type Fault, parseCountOver, parseLength } from '../../units/index.ts';
import type { GarmentKind } from '../kinds.ts';
import { isInstruction } from './prose.ts';
import { readLine } from './read-line.ts';
import { Reading, tableFault } from './reading.ts';
import { cut, type Source, sourceOf, spanOf } from './source.ts';
import { guessLandmark } from './synonyms.ts';
import type { PrintedGauge, SizeTableOptions, TextSpan } from './types.ts';

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
/** Where one may begin. */
const START = new RegExp(`(?<![\\p{L}\\d.,/])(?=${NUMBER}|${UNIT})`, 'giu');

interface Piece {
  readonly kind: 'count' | 'length' | 'pair' | 'join';
  readonly text: string;
  readonly end: number;
}

/** What of stitches and rows a piece counts. */
const countsIn = ({ kind, text }: Piece): string =>
  kind === 'pair' ? 'sr' : kind !== 'count' ? '' : /st/i.test(text) ? 's' : 'r';

/** The pieces that follow each other from a place on, up to the last that is no join, or to a second gauge. */
function piecesFrom(plain: string, start: number): Piece[] {
  const pieces: Piece[] = [];
  let last = 0;
  let counted = '';
  PIECE.lastIndex = start;
  for (let found = PIECE.exec(plain); found; found = PIECE.exec(plain)) {
    const [kind] = Object.entries(found.groups ?? {}).find(([, text]) => text !== undefined) ?? [];
    const piece = { kind: kind as Piece['kind'], text: found[0].trim(), end: PIECE.lastIndex };
    const counts = countsIn(piece);
    if ([...counts].some((each) => counted.includes(each)) && has(pieces, 'length')) break;
    counted += counts;
    pieces.push(piece);
    if (kind !== 'join') last = pieces.length;
  }
  return pieces.slice(0, last);
}

const has = (pieces: readonly Piece[], ...kinds: readonly Piece['kind'][]): boolean =>
  pieces.some(({ kind }) => kinds.includes(kind));

/** Where the first pieces of the kinds asked for begin, from a place on. */
function firstPieces(plain: string, from: number, found: (pieces: readonly Piece[]) => boolean) {
  START.lastIndex = from;
  for (let at = START.exec(plain); at; at = START.exec(plain)) {
    const pieces = piecesFrom(plain, at.index);
    if (found(pieces)) return { start: at.index, pieces };
    START.lastIndex = at.index + 1;
  }
  return null;
}

const NAMED = /\b(?:gauge|tension)\b/i;
const COUNTS = /(?<!\p{L})(?:sts?|stitch(?:es)?|rows?|rnds?|rounds?|courses?)(?!\p{L})/iu;
/** What makes a count with a length a gauge, where no word says so. */
const OVER = /[=/]|\b(?:over|to|per|in|for|equals?|measures?)\b/i;

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

/** Where something else may begin in the sentence of a gauge. */
const NEXT = /(?<=[,;(])\s*(?=[\p{L}\d])|(?<=[./-]|\band)\s+(?=[\p{L}\d])/gu;
/** Letters of a further gauge or measurement with the words beside it. */
const LONGEST = 300;

/** Does a place that has a name, with its numbers, begin here? */
function isMeasurement(source: Source, kind: GarmentKind | undefined): boolean {
  const row = readLine(source, { sizes: null, unit: null, kind }, new Reading(''));
  return row !== null && guessLandmark(row.name, kind) !== 'custom';
}

/** Where what is said of a gauge ends: with its sentence, at the next gauge, or before a measurement. */
function gaugeEnd(source: Source, from: number, kind: GarmentKind | undefined) {
  const { plain } = source;
  const stop = /[.;](?=\s+\p{L})/u.exec(plain.slice(from));
  const sentence = stop ? from + stop.index + 1 : plain.length;
  const isGauge = (pieces: readonly Piece[]) =>
    has(pieces, 'count', 'pair') && has(pieces, 'length');
  const next = firstPieces(plain.slice(0, sentence), from, isGauge)?.start;
  const places = [...plain.slice(0, sentence).matchAll(NEXT)]
    .map(({ index, 0: blank }) => index + blank.length)
    .filter((index) => index >= from && index <= (next ?? sentence));
  const end = next === undefined ? sentence : (places.at(-1) ?? next);
  const measured = places.filter(
    (index) =>
      index < end && isMeasurement(cut(source, index, Math.min(index + LONGEST, end)), kind),
  );
  // Of `blocked, chest 96 cm` the first word belongs to the gauge.
  const first = measured.findLast((index) => !/\d/.test(plain.slice(measured[0], index)));
  if (first !== undefined || next === undefined) return { end: first ?? end, another: false };
  return { end, another: !isInstruction(plain.slice(end, end + LONGEST)) };
}

interface Found {
  readonly gauge: Omit<PrintedGauge, 'from'> | null;
  readonly end: number;
  /** True: another one follows, in the same sentence. */
  readonly another: boolean;
}

/** What `source` says of a gauge, and where that ends; null where it is about something else. */
function gaugeIn(source: Source, { unit, kind }: SizeTableOptions, said: boolean): Found | null {
  const { plain } = source;
  if (!/\d/.test(plain) || !(said || COUNTS.test(plain) || NAMED.test(plain))) return null;
  const begun = firstPieces(plain, 0, (pieces) => has(pieces, 'count', 'length', 'pair'));
  const label = plain.slice(0, begun?.start ?? plain.length);
  const named = said || NAMED.test(label);
  if (isInstruction(NEEDLES.test(label) ? plain.slice(begun?.start) : plain)) return null;
  const pieces = begun?.pieces ?? [];
  const whole = has(pieces, 'count', named ? 'pair' : 'count') && has(pieces, 'length');
  if (!named && !(whole && isUnnamedGauge(label, pieces))) return null;
  const ends = gaugeEnd(source, pieces.at(-1)?.end ?? 0, kind);
  if (!whole || /\d/.test(label)) return { gauge: null, ...ends };
  const text = withoutSecondUnit(pieces, unit).map(inWords).join(' ');
  const read = parseCountOver(text, { field: 'gauge' });
  if (!read.ok) return { gauge: null, ...ends };
  const { stitches, rows } = read.value;
  return { gauge: { stitches, rows, state: stateOf(plain.slice(0, ends.end)) }, ...ends };
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

/** Where a gauge is named behind something else in its line; 0 where that stands first or nowhere. */
const namedLater = (plain: string): number => {
  const comma = /[,;]\s*(?=(?:[\p{L}-]+\s){0,2}(?:gauge|tension)\b)/iu.exec(plain);
  return comma && /\d/.test(plain.slice(0, comma.index)) ? comma.index + comma[0].length : 0;
};

/**
 * Takes the gauges out of the lines of a text. Counts are kept with the length they are given over: where
 * that is printed in both units, in the one asked for, else in the first. What stands beside a gauge belongs
 * to it up to the end of its sentence, another gauge, or a measurement; `lines` is what is left to read.
 */
export function takeGauges(
  all: readonly TextSpan[],
  options: SizeTableOptions,
  reading: Reading,
): { gauges: PrintedGauge[]; lines: TextSpan[] } {
  const gauges: PrintedGauge[] = [];
  const take = (source: Source, { gauge, end }: Found): void => {
    const blank = source.plain.length - source.plain.trimStart().length;
    const from = spanOf(source, blank, source.plain.slice(0, end).trimEnd().length);
    if (gauge) {
      gauges.push({ ...gauge, from });
      reading.mark({ from, as: 'gauge' });
    } else reading.refuse(from, notRead(reading.text.slice(...from)));
  };
  const lines = all.flatMap(([start, end]): TextSpan[] => {
    const line = sourceOf(reading.text, start, end);
    let at = 0;
    let found = gaugeIn(line, options, false);
    if (!found) {
      at = namedLater(line.plain);
      found = at > 0 ? gaugeIn(cut(line, at), options, true) : null;
      if (!found?.gauge) return [[start, end]];
    }
    const before: TextSpan[] = at > 0 ? [[start, line.at[at]!]] : [];
    take(cut(line, at), found);
    at += found.end;
    while (found?.another) {
      const rest = cut(line, at, at + LONGEST);
      found = gaugeIn(rest, options, true);
      if (!found) break;
      take(rest, found);
      at += found.end;
    }
    const rest = line.at[at] ?? end;
    return reading.text.slice(rest, end).trim() === '' ? before : [...before, [rest, end]];
  });
  return { gauges: joined(gauges), lines };
}
