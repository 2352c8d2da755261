import type {
  BlockPlan,
  EdgeKind,
  InMat,
  Learned,
  MatReading,
  MatSpec,
  PiecePlan,
  PieceToBlock,
  Replanned,
  ReplanQuestion,
  Stock,
} from '@dryflat/engine/blocking';
import type { Fault } from '@dryflat/engine/units';
import type { GarmentRecord } from '@dryflat/record';
import type { Frame } from './on-mat.ts';

export interface MatChoices {
  /** Name of the piece that is planned; the first where it is null or the garment has no such piece. */
  readonly piece: string | null;
  readonly gentle: boolean;
}

/** A plan for one piece, with what it was made from. */
export interface Planned {
  /** Names of all pieces of the garment. */
  readonly pieces: readonly string[];
  readonly piece: PieceToBlock;
  readonly plan: PiecePlan;
  readonly whole: BlockPlan;
  readonly mat: MatSpec;
}

export interface PlanAsk {
  readonly kind: 'plan';
  readonly turn: number;
  readonly record: GarmentRecord;
  readonly choices: MatChoices;
}

/** Where things of a plan are put: a place on the mat for each of `plan.pins`, x and y, mm. */
export type Places = readonly (readonly [number, number])[];

export interface OpenAsk {
  readonly kind: 'open';
  readonly turn: number;
  readonly piece: PieceToBlock;
  readonly plan: PiecePlan;
}

export interface MoveAsk {
  readonly kind: 'move';
  readonly turn: number;
  readonly places: Places;
}

/** What is in the mat and what was told of it: the rest is to be planned from there. */
export interface AgainQuestion {
  readonly record: GarmentRecord;
  readonly piece: string;
  readonly gentle: boolean;
  /** True: places are of the piece with left and right exchanged, and so is the answer. */
  readonly mirrored: boolean;
  readonly mat: MatSpec;
  readonly inMat: readonly InMat[];
  readonly readings: readonly MatReading[];
  readonly left: Stock;
  readonly before: NonNullable<ReplanQuestion['before']>;
}

export interface AgainAsk {
  readonly kind: 'again';
  readonly turn: number;
  readonly question: AgainQuestion;
}

export type MatAsk = PlanAsk | OpenAsk | MoveAsk | AgainAsk;

/** What was learned, and the steps that are still to come. */
export interface Again {
  readonly learned: Pick<Learned, 'changes' | 'readAgain' | 'notices'>;
  readonly replanned: Replanned;
}

/** What does not change while pins are moved. */
export interface Cloth {
  readonly frame: Frame;
  /** Three node indices per triangle. */
  readonly triangles: Uint32Array;
  /** Node indices around the edge. */
  readonly ring: Uint32Array;
  /** Rest places of the ring, x and y as in the piece's outline, mm. */
  readonly ringRest: Float32Array;
  readonly ringKinds: readonly EdgeKind[];
  /** Ring index that each of `plan.pins` goes through: its middle for combs and wires. */
  readonly pinRing: readonly number[];
  /** Nodes at both ends of each of `plan.pins` that is a wire, which follows the pins there; null for others. */
  readonly wires: readonly (readonly [number, number] | null)[];
  /** Nodes at both ends of each dimension of the piece. */
  readonly rulers: readonly (readonly [number, number])[];
}

/** How the piece lies. */
export interface Lying {
  /** x and y of each node on the mat, mm. */
  readonly points: Float32Array;
  /** Stretch over the wet size at each node, as a plan has it. */
  readonly overWet: Float32Array;
  /** Where that is largest. */
  readonly worst: {
    readonly overWet: number;
    readonly x: number;
    readonly y: number;
    readonly along: 'width' | 'length';
    readonly edge: EdgeKind | null;
  };
  /** Length now of each dimension of the piece, mm. */
  readonly reached: readonly number[];
  /** N at each of `plan.pins`. */
  readonly pulls: readonly number[];
  /** Indices of pins that the fabric does not pull at. */
  readonly loose: readonly number[];
  /** Indices of pins that the fabric does not reach, with what is left, mm. */
  readonly short: readonly { readonly pin: number; readonly mm: number }[];
  readonly converged: boolean;
  /** Told before it was done, as it took long; it goes on when it is asked again. */
  readonly stopped: boolean;
  readonly iterations: number;
}

export type MatTold =
  | { readonly kind: 'progress'; readonly turn: number; readonly done: number }
  | { readonly kind: 'plan'; readonly turn: number; readonly planned: Planned }
  | { readonly kind: 'open'; readonly turn: number; readonly cloth: Cloth; readonly lying: Lying }
  | { readonly kind: 'lying'; readonly turn: number; readonly lying: Lying; readonly ms: number }
  | { readonly kind: 'again'; readonly turn: number; readonly again: Again }
  | { readonly kind: 'faults'; readonly turn: number; readonly faults: readonly Fault[] }
  | { readonly kind: 'broken'; readonly turn: number; readonly message: string };
