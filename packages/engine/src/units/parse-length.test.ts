import { expect, test } from 'vitest';
import { parseLength } from './parse-length.ts';

const parse = (text: string, unit?: 'in' | 'cm' | 'mm', signed = false) => {
  const result = parseLength(text, { field: 'length', unit, signed });
  return result.ok ? result.value : result.faults;
};

test.each([
  ['13 3/8 in', 339.725, 'in', 3.175],
  ['13⅜"', 339.725, 'in', 3.175],
  ['13⅜”', 339.725, 'in', 3.175],
  ['13 ⅜ ″', 339.725, 'in', 3.175],
  ['13.375 in', 339.725, 'in', 0.0254],
  ['13-3/8 inches', 339.725, 'in', 3.175],
  ['13 and 3/8 inches', 339.725, 'in', 3.175],
  ['13³⁄₈ in.', 339.725, 'in', 3.175],
  ['１３ ３／８ ｉｎ', 339.725, 'in', 3.175],
  ['½"', 12.7, 'in', 12.7],
  ['.5in', 12.7, 'in', 2.54],
  ['34 cm', 340, 'cm', 10],
  ['34,5cm', 345, 'cm', 1],
  ['34.5\u00a0cm', 345, 'cm', 1],
  ['34,50 CM', 345, 'cm', 0.1],
  ['420 mm', 420, 'mm', 1],
  ['3,25mm', 3.25, 'mm', 0.01],
  ['1.2 m', 1200, 'cm', 100],
  ['1 m 20', 1200, 'cm', 10],
  ['1 m 20 cm', 1200, 'cm', 10],
  ['1 ft 2 in', 355.6, 'in', 25.4],
  ['1 ft, 2 in', 355.6, 'in', 25.4],
  ['1\' 2"', 355.6, 'in', 25.4],
  ["1' 2''", 355.6, 'in', 25.4],
  ['1′2½″', 368.3, 'in', 12.7],
  ['1’ 2', 355.6, 'in', 25.4],
  ['2 feet', 609.6, 'in', 304.8],
  ['1 yd', 914.4, 'in', 914.4],
  ['0,125 in', 3.175, 'in', 0.0254],
  ['1234,567 mm', 1234.567, 'mm', 0.001],
])('U2: %j is %d mm, printed in %s, written to %d mm', (text, value, unit, resolution) => {
  expect(parse(text)).toEqual({ value, unit, resolution });
});

test('U3: a bare number takes the unit of the field', () => {
  expect(parse('12,5', 'cm')).toEqual({ value: 125, unit: 'cm', resolution: 1 });
  expect(parse('12,5', 'in')).toEqual({ value: 317.5, unit: 'in', resolution: 2.54 });
  expect(parse('12,5', 'mm')).toEqual({ value: 12.5, unit: 'mm', resolution: 0.1 });
  expect(parse('12 cm', 'in')).toEqual({ value: 120, unit: 'cm', resolution: 10 });
});

test('U4: a sign is read where the field allows one', () => {
  expect(parse('-2 in', undefined, true)).toEqual({ value: -50.8, unit: 'in', resolution: 25.4 });
  expect(parse('−5 cm', undefined, true)).toEqual({ value: -50, unit: 'cm', resolution: 10 });
  expect(parse('+4', 'cm', true)).toEqual({ value: 40, unit: 'cm', resolution: 10 });
  expect(parse('- 1½ in', undefined, true)).toEqual({ value: -38.1, unit: 'in', resolution: 12.7 });
  expect(parse('0', 'cm', true)).toEqual({ value: 0, unit: 'cm', resolution: 10 });
});
