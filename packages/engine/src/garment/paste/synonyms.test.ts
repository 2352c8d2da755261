import { expect, test } from 'vitest';
import { LANDMARKS } from '../landmarks.ts';
import { directionFromWords, measuresWhat, spanFromWords, splitNameUnit } from './names.ts';
import { guessLandmark } from './synonyms.ts';

test('P9: every landmark is found by its own name, American and British', () => {
  const found = LANDMARKS.map(({ id, name }) => [
    id,
    guessLandmark(name.us, KIND[id]),
    guessLandmark(name.uk, KIND[id]),
  ]);
  expect(found).toEqual(LANDMARKS.map(({ id }) => [id, id, id]));
});

const KIND: Readonly<Record<string, 'blanket' | 'shawl-triangle'>> = {
  width: 'blanket',
  length: 'blanket',
  depth: 'shawl-triangle',
};

test.each([
  ['Finished bust', undefined, 'chest'],
  ['Bicep circumference', undefined, 'upper-arm'],
  ['Sleeve seam', undefined, 'sleeve-length'],
  ['Length from shoulder', undefined, 'body-length'],
  ['Length to underarm', undefined, 'underarm-length'],
  ['Side seam', undefined, 'underarm-length'],
  ['Welt', undefined, 'rib-depth'],
  ['Hem ribbing depth', undefined, 'rib-depth'],
  ['Wrist', undefined, 'cuff'],
  ['Front neck drop', undefined, 'front-neck-depth'],
  ['Width across back', undefined, 'cross-back'],
  ['Length', 'vest', 'body-length'],
  ['Length', 'sock', 'foot-length'],
  ['Circumference', 'hat', 'brim'],
  ['Wingspan', 'shawl-half-round', 'span'],
  ['Pocket', undefined, 'custom'],
  ['Length', undefined, 'custom'],
] as const)('P9: %j on %s is taken for %s', (name, kind, landmark) => {
  expect(guessLandmark(name, kind)).toBe(landmark);
});

test('P10: flat or around is taken from words only, never from a number or a custom', () => {
  expect(spanFromWords('Chest')).toBeUndefined();
  expect(spanFromWords('Chest width')).toBeUndefined();
  expect(spanFromWords('Chest, laid flat')).toBe('flat');
  expect(spanFromWords('½ chest')).toBe('flat');
  expect(spanFromWords('Chest (pit to pit)')).toBe('flat');
  expect(spanFromWords('Chest circumference')).toBe('around');
  expect(spanFromWords('Chest circumference, measured flat')).toBeUndefined();
});

test('P10: the direction comes from the landmark, else from a word, else it is left open', () => {
  expect(directionFromWords('Yoke', 'yoke-depth')).toBe('length');
  expect(directionFromWords('Pocket width', 'custom')).toBe('width');
  expect(directionFromWords('Pocket height', 'custom')).toBe('length');
  expect(directionFromWords('Pocket', 'custom')).toBeNull();
});

test('P4: what measures the body is told from what measures the garment', () => {
  expect(measuresWhat('To fit bust')).toBe('body');
  expect(measuresWhat('Body chest')).toBe('body');
  expect(measuresWhat('Body length')).toBe('garment');
  expect(measuresWhat('Chest')).toBe('garment');
});

test('P3: a unit in the name is parted from it', () => {
  expect(splitNameUnit('Chest (cm)')).toEqual({ name: 'Chest', unit: 'cm' });
  expect(splitNameUnit('Chest, in inches')).toEqual({ name: 'Chest', unit: 'in' });
  expect(splitNameUnit('Chest [mm]')).toEqual({ name: 'Chest', unit: 'mm' });
  expect(splitNameUnit('Length in back')).toEqual({ name: 'Length in back', unit: null });
});
