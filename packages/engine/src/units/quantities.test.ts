import { expect, test } from 'vitest';
import { explain, type Result } from './fault.ts';
import { formatMass, formatTemperature, formatYarnLength } from './format-quantities.ts';
import { parseMass } from './parse-mass.ts';
import { parseTemperature } from './parse-temperature.ts';
import { parseYarnLength } from './parse-yarn-length.ts';

const outcome = (result: Result<{ value: number }>) =>
  result.ok ? result.value.value : result.faults.map(explain).join('; ');

test.each([
  ['350 g', 350],
  ['0,4 kg', 400],
  ['12¼ oz', 347.28165828125],
  ['1 lb 2 oz', 510.29141625],
  ['1 lb 2', 510.29141625],
  ['', 'ball: the mass is missing. Write it like 350 g or 12 1/4 oz.'],
  ['350', 'ball: the number has no unit (given: 350). Add g, kg, oz or lb.'],
  [
    '3 stone',
    'ball: “stone” is not a unit of mass known here (given: 3 stone). Use g, kg, oz or lb.',
  ],
  [
    '500 kg',
    'ball: the mass is not between 0.001 g and 100 kg (given: 500 kg). Check the number and its unit.',
  ],
])('U12: a mass of %j is %j', (text, value) => {
  expect(outcome(parseMass(text, { field: 'ball' }))).toBe(value);
});

test.each([
  ['210 m', 210],
  ['230 yds', 210.312],
  ['187,5 metres', 187.5],
  [
    '1,250 m',
    'ball: the comma in 1,250 may mark decimals or thousands (given: 1,250 m). Write 1.250 for decimals, 1250 for thousands.',
  ],
  ['12 in', 'ball: “in” is not a unit of yarn length known here (given: 12 in). Use m or yd.'],
])('U12: a yarn length of %j is %j', (text, value) => {
  expect(outcome(parseYarnLength(text, { field: 'ball' }))).toBe(value);
});

test.each([
  ['21 °C', 21],
  ['-5 c', -5],
  ['212F', 100],
  ['68 degrees Fahrenheit', 20],
  ['20½ °C', 20.5],
  ['21', 'room: the number has no unit (given: 21). Add °C or °F.'],
  ['21 K', 'room: “k” is not a unit of temperature (given: 21 K). Use °C or °F.'],
  ['400 C', 'room: this is outside −60 to 300 °C (given: 400 C). Check the number and its unit.'],
  ['warm', 'room: this is not a temperature (given: warm). Write it like 21 °C or 70 °F.'],
  ['', 'room: the temperature is missing. Write it like 21 °C or 70 °F.'],
])('U12: a temperature of %j is %j', (text, value) => {
  expect(outcome(parseTemperature(text, { field: 'room' }))).toBe(value);
});

test('U12: a bare number takes the unit of the field', () => {
  expect(outcome(parseMass('50', { field: 'ball', unit: 'g' }))).toBe(50);
  expect(outcome(parseYarnLength('100', { field: 'ball', unit: 'yd' }))).toBe(91.44);
  expect(outcome(parseTemperature('70°', { field: 'room', unit: 'F' }))).toBeCloseTo(21.1111, 4);
});

test('U12: masses, yarn lengths and temperatures print to the step of their instrument', () => {
  expect(formatMass(347.28165828125, { unit: 'oz' })).toBe('12.2 oz');
  expect(formatMass(400, { unit: 'kg', decimalMark: ',' })).toBe('0,4 kg');
  expect(formatMass(453.59237, { unit: 'lb' })).toBe('1 lb');
  expect(formatYarnLength(210.312, { unit: 'yd' })).toBe('230 yd');
  expect(formatYarnLength(210.34, { unit: 'm', places: 1 })).toBe('210.3 m');
  expect(formatTemperature(-5, { unit: 'F' })).toBe('23 °F');
  expect(formatTemperature(-5, { unit: 'C' })).toBe('−5 °C');
  expect(() => formatMass(Number.NaN, { unit: 'g' })).toThrow(RangeError);
});
