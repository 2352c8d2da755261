import type { DraftRow } from './draft.ts';
import { type Label, namesSizes, readLabels } from './labels.ts';
import { isInstruction } from './prose.ts';
import { readLine, refuseLine } from './read-line.ts';
import { type Reading, tableFault } from './reading.ts';
import { splitSentences } from './sentences.ts';
import { cut, markOf, type Source, sourceOf, spanOf } from './source.ts';
import type { PrintedUnit, SizeTableOptions, TextSpan } from './types.ts';
import { unitNamed } from './value-pieces.ts';

export interface Drafts {
  /** Null where the text names no sizes. */
  readonly labels: readonly Label[] | null;
  readonly rows: readonly DraftRow[];
  /** Unit that the text says all its numbers are in. */
  readonly unit: PrintedUnit | null;
}

const ALL_IN =
  /^[^\d:]*\b(?:measurements?|dimensions?|numbers|figures)\b[^\d]*?\b(?:in|are)\s+(cm|centimet(?:re|er)s|mm|inches)\b[^\d\p{L}]*$/iu;
/** A line that says the unit of all others is short. */
const LONGEST_HEAD = 200;

/** Where the labels of a sizes line start. */
function labelsStart({ plain }: Source): number {
  const colon = /^[^:[({]*:/.exec(plain);
  if (colon && !/\d/.test(colon[0])) return colon[0].length;
  const words =
    /^[^\p{L}]*(?:\p{L}+\s+)?(?:sizes?|ages?)\b(?:\s+(?:are|available))?[\s=.-]*/iu.exec(plain);
  return words?.[0].length ?? 0;
}

/** `12 (14, 16)` below a heading that says `Sizes` and no more. */
const BARE_LABELS = /^[^\p{L}\d]*\d[\d\s()[\]{},;:/|-]*$/u;

/** `Size US 5 needles`, `Finished size: 60 in wide`. */
const NO_LABELS = /\b(?:needles?|wide|deep|long|tall)\b/i;

/** Is it a list of sizes, rather than a sentence about some of them, such as `Size 3 only: …`? */
function listsLabels(source: Source): boolean {
  if (isInstruction(source.plain) || NO_LABELS.test(source.plain)) return false;
  const { labels } = readLabels(cut(source, labelsStart(source)));
  return labels.every(({ text }) => /\d/.test(text) || text.split(/\s+/).length < 3);
}

function takeSizes(source: Source, reading: Reading): Label[] {
  const start = labelsStart(source);
  const { labels, marks } = readLabels(cut(source, start));
  if (labels.length === 0) {
    refuseLine(source, reading);
    return [];
  }
  const name = source.plain.slice(0, start).trimEnd().length;
  const blank = source.plain.length - source.plain.trimStart().length;
  reading.mark(markOf(source, blank, name, 'name'), ...marks);
  return labels;
}

/** Sizes after the first line of them: other ones are a fault, known ones head what is said of them. */
function refuseSizes(source: Source, known: readonly Label[], reading: Reading): void {
  const { labels } = readLabels(cut(source, labelsStart(source)));
  if (labels.length < 2 || labels.every(({ text }) => known.some((each) => each.text === text))) {
    refuseLine(source, reading);
    return;
  }
  const from = spanOf(source, 0, source.plain.length);
  const fault = tableFault(
    'sizes-twice',
    'sizes',
    reading.text.slice(...from),
    'the sizes are named a second time',
    'Keep one line of sizes.',
  );
  reading.refuse(from, fault);
}

/** Reads a block of lines as patterns print them. */
export function readLines(
  lines: readonly TextSpan[],
  { kind }: SizeTableOptions,
  reading: Reading,
): Drafts {
  let labels: Label[] | null = null;
  let unit: PrintedUnit | null = null;
  let awaited = false;
  const measured: Source[] = [];
  for (const [start, end] of lines) {
    const source = sourceOf(reading.text, start, end);
    const allIn = end - start > LONGEST_HEAD ? null : ALL_IN.exec(source.plain);
    const sizes =
      (namesSizes(source.plain) && listsLabels(source)) ||
      (awaited && BARE_LABELS.test(source.plain));
    awaited = false;
    if (allIn) {
      unit = unitNamed(allIn[1]!);
      reading.mark(markOf(source, 0, source.plain.length, 'unit'));
    } else if (!sizes) measured.push(...splitSentences(source, reading));
    else if (labels) refuseSizes(source, labels, reading);
    else {
      const found = takeSizes(source, reading);
      if (found.length > 0) labels = found;
      else awaited = true;
    }
  }
  const count = (labels as Label[] | null)?.length ?? null;
  const rows = measured.flatMap(
    (source) => readLine(source, { sizes: count, unit, kind }, reading) ?? [],
  );
  return { labels, rows, unit };
}
