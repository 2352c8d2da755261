import { type LogNormal, logNormal } from '../stats/index.ts';
import type { DryingQuestion, ThickPlace } from './types.ts';

/** W m⁻² K⁻¹ from room to wet cloth, radiation included. Both from memory, and wide. */
const HEAT_TRANSFER = { still: logNormal(5.5, 11), moving: logNormal(12, 35) } as const;

/**
 * Faces that air reaches. The underside on a rack gets less air than the top; a mat lets a little
 * out below. From memory; no published figure was found for garments.
 */
const FACES = { rack: logNormal(1.55, 2), mat: logNormal(1, 1.25) } as const;

/** kg of dry yarn per m² of one layer of hand knitting, where it was not measured. From memory. */
const AREAL = logNormal(0.25, 0.55);
/** SD of the logarithm of an area that was measured or drawn from the pieces. Assumption. */
const MEASURED_AREA = 0.06;

/** Water over what the yarn holds in air, as a share of dry fibre. No source was found. */
const LEFT_AFTER = {
  towel: logNormal(0.6, 1.1),
  spun: logNormal(0.25, 0.6),
  dripping: logNormal(1.2, 2.5),
} as const;

export const waterLeft = (how: keyof typeof LEFT_AFTER): LogNormal => LEFT_AFTER[how];

/** SD of a hygrometer's reading as the mean of a day, points of relative humidity. Assumption. */
export const HUMIDITY_SD = 4;
/** SD of the dry mass when it dries from wet, as a share of the regain that it holds. Assumption. */
export const RETURN_SD = 0.05;
/** SD of the logarithm of how many times as thick a place is, as said or as usual. Assumption. */
export const THICKNESS_SD = { said: 0.15, usual: 0.25 } as const;
/** SD of the logarithm of the pace after the last weighing over that before: air changes. Assumption. */
export const PACE_SD = 0.12;
/** Power of the falling rate, between the two published laws: 1 and convex upward. Assumption. */
export const BEND = { mean: 0.85, sd: 0.1, least: 0.5, most: 1 } as const;
/** What the model itself misses of a weighing, as a share of the water gone till then. Assumption. */
export const MODEL_MISS = 0.02;
/** g; a kitchen scale of 1 g, a damp towel and the hanging on. Assumption. */
export const SCALE_SD = 2;

/** Dry: the whole within 1 % of the dry fibre of what the room leaves in it, each place within 3 %. */
export const TOLERANCE = { whole: 0.01, place: 0.03 } as const;

/** Hems, ribbing and underarms of a garment of which nothing was said (common practice, no source). */
export const USUAL_THICK: readonly ThickPlace[] = [
  { name: 'hems, ribbing and underarms', share: 0.15, times: 1.6 },
];

/** Fabric per dry fibre, m²/kg, one face, all layers. */
const spreadArea = (question: DryingQuestion, dryFibreG: number): LogNormal =>
  question.lying.fabricM2 === null
    ? { median: 1 / AREAL.median, logSd: AREAL.logSd }
    : { median: (1000 * question.lying.fabricM2) / dryFibreG, logSd: MEASURED_AREA };

/**
 * Heat that reaches the wet faces per kg of dry fibre, W K⁻¹ kg⁻¹: heat transfer × faces × lying
 * area. Only the product tells in a weighing, so the doubts are one.
 */
export const heatPerFibre = (question: DryingQuestion, dryFibreG: number): LogNormal => {
  const h = HEAT_TRANSFER[question.air.movement];
  const faces = FACES[question.lying.on];
  const area = spreadArea(question, dryFibreG);
  return {
    median: (h.median * faces.median * area.median) / question.lying.layers,
    logSd: Math.hypot(h.logSd, faces.logSd, area.logSd),
  };
};
