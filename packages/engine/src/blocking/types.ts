import type { Direction, MaterialDoubt, PlaneConstants, SafeStretch } from '../fabric/index.ts';
import type { Point, Range } from '../garment/index.ts';
import type { PlanPart } from './effort.ts';

/** What an edge is on the mat, because that decides what the fabric beside it can do. */
export type EdgeKind =
  | 'cast-on'
  | 'bound-off'
  | 'selvedge'
  | 'seam'
  | 'picked-up'
  | 'rib'
  | 'fold'
  | 'open';

export type PinKind = 'straight' | 't-pin' | 'comb' | 'wire';

/** Mean and SD; of a logarithm where it is called a log ratio. */
export interface MeanSd {
  readonly mean: number;
  readonly sd: number;
}

/** The wet fabric as plain numbers. */
export interface FabricOnMat {
  readonly constants: PlaneConstants;
  readonly doubt: MaterialDoubt;
  /** Width of a stitch and height of a row, wet, mm; above 0. */
  readonly pitch: { readonly stitch: number; readonly row: number };
  /** How far such a fabric is called safe to stretch, and who calls it so. */
  readonly safe: SafeStretch;
}

/** What becomes of lengths after the mat. */
export interface AfterMat {
  /** Share of a pinned stretch that stays, 0 to 1. */
  readonly kept: MeanSd;
  /** Log ratios of lengths at rest. */
  readonly driedOverWet: Readonly<Record<Direction, MeanSd>>;
  readonly rewashedOverWet: Readonly<Record<Direction, MeanSd>>;
}

export interface DimensionToReach {
  readonly name: string;
  readonly landmark: string;
  readonly direction: Direction;
  /** Places on the rest outline: an index of a point of the outline, or mm. */
  readonly from: number | Point;
  readonly to: number | Point;
  readonly targetMm: number;
  /** How far off still counts as reached; the usual tolerance where it is left out. */
  readonly toleranceMm?: number;
}

/** `rib` is held in length and left to draw in; `leave` gets no pin at all. Rest places, mm. */
export interface Zone {
  readonly polygon: readonly Point[];
  readonly kind: 'rib' | 'leave';
  /** Of the ribbing, where it differs from the rest of the piece. */
  readonly fabric?: FabricOnMat;
}

/** A pin that the knitter asks for: through the rest place `at` on the edge, to the place `to`. */
export interface PinAsked {
  readonly at: Point;
  readonly to: Point;
}

/** x to the right, y down, mm. */
export interface PieceToBlock {
  readonly name: string;
  /** As it lies wet, a closed polygon without repeated points. */
  readonly outline: readonly Point[];
  /** Kind of the edge from point i to point i + 1. */
  readonly edges: readonly EdgeKind[];
  /** 2 for a sewn body lying double. */
  readonly layers: 1 | 2;
  /** Where each point of the outline is to go; from the dimensions alone where it is null. */
  readonly wanted: readonly Point[] | null;
  readonly dimensions: readonly DimensionToReach[];
  readonly zones: readonly Zone[];
  readonly pinned?: readonly PinAsked[];
  readonly fabric: FabricOnMat;
  /** SD of the logarithm of the wet size at rest. */
  readonly restLogSd: Readonly<Record<Direction, number>>;
  readonly after: AfterMat;
}

export interface Stock {
  readonly straight: number;
  readonly tPins: number;
  readonly combs: readonly { readonly lengthMm: number; readonly count: number }[];
  readonly wires: readonly { readonly lengthMm: number; readonly count: number }[];
}

export interface MatSpec {
  readonly widthMm: number;
  readonly heightMm: number;
  /** Side of a square tile of the mat; 0 for a mat without tiles. */
  readonly tileMm: number;
}

export interface BlockQuestion {
  readonly pieces: readonly PieceToBlock[];
  readonly stock: Stock;
  readonly mat: MatSpec;
  /** True: no dimension is stretched beyond what is called safe for the piece's fabric. */
  readonly gentle: boolean;
  /** A limit of the knitter's own on the stretch of any dimension, above 0: 0.08 is 8 %. */
  readonly maxStretch?: number;
  /** The most that one pin is to bear, N, above 0; what a hand gives (MOST_PULL) where it is left out. */
  readonly mostPullN?: number;
  /** How far an edge may lie inside the wanted line between two pins, mm. */
  readonly scallopToleranceMm?: number;
  /** True: the pieces lie pinned at one time, and what one takes of the stock the next has not. */
  readonly together?: boolean;
}

/** A distance by tape from something that is already on the mat. */
export interface TapeDistance {
  readonly name: string;
  readonly mm: number;
}

/**
 * A part of the outline, whatever its size: from one place on it onwards to another, each as the index of
 * an edge and the share of the way along it. 3.25 is a quarter of the way from point 3 to point 4. Both are
 * alike for a pin; `to` is below `from` where the part runs over point 0.
 */
export interface OutlineSpan {
  readonly from: number;
  readonly to: number;
}

/** One thing to place on the mat. Places are on the mat: x from its left edge, y down from its top. */
export interface PinPlaced {
  readonly xMm: number;
  readonly yMm: number;
  readonly kind: PinKind;
  /** From 1, through the piece. */
  readonly order: number;
  readonly piece: string;
  readonly edge: EdgeKind;
  /** What it holds of the outline of the piece. */
  readonly on: OutlineSpan;
  /** Two references that are in place before it, well apart as seen from it. */
  readonly from: readonly [TapeDistance, TapeDistance];
  /** What the fabric pulls at it with; of a comb in all, of a wire at each of the pins along it. */
  readonly pullN: number;
  /** Length and direction of a comb or a wire; null for a pin. Its place is its middle. */
  readonly along: { readonly lengthMm: number; readonly dx: number; readonly dy: number } | null;
}

