import { type LogNormal, logNormal } from '../../stats/index.ts';
import {
  WEIGHT_CLASSES,
  type WeightClass,
  weightClassForGauge,
  yarnWeight,
} from '../../textile/index.ts';
import { mm } from '../../units/index.ts';
import type { Basis } from '../basis.ts';
import { classPitch } from '../class-pitch.ts';
import { LOOP_CONSTANTS, loopOfPitch } from '../loop-geometry.ts';
import type { Direction } from '../specimen.ts';
import {
  ANY_METRES,
  CLASS_SD,
  LABEL_SD,
  LOOP_OWN_SD,
  LOOP_SHARED_SD,
  RELAXATION_OF,
} from './assumptions.ts';
import type { GaugeForYarn, YarnQuestion } from './types.ts';

export interface Prior {
  readonly value: LogNormal;
  readonly basis: Basis;
}

const FOUR_INCHES_MM = 101.6;
/** An open-ended class goes on by this factor. Assumption. */
const OPEN = 1.6;

const classesMetres = (classes: readonly WeightClass[]): LogNormal => {
  const rows = classes.map((each) => yarnWeight(each).metresPer100g);
  const low = Math.min(...rows.map((r) => r.low ?? r.high! / OPEN));
  const high = Math.max(...rows.map((r) => r.high ?? r.low! * OPEN));
  const { median, logSd } = logNormal(low, high);
  return { median, logSd: Math.hypot(logSd, CLASS_SD) };
};

const classOf = ({ weightClass, gauge }: YarnQuestion): readonly WeightClass[] => {
  const said = WEIGHT_CLASSES.find((each) => each === weightClass);
  if (said !== undefined) return [said];
  if (gauge?.stitch !== 'stockinette' || gauge.width === null) return [];
  return weightClassForGauge(FOUR_INCHES_MM / gauge.width.median).classes;
};

/** Metres per 100 g as a label would have it: the label, else the class, else what the gauge suggests, else anything. */
export const metresPrior = (question: YarnQuestion): Prior => {
  const { metresPer100g } = question;
  if (metresPer100g !== null)
    return {
      value: { median: metresPer100g, logSd: LABEL_SD },
      basis: {
        id: 'yarn-metres',
        kind: 'measured',
        text: `The label says ${metresPer100g} m in 100 g; it is taken to be ${LABEL_SD * 100} % off (SD, assumption)`,
        source: null,
      },
    };
  const classes = classOf(question);
  if (classes.length > 0) {
    const value = classesMetres(classes);
    return {
      value,
      basis: {
        id: 'yarn-metres',
        kind: 'published',
        text: `Yarn of class ${classes.join(' or ')} commonly has about ${value.median.toFixed(0)} m in 100 g, within a wide range`,
        source: 'yarn-metres-sheet',
      },
    };
  }
  return {
    value: ANY_METRES,
    basis: {
      id: 'yarn-metres',
      kind: 'assumption',
      text: 'Nothing is known of the yarn’s length for its mass: it may be anything from fine lace to jumbo',
      source: null,
    },
  };
};

/** Doubt of one stitch in the class and hand beyond its gauge: kw varies with the state. Assumption. */
const CLASS_LOOP_SD = 0.08;

/** Yarn in a stockinette stitch, mm, before any gauge: from the usual gauge of the yarn's class by l = kw · w. */
export const loopPrior = (question: YarnQuestion): Prior => {
  const pitch = classPitch(question.weightClass, question.metresPer100g);
  const width = mm(Math.exp(pitch.mean));
  return {
    value: {
      median: loopOfPitch(width, 'dryRelaxed', 'width'),
      logSd: Math.hypot(pitch.sd, CLASS_LOOP_SD),
    },
    basis: { ...pitch.basis, id: 'yarn-class-loop' },
  };
};

export interface LoopEstimate {
  readonly direction: Direction;
  /** mm of yarn in a stitch; the doubt is that of the gauge alone. */
  readonly loop: LogNormal;
  readonly basis: Basis;
}

/** Doubt of one estimate beyond its gauge, percent. */
const MODEL_PERCENT = Math.round(100 * Math.hypot(LOOP_SHARED_SD, LOOP_OWN_SD));

/**
 * Yarn in one stockinette stitch from its gauge: l = kw · w and l = kc · c (Munden 1959, J. Text.
 * Inst. 50, T448), in the published relaxation that is nearest to the gauge's state. Up to two
 * estimates; none for another stitch.
 */
export const loopEstimates = (gauge: GaugeForYarn | null): LoopEstimate[] => {
  if (gauge === null || gauge.stitch !== 'stockinette') return [];
  const relaxation = RELAXATION_OF[gauge.state];
  const one = (direction: Direction, pitch: LogNormal | null): LoopEstimate[] => {
    if (pitch === null) return [];
    const median = loopOfPitch(mm(pitch.median), relaxation, direction);
    const [name, k] =
      direction === 'width' ? ['width of a stitch', 'kw'] : ['height of a row', 'kc'];
    const value = LOOP_CONSTANTS[relaxation][k as 'kw' | 'kc'];
    return [
      {
        direction,
        loop: { median, logSd: pitch.logSd },
        basis: {
          id: `yarn-loop-${direction}`,
          kind: 'published',
          text: `A stitch takes ${value} times the ${name} of yarn, {mm:${median.toFixed(1)}}; the constant is of machine-knit wool, and hand knitting is taken to be within ${MODEL_PERCENT} % of it (SD, assumption)`,
          source: LOOP_CONSTANTS[relaxation].source,
        },
      },
    ];
  };
  return [...one('width', gauge.width), ...one('length', gauge.row)];
};
