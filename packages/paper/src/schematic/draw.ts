import type { OutlinePiece, Point } from '@dryflat/engine/garment';
import { pathToSvg } from '@dryflat/engine/garment';
import { dashed, fine, firm, hair } from '../sheet/inks.ts';
import type { Mark, Place } from '../sheet/sheet.ts';
import type { PlacedDimension } from './cell.ts';
import type { DrawnPiece } from './drawn-piece.ts';
import type { PlacedCell, Plan } from './plan.ts';

/** The layout counts in steps of a screen; on paper one of them is this many mm. */
export const STEP_MM = 0.26;
/** Half the bar at the end of a dimension line, steps. */
const BAR = 4;

/** What stands in the place of a dimension's label, given the corner and the size of that place in mm. */
export type DrawLabel = (
  landmark: string,
  box: { x: number; y: number; width: number; height: number },
) => readonly Mark[];

const pathMark = (
  path: string,
  look: Omit<Extract<Mark, { kind: 'path' }>, 'kind' | 'd'>,
): Mark[] => (path === '' ? [] : [{ kind: 'path', d: path, ...look }]);

interface PieceMarks {
  readonly under: readonly Mark[];
  readonly over: readonly Mark[];
}

/** Grounds, which lie under the dimension lines, and edges, which lie over them. */
const pieceMarks = (
  { wanted, forecast, small, large, main }: DrawnPiece,
  place: (p: Point) => Point,
): PieceMarks => {
  const drawn = (piece: OutlinePiece | null) =>
    piece === null ? '' : pathToSvg(piece.path, place);
  const band = small === null || large === null ? '' : `${drawn(large)} ${drawn(small)}`;
  return {
    under: [
      ...pathMark(drawn(forecast ?? wanted), { fill: '#f7f7f7' }),
      ...pathMark(band, { fill: '#dedede', evenOdd: true }),
    ],
    over: [
      ...main.details.flatMap(({ path }) => pathMark(pathToSvg(path, place), { stroke: fine })),
      ...pathMark(drawn(forecast), { stroke: firm }),
      ...pathMark(drawn(wanted), { stroke: forecast === null ? firm : dashed }),
    ],
  };
};

const lines = (d: PlacedDimension, place: (p: Point) => Place): Mark[] => {
  const length = Math.hypot(d.to.x - d.from.x, d.to.y - d.from.y) || 1;
  const [ux, uy] = [(d.to.x - d.from.x) / length, (d.to.y - d.from.y) / length];
  const bar = ({ x, y }: Point): Mark => ({
    kind: 'line',
    from: place({ x: x - uy * BAR, y: y + ux * BAR }),
    to: place({ x: x + uy * BAR, y: y - ux * BAR }),
    stroke: fine,
  });
  const faint = [...d.extensions, ...(d.leader === null ? [] : [d.leader])];
  return [
    ...faint.map(([p, q]): Mark => ({ kind: 'line', from: place(p), to: place(q), stroke: hair })),
    { kind: 'line', from: place(d.from), to: place(d.to), stroke: fine },
    bar(d.from),
    bar(d.to),
  ];
};

const cellMarks = (cell: PlacedCell, at: Place, label: DrawLabel, caption: string): Mark[] => {
  const place = ({ x, y }: Point): Place => ({
    x: at.x + (cell.at.x + x) * STEP_MM,
    y: at.y + (cell.at.y + y) * STEP_MM,
  });
  const onPiece = ({ x, y }: Point): Place =>
    place({ x: cell.origin.x + x * cell.scale, y: cell.origin.y + y * cell.scale });
  const under = place(cell.caption);
  const { under: grounds, over } = pieceMarks(cell.piece, onPiece);
  return [
    ...grounds,
    ...cell.dimensions.flatMap((d) => lines(d, place)),
    ...over,
    ...cell.dimensions.flatMap(({ landmark, label: box }) =>
      label(landmark, {
        ...place(box),
        width: box.width * STEP_MM,
        height: box.height * STEP_MM,
      }),
    ),
    {
      kind: 'text',
      ...under,
      text: caption,
      sizeMm: 3,
      weight: 'strong',
      align: 'middle',
      colour: '#1a1a1a',
    },
  ];
};

/** A planned schematic as marks, its corner at `at`. */
export const schematicMarks = (
  plan: Plan,
  at: Place,
  label: DrawLabel,
  captionOf: (piece: OutlinePiece) => string,
): Mark[] => plan.cells.flatMap((cell) => cellMarks(cell, at, label, captionOf(cell.piece.main)));

/** A label’s ground, so that lines behind it do not run through its letters. */
export const ground = (box: { x: number; y: number; width: number; height: number }): Mark => ({
  kind: 'box',
  ...box,
  fill: '#ffffff',
});
