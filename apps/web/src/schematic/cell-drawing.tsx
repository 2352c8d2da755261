import type { PlacedCell, PlacedDimension } from '@dryflat/paper/schematic';
import { pieceCaption } from '@dryflat/paper/schematic';
import { DimensionLine } from './dimension-line.tsx';
import { PieceDrawing } from './piece-drawing.tsx';

interface Props {
  readonly cell: PlacedCell;
  /** Id of the woven pattern. */
  readonly weave: string;
  readonly picked: string | null;
  readonly captioned: boolean;
  /** Letter of a landmark where letters stand in for labels, else null. */
  readonly letter: (landmark: string) => string | null;
}

const middle = ({ label }: PlacedDimension) => ({
  x: (label.x + label.width / 2).toFixed(1),
  y: (label.y + label.height / 2).toFixed(1),
});

/** One piece with its dimension lines and its caption, at its place on the sheet. */
export const CellDrawing = ({ cell, weave, picked, captioned, letter }: Props) => (
  <g transform={`translate(${cell.at.x.toFixed(1)} ${cell.at.y.toFixed(1)})`}>
    <PieceDrawing cell={cell} weave={weave} />
    {cell.dimensions.map((d) => (
      <DimensionLine key={d.landmark} dimension={d} picked={d.landmark === picked} />
    ))}
    {cell.dimensions.map((d) => {
      const text = letter(d.landmark);
      return text === null ? null : (
        <text key={d.landmark} className="df-letter" {...middle(d)}>
          {text}
        </text>
      );
    })}
    {captioned && (
      <text className="df-caption" x={cell.caption.x.toFixed(1)} y={cell.caption.y.toFixed(1)}>
        {pieceCaption(cell.piece.main.name, cell.piece.main.copies)}
      </text>
    )}
  </g>
);
