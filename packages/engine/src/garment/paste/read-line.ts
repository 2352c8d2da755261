import type { Fault } from '../../units/index.ts';
import type { GarmentKind } from '../kinds.ts';
import { commaMeaning } from './comma.ts';
import { type DraftRow, placed } from './draft.ts';
import { nameEnd } from './name-end.ts';
import { splitNameUnit } from './names.ts';
import { measures } from './prose.ts';
import { type Reading, tableFault } from './reading.ts';
import { beforeWords } from './sentences.ts';
import { cut, markOf, type Source, spanOf } from './source.ts';
import { splitNumbers } from './split-numbers.ts';
import type { PrintedUnit, TextMark } from './types.ts';
import { type ValuePiece, valuePieces } from './value-pieces.ts';
import { type ValueRun, valueRuns } from './value-runs.ts';

/** Marks of the pieces that are understood but are no values. */
export function pieceMarks(pieces: readonly ValuePiece[], source: Source): TextMark[] {
  return pieces.flatMap(({ kind, start, end }) => {
    if (kind === 'unit') return [markOf(source, start, end, 'unit')];
    if (kind === 'span') return [markOf(source, start, end, 'name')];
    const joins = kind === 'open' || kind === 'close' || kind === 'separator' || kind === 'dash';
    return joins ? [markOf(source, start, end, 'join')] : [];
  });
}

/** What the words beside the numbers say of flat or around: `96 cm around`. */
const wordsOf = (pieces: readonly ValuePiece[]): string =>
  pieces.flatMap(({ kind, text }) => (kind === 'span' ? [text] : [])).join(' ');

/** Marks the name without its blanks, and what stands between it and the values. */
function markName(source: Source, nameLength: number, values: number, reading: Reading): void {
  const name = source.plain.slice(0, nameLength);
  const start = name.length - name.trimStart().length;
  const end = name.trimEnd().length;
  if (end > start) reading.mark(markOf(source, start, end, 'name'));
  for (let i = Math.max(start, end); i < values; i++) {
    if (/\S/.test(source.plain[i]!)) reading.mark(markOf(source, i, i + 1, 'join'));
  }
}

interface Around {
  /** How many sizes the text names; null where it names none. */
  readonly sizes: number | null;
  /** Unit that the text says all its numbers are in. */
  readonly unit: PrintedUnit | null;
  readonly kind: GarmentKind | undefined;
}

/** A line like `Finished chest: 34 (38, 42)" / 86 (96, 106) cm`; null where it holds no measurement. */
export function readLine(source: Source, around: Around, reading: Reading): DraftRow | null {
  const ends = nameEnd(source.plain);
  const rest = ends && cut(source, ends.values);
  const all = rest ? valuePieces(rest) : [];
  const raw = beforeWords(all);
  const { name, unit } = splitNameUnit(source.plain.slice(0, ends?.name ?? 0));
  const line = {
    plain: source.plain,
    name,
    pieces: raw,
    after: all[raw.length],
    unitSaid: (around.unit ?? unit) !== null,
    ...around,
  };
  const valued = raw.some(({ kind }) => kind === 'number' || kind === 'none' || kind === 'dash');
  if (!ends || !rest || !valued || !measures(line)) {
    refuseLine(source, reading);
    return null;
  }
  const comma = commaMeaning(raw, around.sizes);
  const pieces = splitNumbers(raw, comma);
  const runs = valueRuns(pieces);
  markName(source, ends.name, ends.values, reading);
  reading.mark(...pieceMarks(pieces, rest));
  const from = spanOf(source, 0, Math.max(ends.name, 1));
  return {
    name,
    from,
    spanWords: wordsOf(pieces),
    hint: unit,
    runs: placed(runs, rest),
    commasUnclear: comma === 'unclear',
    faults: lineFaults(name || 'size table', pieces, runs),
  };
}

const bracketOpen = (field: string): Fault =>
  tableFault(
    'bracket-open',
    field,
    '',
    'the brackets do not pair up',
    'Check that the line was copied whole.',
  );

const placeEmpty = (field: string): Fault =>
  tableFault(
    'place-empty',
    field,
    '',
    'a place between two commas is empty',
    'Type its number, or put a dash where the size has none.',
  );

/** What is wrong with a line as a whole: brackets that do not pair up, places left empty. */
function lineFaults(
  field: string,
  pieces: readonly ValuePiece[],
  runs: readonly ValueRun[],
): Fault[] {
  const opened = pieces.filter(({ kind }) => kind === 'open').length;
  const closed = pieces.filter(({ kind }) => kind === 'close').length;
  const gap = runs.some(({ values }) => values.some(({ start, end }) => start === end));
  return [...(opened === closed ? [] : [bracketOpen(field)]), ...(gap ? [placeEmpty(field)] : [])];
}

/** Leaves out a line as a whole: it holds no measurement. */
export function refuseLine(source: Source, reading: Reading): void {
  const { plain } = source;
  const from = spanOf(source, plain.length - plain.trimStart().length, plain.trimEnd().length);
  const given = reading.text.slice(...from);
  reading.refuse(
    from,
    tableFault(
      'no-values',
      'size table',
      given,
      'this line holds no measurements',
      'Leave it out, or add a number for each size.',
    ),
  );
}
