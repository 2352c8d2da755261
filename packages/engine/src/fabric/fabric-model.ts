import { type Affine, add, type Observation, type Unknowns } from '../stats/index.ts';
import type { Millimetres } from '../units/index.ts';
import type { Basis } from './basis.ts';
import type { FabricKind } from './growth-priors.ts';
import type { Direction, RestState, Specimen } from './specimen.ts';

/** What is asked about one fabric. */
export interface FabricQuestion extends FabricKind {
  readonly weightClass: number | null;
  readonly metresPer100g: number | null;
  readonly needle: Millimetres | null;
  readonly patternNeedle: Millimetres | null;
  readonly patternGauge: {
    readonly stitch: Millimetres;
    /** Null where the pattern gives stitches only. */
    readonly row: Millimetres | null;
    readonly state: 'asKnit' | 'dried';
  } | null;
  readonly specimens: readonly Specimen[];
}

/** A change between states: `dried` over as knit, `wet` and `rewashed` over dried. */
export type Change = 'dried' | 'wet' | 'rewashed';

/** The same in one direction. */
export type GrowthTerm = `${Change} ${Direction}`;

/** An observation with the basis it came from. */
export interface Evidence extends Observation {
  readonly basis: Basis;
}

/**
 * The fabric of one garment as unknowns of a linear Gaussian model, in logarithms of millimetres.
 * `asKnit[d]` is the log pitch (width of a stitch, height of a row) off the needles; the log ratios
 * of the other rest states are added to it by `pitchIn`.
 */
export interface FabricModel {
  readonly unknowns: Unknowns;
  readonly asKnit: Readonly<Record<Direction, Affine>>;
  readonly driedOverAsKnit: Readonly<Record<Direction, Affine>>;
  readonly wetOverDried: Readonly<Record<Direction, Affine>>;
  readonly rewashedOverDried: Readonly<Record<Direction, Affine>>;
  /** Log pitch of the pattern's own gauge: a constant where it is printed, an unknown where not. */
  readonly patternPitch: Readonly<Record<Direction, Affine>>;
  readonly evidence: readonly Evidence[];
  /** Assumptions that stand behind the model whatever is measured. */
  readonly priors: readonly Basis[];
}

/** Log pitch of the fabric at rest in a state. */
export const pitchIn = (model: FabricModel, direction: Direction, state: RestState): Affine => {
  const dried = add(model.asKnit[direction], model.driedOverAsKnit[direction]);
  if (state === 'asKnit') return model.asKnit[direction];
  if (state === 'dried') return dried;
  const ratio = state === 'wet' ? model.wetOverDried : model.rewashedOverDried;
  return add(dried, ratio[direction]);
};
