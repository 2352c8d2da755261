import { ownValue } from '../units/index.ts';
import type { GarmentKind } from './kinds.ts';

/**
 * Which part of a garment's mass pulls on the fabric of a landmark while it hangs from shoulders.
 * `own`: share of the mass in that stretch of fabric itself; `below`: share hanging from its lower
 * end; `girth`: how much of the chest girth carries it. Proportions of ordinary garments: body
 * without sleeves about 0.7 of the mass, each sleeve 0.15. Assumption; the mass and girth are the
 * garment's own.
 */
export interface HangShare {
  readonly own: number;
  readonly below: number;
  readonly girth: number;
}

const SLEEVED: Readonly<Record<string, HangShare>> = {
  'body-length': { own: 0.7, below: 0, girth: 1 },
  'underarm-length': { own: 0.45, below: 0, girth: 1 },
  'armhole-depth': { own: 0.25, below: 0.45, girth: 0.8 },
  'yoke-depth': { own: 0.3, below: 0.7, girth: 0.8 },
  'sleeve-length': { own: 0.13, below: 0, girth: 0.32 },
  chest: { own: 0.05, below: 0.4, girth: 1 },
  waist: { own: 0.05, below: 0.2, girth: 1 },
};

const SLEEVELESS: Readonly<Record<string, HangShare>> = {
  'body-length': { own: 1, below: 0, girth: 1 },
  'underarm-length': { own: 0.65, below: 0, girth: 1 },
  'armhole-depth': { own: 0.35, below: 0.65, girth: 0.7 },
  chest: { own: 0.05, below: 0.6, girth: 1 },
  waist: { own: 0.05, below: 0.3, girth: 1 },
};

/** Null where nothing hangs: hems, cuffs, and garments that are not hung from shoulders. */
export const hangShares = (kind: GarmentKind, landmark: string): HangShare | null => {
  if (kind.startsWith('pullover') || kind.startsWith('cardigan'))
    return ownValue(SLEEVED, landmark) ?? null;
  return kind === 'vest' || kind === 'top' ? (ownValue(SLEEVELESS, landmark) ?? null) : null;
};
