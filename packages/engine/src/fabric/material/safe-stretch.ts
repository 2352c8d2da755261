import { type Figure, figure, remembered } from '../../textile/index.ts';

/**
 * Stretches, as fractions of rest and in each direction, that makers of wool and test practice call
 * safe or tell sizes by. None of them is a limit of the fabric: a fabric can do far more, and comes back
 * from it at the next wash.
 */
export const SAFE_STRETCH: {
  /** "Do not stretch more than 5 % in each direction when steaming." */
  readonly steaming: Figure;
  /** How far off retail accepts a knitted garment to be after washing, either way. */
  readonly washing: Figure;
  /** A change of about this much makes another garment size. */
  readonly oneSize: Figure;
} = {
  steaming: figure('wool-training-notes', 'read', 0.05),
  washing: remembered(0.05),
  oneSize: figure('knit-goods-notes', 'read', 0.03),
};

/** The strictest of those that speak of stretching: above it a stretch is beyond what is called safe. */
export const safeStretch: number = Math.min(SAFE_STRETCH.steaming.low, SAFE_STRETCH.washing.low);
