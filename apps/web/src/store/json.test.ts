import { expect, test } from 'vitest';
import { sameJson, shareStructure } from './json.ts';

test('V5: parts that did not change stay the same object', () => {
  const before = { a: { x: 1 }, b: [{ y: 1 }, { y: 2 }] };
  const after = shareStructure(before, { a: { x: 1 }, b: [{ y: 1 }, { y: 3 }] });
  expect(after.a).toBe(before.a);
  expect(after.b[0]).toBe(before.b[0]);
  expect(after.b[1]).toEqual({ y: 3 });
});

test('V6: a key left undefined equals a key left out', () => {
  expect(sameJson({ a: 1, b: undefined }, { a: 1 })).toBe(true);
  expect(sameJson({ a: 1, b: null }, { a: 1 })).toBe(false);
  expect(sameJson({ a: undefined, b: 1 }, { a: 1, c: undefined })).toBe(false);
});
