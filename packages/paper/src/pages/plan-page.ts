import type { PiecePlan, PinKind, PinPlaced } from '@dryflat/engine/blocking';
import type { Block } from '../flow/block.ts';
import { flow, pageHeight } from '../flow/flow.ts';
import { type Cell, table } from '../flow/table.ts';
import { heading, list, paragraph, SMALL } from '../flow/text-block.ts';
import type { PaperInput } from '../input/paper-input.ts';
import {
  columnText,
  landmarkName,
  lengthText,
  named,
  type PageOptions,
  rangeText,
  sentence,
  unitName,
} from '../input/telling.ts';
import type { Sheet } from '../sheet/sheet.ts';
import { matCautions } from './cautions.ts';
import { matFigure } from './mat-figure.ts';
import { schematicFigure } from './schematic-figure.ts';

const PIN_WORDS: Readonly<Record<PinKind, string>> = {
  straight: 'pin',
  't-pin': 'T-pin',
  comb: 'comb',
  wire: 'wire',
};

const introduction = ({ forecast }: PaperInput, options: PageOptions): Block[] => {
  const pinned = forecast.measurements.some(({ pinnedMm }) => pinnedMm !== null);
  const arrow = pinned ? ' Pinned to: what the plan pins it to.' : '';
  return [
    paragraph(
      `Lengths in ${unitName(options)}. On the drawing a piece lies flat, one layer: bold is wanted, below it the likeliest length dried (dry, pins out, rested) and, in brackets, the range that should hold nine times in ten. Dashed: wanted. Solid: forecast, dried; grey: its range.${arrow}`,
      { ...SMALL, aboveMm: 0 },
    ),
  ];
};

/** Wanted and forecast of every measurement, and a box for what the tape says in the end. */
const numbersTable = ({ forecast }: PaperInput, { units }: PageOptions): Block => {
  const bare = (value: number | null) => (value === null ? '–' : columnText(value, units));
  const pinned = forecast.measurements.some(({ pinnedMm }) => pinnedMm !== null);
  return table(
    [
      { title: 'measurement', part: 46 },
      { title: 'wanted', part: 17, align: 'end' },
      ...(pinned ? [{ title: 'pinned to', part: 17, align: 'end' } as const] : []),
      { title: 'dried, likeliest', part: 25, align: 'end' },
      { title: 'dried, range', part: 30, align: 'end' },
      { title: '   by tape', part: 26 },
    ],
    forecast.measurements.map(({ name, direction, span, targetMm, pinnedMm, states }): Cell[] => [
      direction === 'width' && span === 'around' ? `${name}, around` : name,
      { text: bare(targetMm), weight: 'strong' },
      ...(pinned ? [bare(pinnedMm)] : []),
      bare(states.dried.p50Mm),
      rangeText(states.dried, units),
      { box: { heightMm: 4.4 } },
    ]),
    { sizeMm: 3.2 },
  );
};

const pinRow = (
  { order, kind, along, from: [a, b] }: PinPlaced,
  { units }: PageOptions,
): Cell[] => {
  const far = (value: number) => lengthText(value, units);
  const what =
    along === null ? PIN_WORDS[kind] : `${PIN_WORDS[kind]} of ${far(along.lengthMm)}, its middle`;
  return [
    { box: { widthMm: 3.4, heightMm: 3.4 } },
    { text: String(order), weight: 'strong' },
    what,
    `${far(a.mm)} from ${a.name}`,
    `${far(b.mm)} from ${b.name}`,
  ];
};

const PIN_COLUMNS = [
  { title: '', part: 4 },
  { title: 'no.', part: 6, align: 'end' },
  { title: 'kind', part: 11 },
  { title: 'first tape', part: 33 },
  { title: 'second tape', part: 33 },
] as const;

const onMat = ({ measurements }: PiecePlan, { units, words }: PageOptions): string => {
  const each = measurements.map(
    ({ landmark, reachedMm, targetMm }) =>
      `${landmarkName(landmark, words)} ${rangeText(reachedMm, units)} (wanted ${lengthText(targetMm, units, true)})`,
  );
  return `On the mat, pinned and flat: ${each.join('; ')}.`;
};

const count = (many: number, word: string) => `${many} ${word}${many === 1 ? '' : 's'}`;

