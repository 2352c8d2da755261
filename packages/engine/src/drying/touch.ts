import { type Fibre, figure } from '../textile/index.ts';
import { TOLERANCE } from './assumptions.ts';
import { allPlaces, type Imagined } from './imagined.ts';
import { toClock } from './pace.ts';
import { hoursUntil } from './place-course.ts';
import type { DryingQuestion, TouchWorth } from './types.ts';
import { weightedSpread } from './weighted-spread.ts';

/** Wool no longer feels damp below about this regain, says a maker of it. */
const FEELS_DRY = figure('ball-weight-notes', 'read', 0.35);
const HAIR: readonly Fibre[] = ['wool', 'alpaca', 'mohair', 'cashmere'];

const mostlyHair = ({ fibres }: DryingQuestion): boolean =>
  fibres.reduce((sum, { fibre, share }) => sum + (HAIR.includes(fibre) ? share : 0), 0) > 0.5;

/** Hours from feeling dry to being dry, at the place that is last. */
const left = (garment: Imagined, at: number): number => {
  const last = garment.places.reduce((slowest, place) =>
    place.course.rate < slowest.course.rate ? place : slowest,
  ).course;
  const feels = hoursUntil(last, Math.max(TOLERANCE.place, at - garment.regain));
  return toClock(garment, hoursUntil(last, TOLERANCE.place)) - toClock(garment, feels);
};

/**
 * What feeling it is worth where there is no scale. Only for wool and hair was a figure found; it
 * is read across to hair.
 */
export const touchWorth = (
  question: DryingQuestion,
  garments: readonly Imagined[],
  weights: Float64Array,
): TouchWorth => {
  const where = allPlaces(question).reduce((a, b) => (b.times > a.times ? b : a)).name;
  if (!mostlyHair(question))
    return {
      where,
      feelsDryAt: null,
      hoursLeft: null,
      text: `Feel it at ${where}, against the cheek, where cold means wet. How much water this fibre holds when it first feels dry was not found.`,
    };
  const hours = Float64Array.from(garments, (garment) => left(garment, FEELS_DRY.low));
  return {
    where,
    feelsDryAt: FEELS_DRY.low,
    hoursLeft: weightedSpread(hours, weights),
    text: `Feel it at ${where}. Wool feels dry while it still holds about 35 % of its dry mass in water, so a dry feel is the start of the last part, not its end.`,
  };
};
