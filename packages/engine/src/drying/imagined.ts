import { Z95 } from '../stats/index.ts';
import { blendRegain, dryMass } from '../textile/index.ts';
import * as assumed from './assumptions.ts';
import type { GarmentCourse } from './garment-course.ts';
import { type Isotherm, isotherm } from './isotherm.ts';
import { airPressure, wetFaceRate } from './psychrometrics.ts';
import type { DryingQuestion, ThickPlace } from './types.ts';

/**
 * Everything unknown is a standard normal, by this order. `imagine` turns a row of them into one
 * drying.
 */
export const UNKNOWNS = [
  'heat',
  'humidity',
  'regain',
  'saturated',
  'bend',
  'return',
  'water',
  'thickness',
  'pace',
] as const;

export interface Imagined extends GarmentCourse {
  /** Over dry fibre, at the start. */
  readonly excess: number;
  /** Loss of the whole while all of it is wet, g/h. */
  readonly rateG: number;
  /** What the yarn holds in this room, over dry fibre. */
  readonly regain: number;
  /** Hours of the last weighing, 0 without one: how long the air is known to have been as it was. */
  readonly steadyHours: number;
  /** Hours by the clock over those of the model, after that. */
  readonly pace: number;
}

/** The ends of a published range are taken as its 5 % and 95 % points. */
const position = (z: number): number => 0.5 + z / (2 * Z95);

/** Between 1 % and half of the way from the reading to saturation. */
const humidityOf = (percent: number, z: number): number =>
  Math.min((percent + 100) / 2, Math.max(1, percent + assumed.HUMIDITY_SD * z)) / 100;

const labelRegain = (question: DryingQuestion, at: number): number => {
  const range = blendRegain(question.fibres, 'agreed');
  if (!range.ok) throw new RangeError('the shares of the fibres were not checked');
  const { low, high } = range.value;
  return low + (high - low) * Math.min(1, Math.max(0, at));
};

/** Regain that the dry weighing was made at. */
const weighedRegain = (
  question: DryingQuestion,
  line: Isotherm,
  here: number,
  at: number,
): number => {
  const { air } = question.dry;
  if (air === 'here') return here;
  return air === 'label' ? labelRegain(question, at) : line.at(air / 100);
};

/** Named places with the rest first; shares of the mass. */
export const allPlaces = (question: DryingQuestion): readonly ThickPlace[] => {
  const thick = question.lying.thick ?? assumed.USUAL_THICK;
  const rest = 1 - thick.reduce((sum, { share }) => sum + share, 0);
  return [{ name: thick.length === 0 ? 'the whole' : 'the rest', share: rest, times: 1 }, ...thick];
};

/** Area per fibre of each place over that of the whole: thicker has less. Weighted by share they make 1. */
const relativeAreas = (places: readonly ThickPlace[], spread: number): number[] => {
  const thin = places.map(({ times }) => (times === 1 ? 1 : 1 / Math.max(1, times * spread)));
  const mean = places.reduce((sum, { share }, i) => sum + share * thin[i]!, 0);
  return thin.map((each) => each / mean);
};

const startExcess = (question: DryingQuestion, dryMassG: number, fibreG: number, z: number) => {
  const { wet } = question;
  if (typeof wet === 'number') {
    const sd = question.scaleSd ?? assumed.SCALE_SD;
    return Math.max(0, (wet + sd * z - dryMassG) / fibreG);
  }
  const left = assumed.waterLeft(wet);
  return left.median * Math.exp(left.logSd * z);
};

/** One drying, from a row of standard normals in the order of `UNKNOWNS`. */
export type Imagine = (z: ArrayLike<number>) => Imagined;
type Of = (name: (typeof UNKNOWNS)[number]) => number;

/** What the yarn holds: here, at most, and how much of it there is. */
const holds = (question: DryingQuestion, humidity: number, of: Of) => {
  const at = position(of('regain'));
  const line = isotherm(question.fibres, { standard: at, saturated: position(of('saturated')) });
  const regain = line.at(humidity);
  const from = weighedRegain(question, line, regain, at);
  const fibreG = dryMass(question.dry.mass, from);
  const comesBack = regain * (1 + assumed.RETURN_SD * of('return'));
  return { regain, fibreG, dryMassG: fibreG * (1 + comesBack), saturated: line.saturated };
};

const bendOf = (z: number): number => {
  const { mean, sd, least, most } = assumed.BEND;
  return Math.min(most, Math.max(least, mean + sd * z));
};

/** Of the last weighing; 0 before any. */
export const lastHours = ({ weighings }: DryingQuestion): number =>
  weighings.reduce((last, { hours }) => Math.max(last, hours), 0);

/** A yarn at the edge of saturation still has some way to fall. */
const LEAST_CRITICAL = 1e-4;

/** Prepares a question that has no faults; the result is pure. */
export const imaginer = (question: DryingQuestion): Imagine => {
  const { air } = question;
  const pressure = airPressure(air.altitudeM ?? 0);
  const places = allPlaces(question);
  const none: Of = () => 0;
  const middle = holds(question, air.humidityPercent / 100, none);
  const thickSd = assumed.THICKNESS_SD[question.lying.thick === null ? 'usual' : 'said'];
  const steadyHours = lastHours(question);
  const heat = assumed.heatPerFibre(question, middle.fibreG);
  return (z) => {
    const of: Of = (name) => z[UNKNOWNS.indexOf(name)]!;
    const humidity = humidityOf(air.humidityPercent, of('humidity'));
    const { regain, fibreG, dryMassG, saturated } = holds(question, humidity, of);
    const excess = startExcess(question, dryMassG, fibreG, of('water'));
    const critical = Math.max(LEAST_CRITICAL, saturated - regain);
    const perHeat = wetFaceRate(air.temperature, humidity, pressure, 1);
    const rate = perHeat * heat.median * Math.exp(heat.logSd * of('heat'));
    const areas = relativeAreas(places, Math.exp(thickSd * of('thickness')));
    const bend = bendOf(of('bend'));
    return {
      fibreG,
      dryMassG,
      regain,
      excess,
      rateG: rate * fibreG,
      steadyHours,
      pace: Math.exp(assumed.PACE_SD * of('pace')),
      places: places.map(({ share }, i) => ({
        share,
        course: { excess, critical, bend, rate: rate * areas[i]! },
      })),
    };
  };
};
