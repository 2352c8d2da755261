import type { Basis } from '../fabric/index.ts';
import type { ForecastQuestion } from './forecast-types.ts';

export interface GarmentMass {
  readonly grams: number;
  readonly bases: readonly Basis[];
}

/** Mass of a square metre of hand knitting by yarn weight class, grams. From memory, wide. */
const AREAL_G_PER_M2 = [150, 220, 270, 320, 400, 550, 800, 1100] as const;

/**
 * The garment's mass as given; else from its area and the yarn's class: two layers of chest by
 * body length, and half as much again for sleeves. Null where neither is known.
 */
export const garmentMass = (
  question: ForecastQuestion,
  lengthOf: (landmark: string) => number | null,
): GarmentMass | null => {
  if (question.mass !== null) return given(question.mass);
  const girth = lengthOf('chest');
  const length = lengthOf('body-length');
  const areal = AREAL_G_PER_M2[question.weightClass ?? -1];
  if (girth === null || length === null || areal === undefined) return null;
  const sleeves = question.kind === 'vest' || question.kind === 'top' ? 1 : 1.5;
  const grams = (girth * length * sleeves * areal) / 1e6;
  return {
    grams,
    bases: [
      {
        id: 'mass',
        kind: 'from-memory',
        text: `The garment is taken to weigh about ${grams.toFixed(0)} g from its size and yarn class; weigh it to do better`,
        source: null,
      },
    ],
  };
};

const given = (grams: number): GarmentMass => ({
  grams,
  bases: [{ id: 'mass', kind: 'measured', text: `The garment weighs ${grams} g`, source: null }],
});
