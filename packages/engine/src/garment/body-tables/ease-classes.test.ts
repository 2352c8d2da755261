import { expect, test } from 'vitest';
import { mm } from '../../units/index.ts';
import { EASE_CLASSES, easeClassesOf } from './ease-classes.ts';

const names = (edition: 'older' | 'newer', inches: number) =>
  easeClassesOf(edition, mm(inches * 25.4)).map((each) => each.name);

test('B5: ease is signed, and the editions disagree where they disagree', () => {
  expect(names('newer', -3)).toEqual(['very close']);
  expect(names('older', -3)).toEqual(['very close']);
  expect(names('newer', 3)).toEqual(['classic']);
  expect(names('older', 3)).toEqual(['standard']);
  expect(names('older', 1.5)).toEqual(['close']);
  expect(names('newer', 1.5)).toEqual([]);
  expect(names('newer', 4)).toEqual(['classic', 'loose']);
  expect(names('older', 12)).toEqual(['oversized']);
});

test('B5: classes loosen in order, have ids of their own, and are marked as remembered', () => {
  expect(new Set(EASE_CLASSES.map((each) => each.id)).size).toBe(EASE_CLASSES.length);
  for (const edition of ['older', 'newer'] as const) {
    const of = EASE_CLASSES.filter((each) => each.edition === edition);
    expect(of).toHaveLength(5);
    for (const [i, each] of of.slice(1).entries())
      expect(each.low!).toBeGreaterThanOrEqual(of[i]!.high!);
  }
  for (const each of EASE_CLASSES) expect(each.standing).toBe('from-memory');
});
