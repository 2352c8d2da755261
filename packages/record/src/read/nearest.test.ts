import { describe, expect, it } from 'vitest';
import { nearest } from './nearest.ts';

describe('nearest', () => {
  it.each([
    ['needelMm', ['needleMm', 'name'], 'needleMm'],
    ['CHEST', ['chest', 'crest'], 'chest'],
    ['x', ['id', 'name'], null],
    ['colour', ['count', 'id'], null],
    ['id', [], null],
  ])('R46: %s among %j is %s', (word, among, meant) => {
    expect(nearest(word, among)).toBe(meant);
  });
});