const pinCounts = ({ pins, pinsForWires }: PiecePlan): string => {
  const kinds = new Map<PinKind, number>();
  for (const { kind } of pins) kinds.set(kind, (kinds.get(kind) ?? 0) + 1);
  const list = [...kinds].map(([kind, many]) =>
    count(many, kind === 'straight' ? 'straight pin' : PIN_WORDS[kind]),
  );
  if (pinsForWires > 0) list.push(`${count(pinsForWires, 'pin')} along the wires`);
  return list.length === 0 ? 'No pins.' : `In, and out again: ${list.join(', ')}.`;
};

const pieceBlocks = (plan: PiecePlan, options: PageOptions): Block[] => {
  const { units, words } = options;
  const told = (text: string) => sentence(text, units, words);
  const layers = plan.layers === 2 ? ', sewn, lying double' : '';
  const couldNot = plan.couldNot.map(({ what, why }) => told(`${named(what, words)}: ${why}.`));
  return [
    heading(`Pins, in order: ${plan.name}${layers}`, 2),
    paragraph(
      'Lay it in the middle of the mat, hem towards you; numbers at the rim count the lines between tiles. Dashed: wanted. Solid: pinned. Dot: pin. T: T-pin. Bar: comb. Line: wire.',
      { ...SMALL, aboveMm: 0, keep: true },
    ),
    matFigure(plan, plan.laidOn, 96),
    paragraph(pinCounts(plan), { aboveMm: 2, weight: 'strong', keep: true }),
    table(
      PIN_COLUMNS,
      plan.pins.map((pin) => pinRow(pin, options)),
      { across: 2, sizeMm: 2.9 },
    ),
    paragraph(onMat(plan, options), { sizeMm: 3.1, aboveMm: 3 }),
    ...(couldNot.length === 0
      ? []
      : [
          paragraph('What pinning will not do', { weight: 'strong', aboveMm: 2.4, keep: true }),
          list(couldNot, { sizeMm: 3.1 }),
        ]),
  ];
};

/** Sentences about a file name its field at their end; on paper there is no file. */
const withoutFields = (text: string): string => text.replace(/ \(plan\.[a-z]+\)(?=\.$)/i, '');

const SAID_FIRST = 'mat-too-small';

/** Pieces that the mat is too small for, with what to do: before anything is laid out. */
const tooLarge = ({ plan }: PaperInput, { units, words }: PageOptions): Block[] => {
  const first = (plan?.notices ?? []).filter(({ code }) => code === SAID_FIRST);
  return first.map(({ text }) => paragraph(sentence(text, units, words), { weight: 'strong' }));
};

const noticesOf = ({ notices, plan }: PaperInput, { units, words }: PageOptions): Block[] => {
  // The box of cautions says already that pins are counted.
  const planned = (plan?.notices ?? []).filter(
    ({ code }) => code !== 'count-pins' && code !== SAID_FIRST,
  );
  const texts = [...planned.map(({ text }) => named(text, words)), ...notices].map(withoutFields);
  if (texts.length === 0) return [];
  return [
    heading('To know', 2),
    list(
      texts.map((text) => sentence(text, units, words)),
      { sizeMm: 3.1 },
    ),
  ];
};

const titleOf = ({ name, size }: PaperInput): string =>
  size === null ? name : `${name}, size ${size}`;

/** What title, key, heads and cautions take, and what a row does, mm. */
const REST = 62;
const ROW = 6.3;

/** What is left of the first page for the drawing, mm; never too small to read. */
const drawingHeight = ({ forecast }: PaperInput, { paper }: PageOptions): number =>
  Math.min(135, Math.max(90, pageHeight(paper) - REST - ROW * forecast.measurements.length));

/**
 * What a knitter takes to the mat: the schematic with wanted and forecast numbers, the cautions, and
 * for each piece its pins in order. It begins on one page and goes on over as many as it needs, the
 * heads of its tables repeated.
 */
export const planPage = (input: PaperInput, options: PageOptions): Sheet[] => {
  const title = titleOf(input);
  const blocks = [
    heading(title, 1),
    ...introduction(input, options),
    ...tooLarge(input, options),
    schematicFigure(input.dried, drawingHeight(input, options), options),
    numbersTable(input, options),
    matCautions(input.forecast, (text) => sentence(text, options.units, options.words)),
    ...(input.plan?.pieces ?? []).flatMap((plan) => pieceBlocks(plan, options)),
    ...noticesOf(input, options),
  ];
  return flow(blocks, { ...options, title });
};
