import type { ForecastState } from '../../fabric/index.ts';
import type { Millimetres } from '../../units/index.ts';

/** Width of a stitch and height of a row, in millimetres, in one state of the fabric. */
export interface Pitch {
  readonly stitch: Millimetres;
  readonly row: Millimetres;
  readonly state: ForecastState;
}

/** A stitch pattern repeats over `stitches`, with `plus` at the edges; over `rows` likewise, 1 where left out. */
export interface Repeat {
  readonly stitches: number;
  readonly plus: number;
  readonly rows?: number | undefined;
}

/**
 * An edge that is shaped, as the knitting lies. `each`: both ends alike. `neck`: the edge of one side
 * that is nearer the centre of the garment. `side`: the edge away from it. `around`: spread over a round.
 */
export type ShapedEdge = 'each' | 'neck' | 'side' | 'around';
export type Shaping = 'increase' | 'decrease' | 'cast-on' | 'bind-off';

/** `round`: joined into a round, without edges. */
export interface CastOn {
  readonly kind: 'cast-on';
  readonly stitches: number;
  readonly round: boolean;
}

/** Rows without shaping, in ribbing or in the main stitch: so many rows, so long, or until it is so long in all. */
export interface Work {
  readonly kind: 'work';
  readonly fabric: 'rib' | 'main';
  readonly extent:
    | { readonly rows: number }
    | { readonly mm: number }
    /** Height from the cast-on edge. */
    | { readonly toMm: number };
}

/** So many stitches more or fewer, spread over one row. */
export interface Evenly {
  readonly kind: 'evenly';
  readonly change: 'increase' | 'decrease';
  readonly stitches: number;
}

/**
 * Shaping that repeats: the first time on row `first` from here, then every `every` rows, `times` in all;
 * `stitches` at each edge that is named (in all, for `around`). Stitches bound off or cast on at both
 * edges take two rows, one edge each; the count is that of the first, the outline draws both there.
 */
export interface Shape {
  readonly kind: 'shape';
  readonly by: Shaping;
  readonly edge: ShapedEdge;
  readonly stitches: number;
  readonly first: number;
  readonly every: number;
  readonly times: number;
}

/** One row in which the centre stitches are bound off (none: the work only divides); then one side alone. */
export interface Divide {
  readonly kind: 'divide';
  readonly stitches: number;
}

/** From here two edges are shaped at the same time; `same-time` comes back to this row. */
export interface Mark {
  readonly kind: 'mark';
}

/** What follows begins again at the row after the last `divide`, or at the last `mark`. */
export interface SameTime {
  readonly kind: 'same-time';
}

/** What becomes of the stitches that are left: bound off, drawn up on the yarn, or kept on a holder. */
export interface Finish {
  readonly kind: 'finish';
  readonly by: 'bind-off' | 'gather' | 'hold';
}

/** The other side, reversing shapings. */
export interface Reverse {
  readonly kind: 'reverse';
}

export type Step = CastOn | Work | Evenly | Shape | Divide | Mark | SameTime | Finish | Reverse;
