import { expect, test } from 'vitest';
import { fillLengths, lengthToken } from './fill-lengths.ts';
import { formatLength } from './format-length.ts';

test('U9: each length token of a sentence is printed, the rest stays', () => {
  const sentence = `The chest will be ${lengthToken(339.725)} around, {mm:-50.8} against the body; {mm:x} stays.`;
  expect(fillLengths(sentence, (mm) => formatLength(mm, { unit: 'in' }))).toBe(
    'The chest will be 13⅜ in around, −2 in against the body; {mm:x} stays.',
  );
  expect(fillLengths(`${lengthToken(1e-7)}`, (mm) => `${mm}`)).toBe('1e-7');
  expect(() => lengthToken(Number.NaN)).toThrow(RangeError);
});
