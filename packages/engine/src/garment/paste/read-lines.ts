import type { DraftRow } from './draft.ts';
import { type Label, namesSizes, readLabels } from './labels.ts';
import { readLine } from './read-line.ts';
import { type Reading, tableFault } from './reading.ts';
import { splitSentences } from './sentences.ts';
import { cut, linesOf, markOf, type Source, sourceOf, spanOf } from './source.ts';
import type { PrintedUnit } from './types.ts';
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

/** Where the labels of a sizes line start. */
function labelsStart({ plain }: Source): number {
  const colon = /^[^:[({]*:/.exec(plain);
  if (colon && !/\d/.test(colon[0])) return colon[0].length;
  const words =
    /^[^\p{L}]*(?:\p{L}+\s+)?(?:sizes?|ages?)\b(?:\s+(?:are|available))?[\s=.-]*/iu.exec(plain);
  return words?.[0].length ?? 0;
}

function takeSizes(source: Source, reading: Reading): Label[] {
  const start = labelsStart(source);
  const { labels, marks } = readLabels(cut(source, start));
  if (labels.length === 0) return [];
  const name = source.plain.slice(0, start).trimEnd().length;
  const blank = source.plain.length - source.plain.trimStart().length;
  reading.mark(markOf(source, blank, name, 'name'), ...marks);
  return labels;
}

function refuseSizes(source: Source, reading: Reading): void {
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
export function readLines(reading: Reading): Drafts {
  const sources = linesOf(reading.text).map(([start, end]) => sourceOf(reading.text, start, end));
  let labels: Label[] | null = null;
  let unit: PrintedUnit | null = null;
  const measured: Source[] = [];
  for (const source of sources) {
    const allIn = ALL_IN.exec(source.plain);
    if (allIn) {
      unit = unitNamed(allIn[1]!);
      reading.mark(markOf(source, 0, source.plain.length, 'unit'));
    } else if (!namesSizes(source.plain)) measured.push(...splitSentences(source, reading));
    else if (labels) refuseSizes(source, reading);
    else {
      const found = takeSizes(source, reading);
      if (found.length > 0) labels = found;
    }
  }
  const sizes = (labels as Label[] | null)?.length ?? null;
  const rows = measured.flatMap((source) => readLine(source, sizes, reading) ?? []);
  return { labels, rows, unit };
}
