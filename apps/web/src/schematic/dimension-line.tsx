import type { Point } from '@dryflat/engine/garment';
import type { PlacedDimension } from '@dryflat/paper/schematic';

/** Half the length of the bar that ends a dimension line, px. */
const BAR = 5;

const stroke = ([p, q]: readonly [Point, Point]): string =>
  `M${p.x.toFixed(1)} ${p.y.toFixed(1)} L${q.x.toFixed(1)} ${q.y.toFixed(1)}`;

const bar = (at: Point, along: Point): [Point, Point] => [
  { x: at.x - along.y * BAR, y: at.y + along.x * BAR },
  { x: at.x + along.y * BAR, y: at.y - along.x * BAR },
];

const unit = ({ from, to }: PlacedDimension): Point => {
  const length = Math.hypot(to.x - from.x, to.y - from.y) || 1;
  return { x: (to.x - from.x) / length, y: (to.y - from.y) / length };
};

interface Props {
  readonly dimension: PlacedDimension;
  readonly picked: boolean;
}

/** The line of a dimension with a bar at each end, and faint lines to its piece and its label. */
export const DimensionLine = ({ dimension, picked }: Props) => {
  const along = unit(dimension);
  const faint = [...dimension.extensions, ...(dimension.leader ? [dimension.leader] : [])];
  const strong: (readonly [Point, Point])[] = [
    [dimension.from, dimension.to],
    bar(dimension.from, along),
    bar(dimension.to, along),
  ];
  return (
    <g className={picked ? 'df-dimension df-dimension-picked' : 'df-dimension'}>
      <path className="df-dimension-faint" d={faint.map(stroke).join(' ') || 'M0 0'} />
      <path className="df-dimension-line" d={strong.map(stroke).join(' ')} />
    </g>
  );
};
