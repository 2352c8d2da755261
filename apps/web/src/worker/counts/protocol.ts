import type { PieceCounts, Pitch, Recount, Repeat, SockCounts, Step } from '@dryflat/engine/counts';
import type { GarmentKind, OutlinePiece, OutlineSizes } from '@dryflat/engine/garment';
import type { Fault } from '@dryflat/engine/units';
import type { Instruction } from '@dryflat/record';

export interface CountsAsk {
  readonly turn: number;
  readonly kind: GarmentKind;
  /** What is wanted: flat millimetres by landmark. */
  readonly sizes: OutlineSizes;
  readonly mine: Pitch;
  readonly repeat: Repeat | undefined;
  /** The pattern's gauge, with mine in the same state of the fabric; null where it gives none. */
  readonly pattern: { readonly theirs: Pitch; readonly mine: Pitch } | null;
  readonly instructions: readonly Instruction[];
}

/** Counts of one part: a whole piece, or the leg or the foot of a sock. */
export interface PartCounts {
  readonly part: 'leg' | 'foot' | null;
  readonly counts: PieceCounts;
  /** The outline that these counts draw; null where it is none. */
  readonly drawn: OutlinePiece | null;
}

export interface PieceAnswer {
  /** As it is wanted. */
  readonly outline: OutlinePiece;
  readonly parts: readonly PartCounts[];
  /** Between the parts of a sock. */
  readonly heel: SockCounts['heel'] | null;
  readonly faults: readonly Fault[];
}

/** The pattern's own text of one piece. */
export interface TextAnswer {
  readonly id: string;
  /** What was read; null where faults stand in the way. */
  readonly steps: readonly Step[] | null;
  readonly faults: readonly Fault[];
  readonly recount: Recount | null;
  /** What stands in the way of recounting what was read. */
  readonly recountFaults: readonly Fault[];
  /** As printed, at the pattern's gauge. */
  readonly theirs: OutlinePiece | null;
  /** As printed, knit at my gauge. */
  readonly unchanged: OutlinePiece | null;
  /** Recounted, at my gauge. */
  readonly mine: OutlinePiece | null;
}

export type CountsAnswer =
  | {
      readonly kind: 'counts';
      readonly turn: number;
      readonly pieces: readonly PieceAnswer[];
      readonly texts: readonly TextAnswer[];
    }
  | { readonly kind: 'broken'; readonly turn: number; readonly message: string };
