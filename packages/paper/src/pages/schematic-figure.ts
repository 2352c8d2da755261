import type { Block } from '../flow/block.ts';
import type { Drawn } from '../flow/figure.ts';
import { figure } from '../flow/figure.ts';
import { leading, type TextLook, textLine } from '../flow/text-block.ts';
import { lengthText, type PageOptions, rangeText } from '../input/telling.ts';
import { type DrawLabel, ground, STEP_MM, schematicMarks } from '../schematic/draw.ts';
import { type Drawing, type Plan, pieceCaption, planOf, shortName } from '../schematic/index.ts';
import { INK, QUIET } from '../sheet/inks.ts';
import type { Mark } from '../sheet/sheet.ts';

interface Size {
  readonly widthMm: number;
  /** The most that it may take. */
  readonly heightMm: number;
}

interface Line {
  readonly text: string;
  readonly look: TextLook;
}

const NAME: TextLook = { sizeMm: 2.5, weight: 'regular', colour: QUIET };
const NUMBER: TextLook = { sizeMm: 3.3, weight: 'strong', colour: INK };
const UNDER: TextLook = { sizeMm: 2.5, weight: 'regular', colour: INK };
const PADDING = 0.6;

/** Name; what is wanted; what it will be, and its range. */
const labelLines = (drawing: Drawing, landmark: string, { units, words }: PageOptions): Line[] => {
  const { wanted, p05, p50, p95 } = drawing.numbers(landmark);
  const bare = (value: number) => lengthText(value, units, true);
  return [
    { text: shortName(landmark, words), look: NAME },
    ...(wanted === null ? [] : [{ text: bare(wanted), look: NUMBER }]),
    ...(p50 === null ? [] : [{ text: `dried ${bare(p50)}`, look: UNDER }]),
    ...(p05 === null || p95 === null
      ? []
      : [{ text: `(${rangeText({ p05Mm: p05, p95Mm: p95 }, units)})`, look: UNDER }]),
  ];
};

const linesMark = (lines: readonly Line[], box: Parameters<DrawLabel>[1]): Mark[] => {
  let y = box.y + PADDING;
  return lines.map(({ text, look }) => {
    const mark = textLine(text, { x: box.x + box.width / 2, y }, look, 'middle');
    y += leading(look);
    return mark;
  });
};

const CAPTION_STEPS = 26;

/** A tenth smaller each time: the labels keep their size, so the height follows no formula. */
const SMALLER = 0.9;
/** Pieces smaller than this are not shrunk further, whatever their labels take, mm. */
const LEAST = 12;

const planned = (
  drawing: Drawing,
  { widthMm, heightMm }: Size,
  sizeOf: (landmark: string) => { width: number; height: number },
): Plan => {
  const at = (tallestMm: number) =>
    planOf({
      pieces: drawing.pieces,
      width: widthMm / STEP_MM,
      tallest: tallestMm / STEP_MM,
      captionHeight: CAPTION_STEPS,
      sizeOf: (landmark) => {
        const { width, height } = sizeOf(landmark);
        return { width: width / STEP_MM, height: height / STEP_MM };
      },
    });
  let tallestMm = heightMm;
  let plan = at(tallestMm);
  while (plan.height * STEP_MM > heightMm && tallestMm > LEAST) {
    tallestMm *= SMALLER;
    plan = at(tallestMm);
  }
  return plan;
};

const drawnWith = (
  drawing: Drawing,
  size: Size,
  sizeOf: (landmark: string) => { width: number; height: number },
  label: DrawLabel,
): Drawn => {
  const plan = planned(drawing, size, sizeOf);
  return {
    widthMm: plan.width * STEP_MM,
    heightMm: plan.height * STEP_MM,
    draw: (at) => schematicMarks(plan, at, label, ({ name, copies }) => pieceCaption(name, copies)),
  };
};

/** The pieces to scale with wanted and forecast numbers, flat and dried; no taller than `heightMm` as far as its labels go. */
export const schematicFigure = (drawing: Drawing, heightMm: number, options: PageOptions): Block =>
  figure(({ widthMm, faces }) => {
    const lines = (landmark: string) => labelLines(drawing, landmark, options);
    const sizeOf = (landmark: string) => {
      const all = lines(landmark);
      const widths = all.map(({ text, look }) => faces.widthOf(text, look.sizeMm, look.weight));
      return {
        width: Math.max(...widths) + 2 * PADDING,
        height: all.reduce((sum, { look }) => sum + leading(look), 2 * PADDING),
      };
    };
    return drawnWith(drawing, { widthMm, heightMm }, sizeOf, (landmark, box) => [
      ground(box),
      ...linesMark(lines(landmark), box),
    ]);
  });

const BOX = { width: 15, height: 7 };

/** The pieces with an empty box at each dimension, to write in. */
export const blankFigure = (drawing: Drawing, heightMm: number, options: PageOptions): Block =>
  figure(({ widthMm, faces }) => {
    const name = (landmark: string) => shortName(landmark, options.words);
    const sizeOf = (landmark: string) => ({
      width: Math.max(
        BOX.width,
        faces.widthOf(name(landmark), NAME.sizeMm, NAME.weight) + 2 * PADDING,
      ),
      height: leading(NAME) + BOX.height,
    });
    return drawnWith(drawing, { widthMm, heightMm }, sizeOf, (landmark, box) => [
      ground(box),
      textLine(name(landmark), { x: box.x + box.width / 2, y: box.y }, NAME, 'middle'),
      {
        kind: 'box',
        x: box.x + (box.width - BOX.width) / 2,
        y: box.y + leading(NAME),
        ...BOX,
        stroke: { colour: QUIET, widthMm: 0.2 },
      },
    ]);
  });
