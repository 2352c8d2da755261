import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { citationOf, REFERENCES, type ReferenceKey } from './references.ts';

const root = join(import.meta.dirname, '..');
const keys = Object.keys(REFERENCES) as ReferenceKey[];

/** Tables, formulas and their checks; a work may be cited for a check alone. */
const sources = readdirSync(root, { recursive: true, encoding: 'utf8' })
  .filter((name) => name.endsWith('.ts') && !/references(\.test)?\.ts$/.test(name))
  .map((name) => readFileSync(join(root, name), 'utf8'));

test('T1: every reference is used by some table, formula or check', () => {
  const unused = keys.filter((key) => !sources.some((text) => text.includes(`'${key}'`)));
  expect(unused).toEqual([]);
});

test('T1: every quoted source key exists', () => {
  const quoted = sources.flatMap((text) =>
    [...text.matchAll(/source: '([^']+)'/g)].map((hit) => hit[1]),
  );
  expect(quoted.length).toBeGreaterThan(0);
  expect(quoted.filter((key) => !keys.includes(key as ReferenceKey))).toEqual([]);
});

test('T1: a citation names authors, year and title', () => {
  expect(citationOf('munden-1959')).toMatch(/^Munden, D\. L\. \(1959\) The Geometry/);
  for (const key of keys) expect(citationOf(key)).toMatch(/\(\d{4}\) \S/);
});

test('T1: keys are unique works, in alphabetical order', () => {
  expect([...keys].sort()).toEqual(keys);
  expect(new Set(keys.map(citationOf)).size).toBe(keys.length);
});
