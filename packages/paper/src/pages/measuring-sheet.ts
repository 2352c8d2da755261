import type { Block } from '../flow/block.ts';
import { flow, pageHeight } from '../flow/flow.ts';
import { type Cell, table } from '../flow/table.ts';
import { heading, paragraph, SMALL } from '../flow/text-block.ts';
import type { BlankInput, BlankRow } from '../input/paper-input.ts';
import { gaugeWord, landmarkName, type PageOptions } from '../input/telling.ts';
import type { Sheet } from '../sheet/sheet.ts';
import { blankFigure } from './schematic-figure.ts';

/** Every state that a length may be taken in, in the order a garment goes through them. */
const STATES = ['as knit', 'wet', 'pinned', 'dried', 'worn', 'rewashed'] as const;

interface Density {
  /** Height of a box, mm: tall enough for a number by pencil. */
  readonly writingMm: number;
  /** Lines for notes. */
  readonly lines: number;
}

/** Many rows stand closer, so that they stay on one page. */
const densityOf = ({ rows }: BlankInput): Density =>
  rows.length > 9 ? { writingMm: 4.8, lines: 2 } : { writingMm: 6, lines: 3 };

const writingBox = (input: BlankInput): Cell => ({ box: { heightMm: densityOf(input).writingMm } });

const nameOf = ({ name, landmark, girth }: BlankRow, { words }: PageOptions): string => {
  const called = name === '' ? landmarkName(landmark, words) : name;
  return girth ? `${called} (flat / around)` : called;
};

const lengths = (input: BlankInput, options: PageOptions): Block => {
  const writing = writingBox(input);
  return table(
    [{ title: `in ${options.units}`, part: 48 }, ...STATES.map((title) => ({ title, part: 19 }))],
    [
      [{ text: 'date', quiet: true }, ...STATES.map(() => writing)],
      ...input.rows.map((row): Cell[] => [nameOf(row, options), ...STATES.map(() => writing)]),
    ],
    { sizeMm: 3.1 },
  );
};

/** Gauge is not read while pinned: a stretched reading is none. */
const GAUGED = ['as knit', 'wet', 'dried', 'worn', 'rewashed'] as const;

const gauges = (input: BlankInput, { units }: PageOptions): Block => {
  const writing = writingBox(input);
  const over = units === 'in' ? '4 in' : '10 cm';
  return table(
    [{ title: '', part: 48 }, ...GAUGED.map((title) => ({ title, part: 23 }))],
    ['stitches', 'rows'].map((what): Cell[] => [
      `${what} over ${over}`,
      ...GAUGED.map(() => writing),
    ]),
    { sizeMm: 3.1 },
  );
};

/** What title, heads and words take, what a line for notes does, and what goes with a box, mm. */
const REST = 56;
const LINE = 10.2;
const ROW = 1.8;

/** What is left of a page for the drawing when all rows stand on it, mm; never too small to read. */
const drawingHeight = (input: BlankInput, { paper }: PageOptions): number => {
  const { writingMm, lines } = densityOf(input);
  // Beside its measurements a sheet has a row of dates and two of gauge.
  const rows = (input.rows.length + 3) * (writingMm + ROW);
  return Math.min(120, Math.max(44, pageHeight(paper) - REST - rows - lines * LINE));
};

/** A sheet to fill in by pencil: every landmark in every state, gauge, dates, and no number on it. */
export const measuringSheet = (input: BlankInput, options: PageOptions): Sheet[] => {
  const title = `Measuring sheet: ${input.name}`;
  const blocks = [
    heading(title, 1),
    paragraph(
      'Lay it flat, without pulling. Cross out “flat” or “around”, whichever it is not: flat is across one layer, around is twice as much. As knit: rested, never wet. Wet: pressed, laid flat without stretch. Dried: dry, pins out, rested. Worn: after a day on a body. Rewashed: after a later wash, dried without pins.',
      { ...SMALL, aboveMm: 0 },
    ),
    blankFigure(input.drawing, drawingHeight(input, options), options),
    lengths(input, options),
    paragraph(gaugeWord(options.words), { weight: 'strong', aboveMm: 4, keep: true }),
    gauges(input, options),
    paragraph('Notes: needle, yarn, wash, who measured', { ...SMALL, aboveMm: 4, keep: true }),
    table(
      [{ title: '', part: 1 }],
      Array.from({ length: densityOf(input).lines }, () => ['\n']),
      { sizeMm: 3.1 },
    ),
  ];
  return flow(blocks, { ...options, title });
};
