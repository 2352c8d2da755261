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
/** Tall enough for a number by pencil. */
const WRITING = 5.6;
const writing: Cell = { box: { heightMm: WRITING } };

const nameOf = ({ name, landmark, girth }: BlankRow, { words }: PageOptions): string => {
  const called = name === '' ? landmarkName(landmark, words) : name;
  return girth ? `${called} (flat / around)` : called;
};

const lengths = ({ rows }: BlankInput, options: PageOptions): Block =>
  table(
    [{ title: `in ${options.units}`, part: 48 }, ...STATES.map((title) => ({ title, part: 19 }))],
    [
      [{ text: 'date', quiet: true }, ...STATES.map(() => writing)],
      ...rows.map((row): Cell[] => [nameOf(row, options), ...STATES.map(() => writing)]),
    ],
    { sizeMm: 3.1 },
  );

/** Gauge is not read while pinned: a stretched reading is none. */
const GAUGED = ['as knit', 'wet', 'dried', 'worn', 'rewashed'] as const;

const gauges = ({ units }: PageOptions): Block => {
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

const LINES = 3;

/** What all but the drawing and the rows takes, and what a row does, mm. */
const REST = 108;
const ROW = 7.4;

/** What is left of a page for the drawing when all rows stand on it, mm; never too small to read. */
const drawingHeight = ({ rows }: BlankInput, { paper }: PageOptions): number =>
  Math.min(120, Math.max(64, pageHeight(paper) - REST - ROW * rows.length));

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
    gauges(options),
    paragraph('Notes: needle, yarn, wash, who measured', { ...SMALL, aboveMm: 4, keep: true }),
    table(
      [{ title: '', part: 1 }],
      Array.from({ length: LINES }, () => ['\n']),
      { sizeMm: 3.1 },
    ),
  ];
  return flow(blocks, { ...options, title });
};
