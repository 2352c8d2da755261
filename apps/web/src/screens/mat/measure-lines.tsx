import type { Cloth } from '../../worker/mat/index.ts';
import type { MatFrame } from './mat-frame.ts';

/** A, B, C … after Z comes AA. */
export const letterOf = (k: number): string =>
  k < 26 ? String.fromCharCode(65 + k) : `${letterOf(Math.floor(k / 26) - 1)}${letterOf(k % 26)}`;

/** Where along its line the letter of a measure stands: staggered, as many cross in the middle. */
const SHARES = [0.5, 0.36, 0.64, 0.24, 0.76] as const;

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

/** Each measure from end to end, with the letter that it has in the list. */
export const MeasureLines = ({
  rulers,
  points,
  frame,
  rem,
}: {
  rulers: Cloth['rulers'];
  points: Float32Array;
  frame: MatFrame;
  rem: number;
}) => {
  const at = (node: number) => ({
    x: (points[2 * node]! - frame.x) * frame.scale,
    y: (points[2 * node + 1]! - frame.y) * frame.scale,
  });
  const middle = { x: (frame.width * frame.scale) / 2, y: (frame.height * frame.scale) / 2 };
  return (
    <g className="df-mat-measures">
      {rulers.map(([from, to], k) => {
        const [a, b] = [at(from), at(to)];
        const share = SHARES[k % SHARES.length]!;
        const spot = { x: a.x + share * (b.x - a.x), y: a.y + share * (b.y - a.y) };
        const { x, y } = beside(spot, a, b, middle, 1.1 * rem);
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
