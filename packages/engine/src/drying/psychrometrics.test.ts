import fc from 'fast-check';
import psychrolib from 'psychrolib';
import { expect, test } from 'vitest';
import { REFERENCES } from '../textile/index.ts';
import { celsius } from '../units/index.ts';
import {
  airPressure,
  dewPoint,
  latentHeat,
  psychrometricConstant,
  saturationPressure,
  vapourPressure,
  wetBulb,
  wetFaceRate,
} from './psychrometrics.ts';

psychrolib.SetUnitSystem(psychrolib.SI);
const SEA = airPressure(0);

test('D2: saturation pressures of FAO-56 example 3, to the digits printed there', () => {
  expect(saturationPressure(24.5)).toBeCloseTo(3.075, 3);
  expect(saturationPressure(15)).toBeCloseTo(1.705, 3);
});

test.each([
  // Alduchov and Eskridge 1996, 610.94 exp(17.625 T/(T + 243.04)) Pa.
  [
    'Alduchov and Eskridge',
    'alduchov-1996',
    (t: number) => 0.61094 * Math.exp((17.625 * t) / (t + 243.04)),
  ],
  // Sonntag 1990 in the form of the WMO guide, 6.112 exp(17.62 T/(T + 243.12)) hPa.
  ['Sonntag', 'sonntag-1990', (t: number) => 0.6112 * Math.exp((17.62 * t) / (t + 243.12))],
] as const)('D2: within 0.3 %% of %s from 10 to 30 °C, and never equal', (_, key, other) => {
  // Published fits of one curve differ by this much; a wrong constant would differ by more.
  for (let t = 10; t <= 30; t++) {
    const off = Math.abs(saturationPressure(t) / other(t) - 1);
    expect(off).toBeLessThan(0.003);
    expect(off).toBeGreaterThan(0);
  }
  expect(REFERENCES[key].standing).toBe('read-second-hand');
});

test('D2: Goff and Gratch give 31.652 hPa at 25 °C; the four agree within 0.3 %', () => {
  expect(Math.abs(saturationPressure(25) / 3.1652 - 1)).toBeLessThan(0.003);
});

test('D2: the ASHRAE formulas of a separate library agree within 0.3 %', () => {
  for (let t = 5; t <= 35; t += 2.5)
    expect(Math.abs(saturationPressure(t) / (psychrolib.GetSatVapPres(t) / 1000) - 1)).toBeLessThan(
      0.003,
    );
});

test('D2: the dew point is the inverse, and at 20 °C and 50 % it is 9.3 °C', () => {
  for (let t = -10; t <= 45; t += 5) expect(dewPoint(saturationPressure(t))).toBeCloseTo(t, 9);
  // The usual figure of psychrometric charts (from memory), to its last digit.
  expect(dewPoint(0.5 * saturationPressure(20))).toBeCloseTo(9.3, 1);
});

test('D3: FAO-56 example 2: at 1800 m the pressure is 81.8 kPa and the constant 0.054 kPa/K', () => {
  // Half of the last printed digit.
  expect(Math.abs(airPressure(1800) - 81.8)).toBeLessThan(0.05);
  expect(psychrometricConstant(airPressure(1800))).toBeCloseTo(0.054, 3);
});

test('D3: FAO-56 example 4: bulbs at 25.6 and 19.5 °C at 1200 m are a vapour pressure of 1.91 kPa', () => {
  // Half of the last printed digit. Example from memory.
  expect(vapourPressure(25.6, 19.5, airPressure(1200))).toBeCloseTo(1.91, 2);
});

const stull = (t: number, rh: number): number =>
  t * Math.atan(0.151977 * Math.sqrt(rh + 8.313659)) +
  Math.atan(t + rh) -
  Math.atan(rh - 1.676331) +
  0.00391838 * rh ** 1.5 * Math.atan(0.023101 * rh) -
  4.686035;

test('D4: Stull 2011 is met within 0.3 °C on average, and within his own stated errors everywhere', () => {
  // He states errors of −1.0 to 0.65 °C with a mean magnitude below 0.3 °C (from memory).
  expect(stull(20, 50)).toBeCloseTo(13.7, 1); // his own example
  expect(REFERENCES['stull-2011'].standing).toBe('from-memory');
  const errors = [10, 15, 20, 25, 30].flatMap((t) =>
    [30, 40, 50, 60, 70, 80, 90].map(
      (rh) => stull(t, rh) - wetBulb(celsius(t), rh / 100, SEA).value,
    ),
  );
  expect(errors.reduce((sum, e) => sum + Math.abs(e), 0) / errors.length).toBeLessThan(0.3);
  expect(Math.min(...errors)).toBeGreaterThan(-1);
  expect(Math.max(...errors)).toBeLessThan(0.65);
  for (const [t, rh] of [
    [20, 50],
    [20, 65],
    [25, 50],
  ] as const)
    expect(Math.abs(stull(t, rh) - wetBulb(celsius(t), rh / 100, SEA).value)).toBeLessThan(0.3);
});

test('D4: the wet bulb is within 0.2 °C of the ASHRAE thermodynamic wet bulb of a separate library', () => {
  // A ventilated psychrometer stands a little off adiabatic saturation: 0.000662 against 0.000665.
  for (const t of [8, 15, 20, 25, 30])
    for (const rh of [0.3, 0.5, 0.65, 0.8, 0.95]) {
      const theirs = psychrolib.GetTWetBulbFromRelHum(t, rh, SEA * 1000);
      expect(Math.abs(wetBulb(celsius(t), rh, SEA).value - theirs)).toBeLessThan(0.2);
    }
});

test('D4: what is solved satisfies the psychrometer equation, below the air and above its dew point', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0, max: 45, noNaN: true }),
      fc.double({ min: 0.02, max: 1, noNaN: true }),
      (t, rh) => {
        const { value, converged, residual, iterations } = wetBulb(celsius(t), rh, SEA);
        expect(converged).toBe(true);
        expect(iterations).toBeLessThan(60);
        // 1e-6 K on a slope below 0.6 kPa/K.
        expect(Math.abs(residual)).toBeLessThan(1e-6);
        expect(value).toBeLessThanOrEqual(t);
        expect(saturationPressure(value)).toBeGreaterThanOrEqual(
          rh * saturationPressure(t) * (1 - 1e-6),
        );
      },
    ),
  );
});

test('D4: in saturated air the wet bulb is the air', () => {
  expect(wetBulb(celsius(20), 1, SEA).value).toBeCloseTo(20, 6);
  expect(() => wetBulb(celsius(20), 0, SEA)).toThrow(RangeError);
});

test('D4: latent heat at 20 °C is 2.45 MJ/kg, as FAO-56 takes it', () => {
  expect(latentHeat(20) / 1e6).toBeCloseTo(2.45, 2);
});

test.each([
  [20, 0.5, 5, 0.045],
  [20, 0.5, 10, 0.09],
  [20, 0.65, 5, 0.03],
  [20, 0.65, 10, 0.061],
  [22, 0.4, 5, 0.059],
  [22, 0.4, 10, 0.117],
])('D5: at %d °C, humidity %d and h = %d a face loses %d kg/m²h', (t, rh, h, rate) => {
  // The heat balance worked by hand with the wet bulbs of FAO-56; half of the last digit.
  expect(Math.abs(wetFaceRate(celsius(t), rh, SEA, h) - rate)).toBeLessThanOrEqual(0.0006);
});
