import { type FibreShare, factsOf } from '../textile/index.ts';
import { saturatedRegain } from './saturated-regain.ts';

/**
 * Sorption isotherm of Guggenheim, Anderson and de Boer (`guggenheim-1966`), regain over relative
 * humidity, with the energy constant fixed at 10. That constant is an assumption from memory: with
 * it, two regains, at 65 % and in saturated air, give the usual curves of wool and cotton within a
 * point.
 */
const ENERGY = 10;
/** Standard air of textile testing: 65 % at 20 °C (ISO 139, from memory). */
const STANDARD = 0.65;
/** Below this ratio of the two regains the isotherm has no such form; it is reached as K falls to 0. */
const LEAST_RATIO = 1.6;

const shape = (humidity: number, k: number): number => {
  const x = k * humidity;
  return x / ((1 - x) * (1 + (ENERGY - 1) * x));
};

/** K from the ratio of the saturated to the standard regain: the positive root of a quadratic. */
const multilayer = (ratio: number): number => {
  const [c, a] = [ENERGY - 1, STANDARD];
  const first = c * a * (ratio - a);
  const second = -a * (c - 1) * (ratio - 1);
  const third = 1 - a * ratio;
  return (-second + Math.sqrt(second * second - 4 * first * third)) / (2 * first);
};

/** Where in the ranges of the tables a fibre lies: 0 is the low end, 1 the high end; both may go beyond. */
export interface Place {
  readonly standard: number;
  readonly saturated: number;
}
export const MIDDLE: Place = { standard: 0.5, saturated: 0.5 };

/** Between the ends in the logarithm, so that no place is below zero. Half a range beyond at most. */
const within = ({ low, high }: { readonly low: number; readonly high: number }, at: number) =>
  low * (high / low) ** Math.min(1.5, Math.max(-0.5, at));

/** A fibre that nobody measured is anything between polyester and wool. */
const UNMEASURED = { low: 0.004, high: 0.18 };

/** Regains of a yarn as functions of relative humidity (fraction). */
export interface Isotherm {
  /** Water over dry mass, humidity 0 to 1. Rises from 0 to `saturated`. */
  readonly at: (humidity: number) => number;
  readonly saturated: number;
}

/**
 * Isotherm of a blend. Shares are of conditioned mass, as labels state them; the dry masses add and
 * the water adds. Temperature is left out: half a point of regain per 10 °C (from memory) is less
 * than the ranges.
 */
export const isotherm = (fibres: readonly FibreShare[], place: Place): Isotherm => {
  const parts = fibres.map(({ fibre, share }) => {
    const standard = within(factsOf(fibre).regain.real ?? UNMEASURED, place.standard);
    const held = within(saturatedRegain(fibre), place.saturated);
    const saturated = Math.max(held, standard * LEAST_RATIO);
    const k = multilayer(saturated / standard);
    return { dry: share / (1 + standard), k, single: saturated / shape(1, k) };
  });
  const dry = parts.reduce((sum, part) => sum + part.dry, 0);
  const at = (humidity: number): number =>
    parts.reduce((sum, part) => sum + part.dry * part.single * shape(humidity, part.k), 0) / dry;
  return { at, saturated: at(1) };
};
