import { expect, test } from 'vitest';
import { fileName } from './file-name.ts';

test.each([
  ['Ferry socks', 'ferry-socks-drying.ics'],
  ['  Ärmel & Bund! ', 'ärmel-bund-drying.ics'],
  ['', 'garment-drying.ics'],
  ['../..', 'garment-drying.ics'],
])('PC6: a file for %j is called %s', (name, file) => {
  expect(fileName(name, 'drying.ics')).toBe(file);
});
