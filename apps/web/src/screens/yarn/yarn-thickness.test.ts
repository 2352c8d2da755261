import type { Yarn } from '@dryflat/record';
import { expect, test } from 'vitest';
import { classByMetres, metresByLots, sameLength } from './yarn-thickness.ts';

const yarn = (part: Partial<Yarn>): Yarn => ({
  id: 'y',
  name: '',
  fibres: [],
  treatment: 'unknown',
  lots: [],
  ...part,
});

test('P8: a skein of 50 g with 125 m makes 250 m in 100 g', () => {
  const lots = [
    { dyeLot: 'a', skeins: 2 },
    { dyeLot: 'b', skeins: 1, gramsEach: 50, metresEach: 125 },
  ];
  expect(metresByLots(yarn({ lots }))).toBe(250);
  expect(metresByLots(yarn({ lots: lots.slice(0, 1) }))).toBeNull();
});

test('P8: a length inside one printed class speaks for it, between two for none', () => {
  // The conversion sheet prints class 3 as 210 to 250 m in 100 g, class 4 as 130 to 200.
  expect(classByMetres(yarn({ metresPer100g: 230 }))).toBe(3);
  expect(classByMetres(yarn({ metresPer100g: 205 }))).toBeNull();
  expect(classByMetres(yarn({}))).toBeNull();
});

test('P8: lengths that differ by a metre in a hundred are the same', () => {
  expect(sameLength(250, 252)).toBe(true);
  expect(sameLength(250, 260)).toBe(false);
});
