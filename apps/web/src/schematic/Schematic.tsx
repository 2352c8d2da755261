import type { GarmentKind, OutlineSizes } from '@dryflat/engine/garment';
import {
  type Drawing,
  dimensionSentence,
  drawingOf,
  type ForecastSizes,
  fullName,
  NARROW,
  type PlacedCell,
  type PlacedDimension,
  type Plan,
  type PlanOptions,
  planOf,
  shortName,
  type Words,
} from '@dryflat/paper/schematic';
import { type CSSProperties, type MouseEvent, useId, useMemo, useRef } from 'react';
import { CellDrawing } from './cell-drawing.tsx';
import { DimensionLabel } from './dimension-label.tsx';
import { labelSize, labelText, letterOf, letterSize, TOUCH } from './label-size.ts';
import { nearestDimension } from './nearest.ts';
import { SchematicNotes } from './schematic-notes.tsx';
import { type Sheet, useSheet } from './use-sheet.ts';
import { Weave } from './weave.tsx';
import './schematic.css';

export interface SchematicProps {
  readonly kind: GarmentKind;
  /** Sizes as the pattern wants them: flat millimetres by landmark. */
  readonly wanted: OutlineSizes;
  /** 5th, 50th and 95th percentile in one state, or null where there is none yet. */
  readonly forecast: ForecastSizes | null;
  /** Prints a length in the knitter's unit, the unit included. */
  readonly print: (mm: number) => string;
  readonly words: Words;
  /** Landmark that is picked, or null. */
  readonly picked: string | null;
  readonly onPick: (landmark: string) => void;
}

type Printing = Pick<SchematicProps, 'print' | 'words'>;

const textOf = (drawing: Drawing, { print, words }: Printing, landmark: string) =>
  labelText(shortName(landmark, words), drawing.numbers(landmark), print);

const sentenceOf = (drawing: Drawing, { print, words }: Printing, landmark: string) =>
  dimensionSentence(landmark, drawing.numbers(landmark), print, words);

/** Where letters would show the garment this much larger than labels do, letters stand in for them. */
const CROWDED = 0.42;

interface Planned {
  readonly plan: Plan;
  /** True where letters stand on the drawing and the labels are listed under it. */
  readonly lettered: boolean;
}

const planFor = (drawing: Drawing, printing: Printing, { width, rem }: Sheet): Planned => {
  const desk = width >= NARROW;
  const planWith = (sizeOf: PlanOptions['sizeOf']) =>
    planOf({
      pieces: drawing.pieces,
      width,
      sizeOf,
      tallest: desk ? Math.max(380, 0.45 * width) : 1.15 * width,
      captionHeight: drawing.pieces.length > 1 ? 2 * rem : 0,
    });
  const labels = planWith((landmark) => labelSize(textOf(drawing, printing, landmark), rem, desk));
  const letters = planWith(() => letterSize(rem));
  const lettered = labels.width > width || labels.scale < CROWDED * letters.scale;
  return { plan: lettered ? letters : labels, lettered };
};

const boxOf = ({ at }: PlacedCell, { label }: PlacedDimension): CSSProperties => ({
  left: at.x + label.x,
  top: at.y + label.y,
  width: label.width,
  height: label.height,
});

const classOf = (width: number, lettered: boolean): string => {
  if (lettered) return 'df-schematic df-schematic-lettered';
  return width < NARROW ? 'df-schematic' : 'df-schematic df-schematic-desk';
};

/** A garment drawn to scale: wanted, forecast and the range between, with its dimensions as buttons. */
export const Schematic = (props: SchematicProps) => {
  const { kind, wanted, forecast, print, words, picked, onPick } = props;
  const sheetRef = useRef<HTMLDivElement>(null);
  const sheet = useSheet(sheetRef);
  const id = useId();
  const drawing = useMemo(() => drawingOf(kind, wanted, forecast), [kind, wanted, forecast]);
  const { plan, lettered } = useMemo(
    () => planFor(drawing, { print, words }, sheet),
    [drawing, print, words, sheet],
  );
  const dimensions = plan.cells.flatMap((cell) => cell.dimensions.map((d) => [cell, d] as const));
  const order = dimensions.map(([, { landmark }]) => landmark);
  const letter = (landmark: string) => (lettered ? letterOf(order.indexOf(landmark)) : null);
  const pickNearest = (event: MouseEvent<SVGSVGElement>) => {
    const box = event.currentTarget.getBoundingClientRect();
    const at = { x: event.clientX - box.left, y: event.clientY - box.top };
    const landmark = nearestDimension(plan.cells, at, TOUCH / 2);
    if (landmark !== null) onPick(landmark);
  };
  const size = { width: plan.width, height: Math.ceil(plan.height) };
  return (
    <figure className={classOf(sheet.width, lettered)}>
      <div className="df-drawn" ref={sheetRef}>
        {/* biome-ignore lint/a11y/useKeyWithClickEvents: each line is also a button, in the list below */}
        <svg
          {...size}
          viewBox={`0 0 ${size.width} ${size.height}`}
          role="img"
          aria-labelledby={`${id}title`}
          aria-describedby={`${id}desc`}
          onClick={pickNearest}
        >
          <title id={`${id}title`}>
            {forecast === null ? 'Outline, to scale' : 'Outline wanted and forecast, to scale'}
          </title>
          <desc id={`${id}desc`}>
            {order.map((landmark) => `${sentenceOf(drawing, props, landmark)}.`).join(' ')}
          </desc>
          <defs>
            <Weave id={`${id}weave`} />
          </defs>
          {plan.cells.map((cell) => (
            <CellDrawing
              key={cell.piece.main.name}
              {...{ cell, picked, letter }}
              weave={`${id}weave`}
              captioned={plan.cells.length > 1}
            />
          ))}
        </svg>
        <ul className="df-dims" aria-label="Dimensions">
          {dimensions.map(([cell, d]) => (
            <DimensionLabel
              key={d.landmark}
              text={textOf(drawing, props, d.landmark)}
              sentence={sentenceOf(drawing, props, d.landmark)}
              letter={letter(d.landmark)}
              place={lettered ? {} : boxOf(cell, d)}
              picked={picked === d.landmark}
              onPick={() => onPick(d.landmark)}
            />
          ))}
        </ul>
      </div>
      <SchematicNotes drawing={drawing} forecast={forecast !== null} print={print}>
        {(landmark) => fullName(landmark, words)}
      </SchematicNotes>
    </figure>
  );
};
