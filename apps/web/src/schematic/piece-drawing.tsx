import { type OutlinePiece, type Point, pathToSvg } from '@dryflat/engine/garment';
import type { PlacedCell } from '@dryflat/paper/schematic';

interface Props {
  readonly cell: PlacedCell;
  readonly weave: string;
}

const outline = (piece: OutlinePiece | null, place: (p: Point) => Point): string =>
  piece === null ? '' : pathToSvg(piece.path, place);

/** One piece: forecast solid over its ground, the range as a woven band, wanted dashed on top. */
export const PieceDrawing = ({ cell, weave }: Props) => {
  const { piece, origin, scale } = cell;
  const place = (p: Point): Point => ({ x: origin.x + p.x * scale, y: origin.y + p.y * scale });
  const [small, large] = [outline(piece.small, place), outline(piece.large, place)];
  const [forecast, wanted] = [outline(piece.forecast, place), outline(piece.wanted, place)];
  return (
    <>
      <path className="df-piece-ground" d={forecast || wanted} />
      {small !== '' && (
        <path
          className="df-piece-band"
          d={`${large} ${small}`}
          fillRule="evenodd"
          fill={`url(#${weave})`}
        />
      )}
      {piece.main.details.map((detail) => (
        <path
          key={detail.kind + detail.path[0]!.from.x}
          className={`df-piece-detail df-piece-${detail.kind}`}
          d={pathToSvg(detail.path, place)}
        />
      ))}
      {forecast !== '' && <path className="df-piece-forecast" d={forecast} />}
      {wanted !== '' && <path className="df-piece-wanted" d={wanted} />}
    </>
  );
};
