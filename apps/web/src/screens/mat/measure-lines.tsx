import type { Cloth } from '../../worker/mat/index.ts';
import type { MatFrame } from './mat-frame.ts';
import type { PinPlaces } from './use-mat.ts';

/** A, B, C … after Z comes AA. */
export const letterOf = (k: number): string =>
  k < 26 ? String.fromCharCode(65 + k) : `${letterOf(Math.floor(k / 26) - 1)}${letterOf(k % 26)}`;

/** Where along its line the letter of a measure may stand. */
const SHARES = [0.5, 0.36, 0.64, 0.24, 0.76, 0.14, 0.86] as const;

interface Point {
  readonly x: number;
  readonly y: number;
}

/** Off a line by so much, towards the middle of the piece: clear of pins where the line is an edge. */
const beside = (spot: Point, a: Point, b: Point, middle: Point, by: number): Point => {
  const [tx, ty] = [b.x - a.x, b.y - a.y];
  const size = Math.hypot(tx, ty) || 1;
  const inward = Math.sign(tx * (middle.y - spot.y) - ty * (middle.x - spot.x)) || 1;
  return { x: spot.x - (inward * by * ty) / size, y: spot.y + (inward * by * tx) / size };
};

const spotsOn = (a: Point, b: Point, middle: Point, by: number): Point[] =>
  SHARES.map((share) =>
    beside({ x: a.x + share * (b.x - a.x), y: a.y + share * (b.y - a.y) }, a, b, middle, by),
  );

/** This far from everything else is clear enough, px. */
const CLEAR = 30;

/** The first spot that is clear of all that is there, else the clearest. */
const clearest = (spots: readonly Point[], taken: readonly Point[]): Point => {
  const rooms = spots.map(({ x, y }) =>
    Math.min(CLEAR, ...taken.map((each) => Math.hypot(each.x - x, each.y - y))),
  );
  return spots[rooms.indexOf(Math.max(...rooms))]!;
};

/** Each measure from end to end, with the letter that it has in the list. */
export const MeasureLines = ({
  rulers,
  points,
  places,
  frame,
  rem,
}: {
  rulers: Cloth['rulers'];
  points: Float32Array;
  places: PinPlaces;
  frame: MatFrame;
  rem: number;
}) => {
  const at = (node: number) => ({
    x: (points[2 * node]! - frame.x) * frame.scale,
    y: (points[2 * node + 1]! - frame.y) * frame.scale,
  });
  const middle = { x: (frame.width * frame.scale) / 2, y: (frame.height * frame.scale) / 2 };
  const taken = places.map(([px, py]) => ({
    x: (px - frame.x) * frame.scale,
    y: (py - frame.y) * frame.scale,
  }));
  const letters = rulers.map(([from, to]) => {
    const spot = clearest(spotsOn(at(from), at(to), middle, 1.1 * rem), taken);
    taken.push(spot);
    return spot;
  });
  return (
    <g className="df-mat-measures">
      {rulers.map(([from, to], k) => {
        const [a, b] = [at(from), at(to)];
        const { x, y } = letters[k]!;
        return (
          <g key={letterOf(k)}>
            <line x1={a.x} y1={a.y} x2={b.x} y2={b.y} />
            <circle cx={x} cy={y} r={0.6 * rem} />
            <text x={x} y={y} fontSize={0.75 * rem}>
              {letterOf(k)}
            </text>
          </g>
        );
      })}
    </g>
  );
};