export interface MeasurementPlanned {
  readonly name: string;
  readonly landmark: string;
  readonly direction: Direction;
  /** Wet, before any pin. */
  readonly restMm: number;
  readonly targetMm: number;
  readonly toleranceMm: number;
  readonly reachedMm: Range;
  readonly afterDryingMm: Range;
  readonly afterRewashMm: Range;
  /** True where the middle of the range is within the tolerance. */
  readonly within: boolean;
}

/** How far the fabric is stretched. Every strain is a mean around a place, edges are read along themselves. */
export interface StretchUse {
  /** The largest as a share of what the fabric, or the edge, can do there, 0 to 1. */
  readonly max: number;
  /** The largest over the wet size: 0.14 is 14 %. */
  readonly overWet: number;
  /** Where that is, on the mat. */
  readonly where: Point;
  readonly along: Direction;
  /** The edge that is stretched so, along itself; null where it is the fabric. */
  readonly edge: EdgeKind | null;
  readonly field: {
    /** x0, y0, x1, y1, … on the mat, mm. */
    readonly points: readonly number[];
    /** Three node indices per triangle. */
    readonly triangles: readonly number[];
    /** Over the wet size, one per node, 0 or more. */
    readonly overWet: readonly number[];
  };
}

export interface GapScallop {
  /** Orders of the pins at its ends. */
  readonly from: number;
  readonly to: number;
  readonly mm: number;
}

export interface CouldNot {
  readonly what: string;
  readonly why: string;
}

/** From the middle of the top outwards; the lower edge, then the upper, then the sides; or as a plan went on. */
export type OrderWay = 'outwards' | 'lower-edge-first' | 'as-it-stood';

/** An order in which pins went in one by one, on a mat that holds by friction. */
export interface OrderTried {
  readonly way: OrderWay;
  /** The most that one pin bears at any step, N. */
  readonly highestPullN: number;
  /** How many are off their places at some step after they went in, by more than a tape tells. */
  readonly slipped: number;
  /** How far the lower edge rises while none of its pins is in, mm. */
  readonly lowerEdgeRisesMm: number;
}

/** The same pins with less stretch. */
export interface Gentler {
  /** Share of the planned stretch, 0 to 1. */
  readonly share: number;
  readonly reached: readonly { readonly name: string; readonly mm: number }[];
  /** Largest stretch of a dimension over its rest. */
  readonly largestStretch: number;
  /** Dimensions that are stretched beyond what is published as safe. */
  readonly beyondSafe: readonly string[];
}

export interface PiecePlan {
  readonly name: string;
  readonly layers: 1 | 2;
  readonly pins: readonly PinPlaced[];
  /** Pins that hold the wires themselves, beyond those listed; to be counted in and out too. */
  readonly pinsForWires: number;
  readonly measurements: readonly MeasurementPlanned[];
  readonly stretchUse: StretchUse;
  readonly scallopMm: { readonly max: number; readonly gaps: readonly GapScallop[] };
  readonly couldNot: readonly CouldNot[];
  /** How pins fare on their way in, all at the same places: in the planned order, and in another that was tried. */
  readonly orders: { readonly planned: OrderTried | null; readonly other: OrderTried | null };
  readonly moreStock: readonly { readonly what: string; readonly gains: string }[];
  /** Shares of the planned stretch, largest first; the first is the plan itself. */
  readonly gentler: readonly Gentler[];
  /** Of a sewn piece: what the same wanted outline gives before sewing; null for one that is not. */
  readonly beforeSewing: readonly { readonly name: string; readonly mm: number }[] | null;
  readonly outlines: {
    /** On the mat: as it lies before pins, as wanted, and as pinned; closed polygons. */
    readonly rest: readonly Point[];
    readonly wanted: readonly Point[];
    readonly pinned: readonly Point[];
  };
  /** False: the mat is too small, and the plan is for a surface that is not. */
  readonly fitsMat: boolean;
  /** What places are counted on: the mat, else as many of its tiles as it takes, or a rectangle on the floor. */
  readonly laidOn: MatSpec;
  /** Newton iterations in all. */
  readonly iterations: number;
  /** What the plan cost and might have cost, in evaluations of the whole sheet, and what had to end before it was done. */
  readonly effort: {
    readonly evaluations: number;
    readonly most: number;
    readonly cutShort: readonly PlanPart[];
  };
  /** N, of the plan as it stands at the end. */
  readonly residual: number;
  readonly converged: boolean;
}

export interface BlockPlan {
  readonly pieces: readonly PiecePlan[];
  /** Counts of each kind that go in, and must come out. */
  readonly pinsInAll: Readonly<Record<PinKind, number>>;
  readonly notices: readonly { readonly code: string; readonly text: string }[];
}

export interface BlockProgress {
  readonly piece: string;
  /** Share of the whole that is done, 0 to 1; an estimate. */
  readonly done: number;
}

export interface BlockHooks {
  /** Called between solves; false stops the plan. */
  readonly onStep?: (progress: BlockProgress) => boolean;
  /** Nodes of the mesh of a piece, about; 800 by default. */
  readonly nodes?: number;
  /** What the plan of a piece may cost, in evaluations of its whole sheet; 3,000 by default. From 100 on it is kept to. */
  readonly mostEvaluations?: number;
}
