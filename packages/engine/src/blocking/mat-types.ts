import type { Point } from '../garment/index.ts';
import type { Result } from '../units/index.ts';
import type {
  MatSpec,
  MeanSd,
  OutlineSpan,
  PiecePlan,
  PieceToBlock,
  PinKind,
  PinPlaced,
  Stock,
} from './types.ts';

/** A thing that is in the mat: as planned, or where the tape says it went. */
export interface InMat {
  readonly kind: PinKind;
  /** What it holds of the outline of the piece; as `on` of the step that placed it. */
  readonly on: OutlineSpan;
  /** On the mat, mm from its top left corner: its middle. */
  readonly to: Point;
  readonly along: PinPlaced['along'];
  /** What the steps call it; its number in the list, from 1, where this is left out. */
  readonly order?: number;
}

/** How the pull felt where the last thing went in: as it should; as far as it would come; no pull at all. */
export type Felt = 'right' | 'at-limit' | 'slack';

/** What hand and tape said while the piece lay with the first so many of `inMat`. */
export interface MatReading {
  /** How many of `inMat` were in, from 1; the last of them is what was felt. */
  readonly afterStep: number;
  readonly felt: Felt;
  /** Dimensions of the piece, by their landmark, as the tape had them. */
  readonly measured: readonly { readonly landmark: string; readonly mm: number }[];
}

export type LearnedWhat = 'stiffness' | 'rest-width' | 'rest-length' | 'draw-in';

/** Log of the factor on what the piece was thought to be: before the readings its mean is 0. */
export interface LearnedChange {
  readonly what: LearnedWhat;
  readonly before: MeanSd;
  readonly after: MeanSd;
  /** A sentence; lengths in it as `{mm:123.4}`. */
  readonly text: string;
}

/** A dimension that was measured, with what was foretold for it as it lay then. */
export interface ReadAgain {
  /** Number of the reading, from 0. */
  readonly reading: number;
  readonly landmark: string;
  readonly measuredMm: number;
  readonly foretoldMm: number;
  /** What is foretold for the same pins now. */
  readonly nowMm: number;
}

export interface Learned {
  /** The piece as it is now thought to be: fabric, doubt, size at rest. The same one where nothing was told. */
  readonly piece: PieceToBlock;
  /** Always all four. */
  readonly changes: readonly LearnedChange[];
  readonly readAgain: readonly ReadAgain[];
  /** What the readings could not tell, and what contradicts them. */
  readonly notices: readonly { readonly code: string; readonly text: string }[];
  /** `residual`: how far the next step would still move an unknown, in its own standard deviations before; not `converged` is a notice too. */
  readonly fit: {
    readonly iterations: number;
    readonly residual: number;
    readonly converged: boolean;
    /** Evaluations of the whole sheet. */
    readonly evaluations: number;
  };
}

export interface ReplanQuestion {
  readonly mat: MatSpec;
  readonly gentle: boolean;
  readonly maxStretch?: number;
  readonly mostPullN?: number;
  readonly scallopToleranceMm?: number;
  /** The plan as it stood, for what has changed since: its steps still to come, and what it was to reach. */
  readonly before?: {
    readonly pins: readonly PinPlaced[];
    readonly measurements: readonly {
      readonly landmark: string;
      readonly name: string;
      readonly reachedMm: { readonly p50Mm: number };
    }[];
  };
}

export interface ReplanChange {
  readonly what: 'pins' | 'reach' | 'tape';
  /** A sentence; lengths in it as `{mm:123.4}`. */
  readonly text: string;
}

export interface Replanned {
  /** `pins`: only what is still to come; their orders go on from the last in the mat. All else is of the piece with everything in. */
  readonly plan: PiecePlan;
  readonly changes: readonly ReplanChange[];
  readonly notices: readonly { readonly code: string; readonly text: string }[];
}

export interface MatHooks {
  /** Called between solves; false stops with the fault `block-stopped`. */
  readonly onStep?: (progress: { readonly done: number }) => boolean;
  /** Nodes of the mesh of a piece, about. */
  readonly nodes?: number;
}

export type LearnOnMat = (
  piece: PieceToBlock,
  inMat: readonly InMat[],
  readings: readonly MatReading[],
  hooks?: Pick<MatHooks, 'onStep'>,
) => Result<Learned>;

export type Replan = (
  piece: PieceToBlock,
  inMat: readonly InMat[],
  stockLeft: Stock,
  question: ReplanQuestion,
  hooks?: MatHooks,
) => Result<Replanned>;

/** Places on the mat by the names that steps give them: corners, tile crossings, and `pin 3` for what is in. */
export type ReferencesOnMat = (inMat: readonly InMat[], mat: MatSpec) => ReadonlyMap<string, Point>;

/** Where a step went in truth by its two tapes, mm; one that is null was not read. */
export type PlaceFromTape = (
  step: Pick<PinPlaced, 'xMm' | 'yMm' | 'from'>,
  references: ReadonlyMap<string, Point>,
  tape: readonly [number | null, number | null],
) => Result<Point>;
