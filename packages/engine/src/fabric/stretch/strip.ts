import { type StretchLaw, strainAt } from './law.ts';

/**
 * A pulled strip: the law, and how far the strip was already stretched where its strain was counted
 * from. The data set counts strain from the first frame of a pull, in which the strip carries a few
 * N/m; this one further constant puts the toe of every curve right.
 */
export interface Strip extends StretchLaw {
  /** Strain from true rest at the frame that the readings call zero. */
  readonly preStretch: number;
}

/** Extension as the strip's readings count it, under a line load of N per mm. */
export const readExtension = (strip: Strip, load: number): number =>
  (1 + strainAt(strip, load).value) / (1 + strip.preStretch) - 1;
