import fc from 'fast-check';
import { expect, test } from 'vitest';
import { readSizeTable } from './read-size-table.ts';

const misprints = (text: string) => readSizeTable(text).misprints;

test('P6: inches and centimetres that are roundings of one length are no misprint', () => {
  expect(misprints('Chest: 34 (38, 42)" / 86 (96, 106) cm')).toEqual([]);
  expect(misprints('Chest: 34½ (38¼, 42)" / 87.5 (97, 106.5) cm')).toEqual([]);
  const sizes = fc.array(fc.integer({ min: 200, max: 1500 }), { minLength: 2, maxLength: 9 });
  fc.assert(
    fc.property(
      sizes,
      fc.constantFrom(1, 2, 4),
      fc.constantFrom(1, 2),
      (lengths, parts, halves) => {
        const inches = lengths.map((mm) => Math.round((mm / 25.4) * parts) / parts);
        const cm = lengths.map((mm) => Math.round((mm / 10) * halves) / halves);
        const list = ([first, ...rest]: number[]) => `${first} (${rest.join(', ')})`;
        expect(misprints(`Chest: ${list(inches)} in / ${list(cm)} cm`)).toEqual([]);
      },
    ),
  );
});

test('P6: turned digits in centimetres are flagged, and the neighbours name them', () => {
  const [found, ...more] = misprints('Sizes: S (M, L)\nChest: 34 (38, 42)" / 86 (69, 106) cm');
  expect(more).toEqual([]);
  expect(found).toMatchObject({ row: 0, size: 1, suspect: 'cm' });
  expect(found?.differenceMm).toBeCloseTo(965.2 - 690, 9);
  // Whole inches and whole centimetres: 25.4 / 2 + 10 / 2.
  expect(found?.toleranceMm).toBeCloseTo(17.7, 9);
  expect(found?.sentence).toBe(
    'Chest, size M: 38 in and 69 cm are not the same length. The sizes beside it speak against 69 cm.',
  );
});

test('P6: a wrong number of inches is named too, at the end of a row as well', () => {
  expect(misprints('Chest: 34 (83, 42, 46)" / 86 (96, 106, 117) cm')).toMatchObject([
    { size: 1, suspect: 'in' },
  ]);
  expect(misprints('Chest: 34 (38, 42, 64)" / 86 (96, 106, 117) cm')).toMatchObject([
    { size: 3, suspect: 'in' },
  ]);
});

test('P6: where the neighbours do not tell, nobody is accused', () => {
  expect(misprints('Chest: 34 (38) in / 86 (69) cm')).toMatchObject([
    {
      size: 1,
      suspect: null,
      sentence:
        'Chest, size 2: 38 in and 69 cm are not the same length. The other sizes do not tell which one is wrong.',
    },
  ]);
});

test('P6: finer print is checked more finely', () => {
  // 20½ in is 52.07 cm: 53 is 9.3 mm off, less than whole inches explain but more than halves do not.
  expect(misprints('Length: 20 (21, 22) in / 51 (53, 57) cm')).toEqual([]);
  expect(misprints('Length: 20¼ (21, 22) in / 51.5 (53.5, 57) cm')).toMatchObject([{ size: 2 }]);
});

test('P6: nothing is corrected', () => {
  const { rows } = readSizeTable('Chest: 34 (38, 42)" / 86 (69, 106) cm', { unit: 'cm' });
  expect(rows[0]?.cells.map(({ mm }) => mm)).toEqual([860, 690, 1060]);
});
