import type { TensionLaw } from '../../membrane/law.ts';
import type { Material } from '../../membrane/material.ts';
import type { Direction } from '../specimen.ts';
import { energyAt, loadAt, type StretchLaw, squeezeUnder, stiffnessAt } from '../stretch/law.ts';

/** A law with its jam: what one direction of a fabric in the plane needs. */
export interface JammingLaw extends StretchLaw {
  readonly jam: number;
}

/** The constants of a fabric in the plane, as plain numbers. */
export interface PlaneConstants {
  /** Load of a strip along the courses that is free to narrow, and the squeeze its stitches allow. */
  readonly width: JammingLaw;
  /** The same along the wales. */
  readonly length: JammingLaw;
  /** ρ: coupling over √(Y₁Y₂), 0 (the directions are apart) to `MOST_SHARE`. */
  readonly share: number;
  /** Shear stiffness over √(Y₁Y₂). */
  readonly shearShare: number;
}

/**
 * Above 1/√2 the energy of the plane can lose its convexity where one direction is pulled and the
 * other squeezed: (1 − ρ²) − ρ² < 0 at rest stiffness.
 */
export const MOST_SHARE = 0.7;

/**
 * The sheet of the membrane, along 1 the courses and along 2 the wales: W = w₁(ε₁) + w₂(ε₂) + c ε₁ε₂ +
 * ½ G C₁₂² per area at rest. w₁ and w₂ are such that a strip that is free to narrow carries exactly
 * the load of its law. Such a strip squeezes the other direction by e, where the push is c ε, and
 * carries c e less for it; that is what w has beyond the strip. At rest Y = E/(1 − ρ²) on both sides.
 */
export const sheetOf = (constants: PlaneConstants): Material => {
  const { width, length, shearShare } = constants;
  const coupling = couplingOf(constants);
  return {
    along1: heldLaw(width, length, constants, coupling),
    along2: heldLaw(length, width, constants, coupling),
    coupling,
    shear: shearShare * meanStiffness(constants),
  };
};

/** √(Y₁Y₂), N/mm. */
const meanStiffness = ({ width, length, share }: PlaneConstants): number =>
  Math.sqrt(width.slope * length.slope) / (1 - share ** 2);

/** c, N/mm. Throws a RangeError for a share outside 0 to `MOST_SHARE`. */
export const couplingOf = (constants: PlaneConstants): number => {
  const { share } = constants;
  if (!(share >= 0 && share <= MOST_SHARE)) throw new RangeError(`coupling share ${share}`);
  return share * meanStiffness(constants);
};

/** The law of a direction as it is squeezed while the other is held: stiffer than its strip. */
const held = (strip: JammingLaw, { share }: PlaneConstants): JammingLaw => ({
  ...strip,
  slope: strip.slope / (1 - share ** 2),
});

const heldLaw = (
  strip: JammingLaw,
  across: JammingLaw,
  constants: PlaneConstants,
  coupling: number,
): TensionLaw => {
  const squeezed = held(strip, constants);
  const other = held(across, constants);
  return {
    stress: (strain) =>
      strain <= 0
        ? loadAt(squeezed, strain)
        : loadAt(strip, strain) + coupling * squeezeUnder(other, coupling * strain),
    stiffness: (strain) =>
      strain <= 0
        ? stiffnessAt(squeezed, strain)
        : stiffnessAt(strip, strain) + coupling * coupling * squeezeSlope(other, coupling * strain),
    energy: (strain) =>
      strain <= 0
        ? energyAt(squeezed, strain)
        : energyAt(strip, strain) + squeezeWork(other, coupling * strain),
    limit: strip.limit,
    jam: -strip.jam,
  };
};

/** Root of 1 + (push/YJ)²: what jamming does to the squeeze. */
const jamming = ({ slope, jam }: JammingLaw, push: number): number => {
  const t = push / (slope * jam);
  return Math.sqrt(1 + t * t);
};

/** Slope of `squeezeUnder` by the push. */
const squeezeSlope = (law: JammingLaw, push: number): number => {
  const root = jamming(law, push);
  return 1 / (law.slope * root * root * root);
};

/** Integral of `squeezeUnder` over the push: YJ²(√(1 + (push/YJ)²) − 1), without cancellation. */
const squeezeWork = (law: JammingLaw, push: number): number =>
  (push * push) / (law.slope * (1 + jamming(law, push)));

/** How far the other direction draws in, a positive fraction, when one is pulled to a strain of 0 or more. */
export const narrowingAt = (
  constants: PlaneConstants,
  pulled: Direction,
  strain: number,
): number => {
  const across = constants[pulled === 'width' ? 'length' : 'width'];
  return squeezeUnder(held(across, constants), couplingOf(constants) * strain);
};
