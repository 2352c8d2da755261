import {
  WEIGHT_CLASSES,
  type WeightClass,
  weightClassForMetres,
  yarnWeight,
} from '../textile/index.ts';
import type { Basis } from './basis.ts';

/** Where the width of a stitch starts before anything was measured: log of millimetres. */
export interface StartingPitch {
  readonly mean: number;
  readonly sd: number;
  readonly basis: Basis;
}

const FOUR_INCHES_MM = 101.6;
/** Within a class, hands and needles differ by this beyond the printed range. Assumption. */
const BEYOND_CLASS_SD = 0.08;
/** Nothing known of the yarn: from fine lace to jumbo, as mean and SD of log millimetres. */
const ANY_YARN = { mean: Math.log(4.6), sd: 0.45 };

/** From the yarn's class, else from its metres per 100 g, else nearly anything. */
export const classPitch = (
  weightClass: number | null,
  metresPer100g: number | null,
): StartingPitch => {
  const known = WEIGHT_CLASSES.find((c) => c === weightClass);
  if (known !== undefined) return fromClasses([known]);
  if (metresPer100g !== null) return fromClasses(weightClassForMetres(metresPer100g).classes);
  return {
    ...ANY_YARN,
    basis: {
      id: 'yarn-class',
      kind: 'assumption',
      text: 'Nothing is known of the yarn’s weight: a stitch may be anything from fine lace to jumbo',
      source: null,
    },
  };
};

const fromClasses = (classes: readonly WeightClass[]): StartingPitch => {
  const rows = classes.map(yarnWeight);
  const most = Math.max(...rows.map((r) => r.stitchesPer4in.high));
  const least = Math.min(...rows.map((r) => r.stitchesPer4in.low ?? r.stitchesPer4in.high * 0.6));
  const centre = Math.log(FOUR_INCHES_MM / Math.sqrt(most * least));
  const range = Math.log(most / least);
  return {
    mean: centre,
    sd: Math.hypot(range / Math.sqrt(12), BEYOND_CLASS_SD),
    basis: {
      id: 'yarn-class',
      kind: 'published',
      text: `Yarn weight class ${classes.join(' or ')}: commonly ${least.toFixed(0)} to ${most} stitches over {mm:${FOUR_INCHES_MM}} of stockinette, a guideline only`,
      source: rows[0]?.source ?? null,
    },
  };
};
