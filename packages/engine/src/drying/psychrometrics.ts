import type { Celsius } from '../units/index.ts';
import { fallingRoot, type Solved, sure } from './falling-root.ts';

/**
 * Saturation vapour pressure over water, kPa: FAO-56 (Allen et al. 1998) equation 11. Within 0.3 %
 * of Alduchov and Eskridge 1996 and of Sonntag 1990 from 10 to 30 °C. Meant for 0 to 60 °C.
 */
export const saturationPressure = (temperature: number): number =>
  0.6108 * Math.exp((17.27 * temperature) / (temperature + 237.3));

/** Pressure of the air, kPa, at a height above the sea in metres: FAO-56 equation 7. */
export const airPressure = (altitude: number): number =>
  101.3 * ((293 - 0.0065 * altitude) / 293) ** 5.26;

/** Psychrometric constant, kPa/K, at this air pressure (kPa): FAO-56 equation 8. */
export const psychrometricConstant = (pressure: number): number => 0.665e-3 * pressure;

/** The same for a ventilated psychrometer: FAO-56 equation 16. */
const VENTILATED = 0.000662;

/** Vapour pressure of the air, kPa, from both bulbs of a ventilated psychrometer: FAO-56 equation 15. */
export const vapourPressure = (dryBulb: number, wet: number, pressure: number): number =>
  saturationPressure(wet) - VENTILATED * pressure * (dryBulb - wet);

/** Temperature at which air of this vapour pressure (kPa, above 0) is saturated, °C: the inverse of it. */
export const dewPoint = (pressure: number): number => {
  const log = Math.log(pressure / 0.6108);
  return (237.3 * log) / (17.27 - log);
};

/** Keeps the bracket open in saturated air, K. */
const BELOW = 1e-6;

/**
 * Temperature of a wet surface in moving air, °C: where a ventilated psychrometer would stand.
 * `humidity` is a fraction above 0, at most 1 (then it is the air's own temperature). A wet bulb
 * below 0 °C is over supercooled water. Solved to 1e-6 K; the residual is in kPa.
 */
export const wetBulb = (temperature: Celsius, humidity: number, pressure: number): Solved => {
  if (!(humidity > 0 && humidity <= 1)) throw new RangeError(`relative humidity ${humidity}`);
  const actual = humidity * saturationPressure(temperature);
  return fallingRoot((wet) => actual - vapourPressure(temperature, wet, pressure), {
    low: Math.min(dewPoint(actual), temperature) - BELOW,
    high: temperature,
    tolerance: 1e-6,
  });
};

/** Heat to evaporate water at this temperature, J/kg: FAO-56 annex 3, equation 3-1. */
export const latentHeat = (temperature: number): number => (2.501 - 0.00236 * temperature) * 1e6;

/**
 * Water that leaves one wet face while its surface is wet, kg m⁻² h⁻¹: the heat that the air brings,
 * `heatTransfer` (W m⁻² K⁻¹, radiation included) times the depression of the wet bulb, over the
 * latent heat. `humidity` above 0, at most 1 (then 0).
 */
export const wetFaceRate = (
  temperature: Celsius,
  humidity: number,
  pressure: number,
  heatTransfer: number,
): number => {
  const wet = sure(wetBulb(temperature, humidity, pressure));
  return (3600 * heatTransfer * Math.max(0, temperature - wet)) / latentHeat(wet);
};
