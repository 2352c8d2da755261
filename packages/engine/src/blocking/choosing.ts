/** Two pins are no closer than this along the edge, mm. Common practice: 2 to 5 cm, closer at curves. */
export const CLOSEST = 15;

export interface Choosing {
  /** How far the edge may lie inside the wanted line, mm. */
  readonly scallopTolerance: number;
  /** False stops. */
  readonly goOn: () => boolean;
}

/** How the depth of a scallop falls with the number of gaps on the same edge: measured 1.2 to 1.6. */
const FALLS = 1.4;

/** Gaps that an edge needs when it is this deep with so many: at least one more, at most twice as many. */
export const gapsNeeded = (gaps: number, depth: number, tolerance: number): number =>
  depth <= tolerance
    ? gaps
    : Math.min(2 * gaps, Math.max(gaps + 1, Math.ceil(gaps * (depth / tolerance) ** (1 / FALLS))));

/** Depth that is foretold for another number of gaps. */
export const depthWith = (depth: number, before: number, after: number): number =>
  depth * (before / after) ** FALLS;
