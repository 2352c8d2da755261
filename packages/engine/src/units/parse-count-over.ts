import { type Millimetres, mm } from './brands.ts';
import type { CountOver } from './count-over.ts';
import { type CountPiece, countPieces } from './count-pieces.ts';
import type { Counted } from './count-words.ts';
import type { Result } from './fault.ts';
import { lexemes } from './lexemes.ts';
import { asResult, type Read, read, unread } from './problem.ts';
import { fromNumber, isAbove, type Rational, ratio, toNumber } from './rational.ts';

export interface ParsedCounts {
  readonly stitches: CountOver | null;
  readonly rows: CountOver | null;
  /** Words that were not needed, in the order given: `stockinette after blocking`. Show them. */
  readonly remark: string;
}

export interface CountOptions {
  readonly field: string;
  /** What a number without a word counts. */
  readonly bare?: Counted | undefined;
  /** Length of a count that names none; without it such a count is a fault. */
  readonly over?: Millimetres | undefined;
}

type Counts = Partial<Record<Counted, Extract<CountPiece, { kind: 'count' }>>>;
type Overs = Partial<Record<Counted, Rational>>;
type Seen = { readonly mm: Rational; readonly used: boolean };

const EXAMPLE = '20 sts and 28 rows over 10 cm';
const LARGEST_COUNT = ratio(100_000n);
const LONGEST_OVER = ratio(100_000n);
const LONGEST_TEXT = 300;
const same = (a: Rational, b: Rational): boolean => a.n * b.d === b.n * a.d;

function twoLengths(): Read<never> {
  return unread(
    'two-lengths',
    'two lengths are given for one count, and 4 in (101.6 mm) is not 10 cm',
    'Keep the length that was counted over.',
  );
}

const twice = (of: Counted): Read<never> =>
  unread('twice', `${of} are counted twice`, 'Keep the count that is meant.');

/** Gives every count the next length after it, or the last one before it where none follows. */
function pairUp(pieces: readonly CountPiece[]): Read<{ counts: Counts; overs: Overs }> {
  const counts: Counts = {};
  const overs: Overs = {};
  let waiting: Counted[] = [];
  let length = null as Seen | null;
  for (const piece of pieces) {
    if (piece.kind === 'count') {
      if (counts[piece.of]) return twice(piece.of);
      counts[piece.of] = piece;
      waiting.push(piece.of);
    } else if (piece.kind === 'length') {
      const spare = waiting.length === 0 || length?.used === false;
      if (length && spare && !same(length.mm, piece.mm)) return twoLengths();
      length = { mm: piece.mm, used: length?.used || waiting.length > 0 };
      for (const of of waiting) overs[of] = length.mm;
      waiting = [];
    }
  }
  if (length) for (const of of waiting) overs[of] = length.mm;
  return read({ counts, overs });
}

/** One count with its length; null where that kind was not counted. */
function finish(of: Counted, counts: Counts, over: Rational | undefined): Read<CountOver | null> {
  const piece = counts[of];
  if (!piece) return read(null);
  const { value, step } = piece.written;
  if (value.n === 0n || isAbove(value, LARGEST_COUNT))
    return unread('out-of-range', `the count of ${of} is not between 0 and 100000`, 'Check it.');
  if (!over)
    return unread(
      'without-length',
      `the count of ${of} has no length that it is counted over`,
      `Write it like ${EXAMPLE}.`,
    );
  if (over.n === 0n || isAbove(over, LONGEST_OVER))
    return unread('out-of-range', 'the length is not between 0 and 100 m', 'Check it.');
  return read({ count: toNumber(value), resolution: toNumber(step), over: mm(toNumber(over)) });
}

const remarkOf = (pieces: readonly CountPiece[]): string =>
  pieces.flatMap((piece) => (piece.kind === 'remark' ? [piece.word] : [])).join(' ');

function readCounts(text: string, { bare, over }: CountOptions): Read<ParsedCounts> {
  if (text.trim() === '')
    return unread('empty', 'the count is missing', `Write it like ${EXAMPLE}.`);
  const pieces = countPieces(text.length > LONGEST_TEXT ? [] : lexemes(text), bare);
  if (!pieces.ok) return pieces;
  const paired = pairUp(pieces.value);
  if (!paired.ok) return paired;
  const { counts, overs } = paired.value;
  if (!counts.stitches && !counts.rows)
    return unread(
      'unreadable',
      'no count of stitches or rows was found',
      `Write it like ${EXAMPLE}.`,
    );
  const understood = over === undefined ? undefined : fromNumber(over);
  const stitches = finish('stitches', counts, overs.stitches ?? understood);
  if (!stitches.ok) return stitches;
  const rows = finish('rows', counts, overs.rows ?? understood);
  if (!rows.ok) return rows;
  return read({ stitches: stitches.value, rows: rows.value, remark: remarkOf(pieces.value) });
}

/**
 * Reads counts over a length: `20 sts = 4 in`, `22 sts and 30 rows to 4"`, `5.5 sts per inch`,
 * `18½ stitches over 10cm`, `28 rows` (with `over`). A line that gives both 4 in and 10 cm for one
 * count is a fault, for they differ by 1.6 %. Never throws.
 */
export const parseCountOver = (text: string, options: CountOptions): Result<ParsedCounts> =>
  asResult(readCounts(text, options), { field: options.field, given: text, noun: 'count' });
