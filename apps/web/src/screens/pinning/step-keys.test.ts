import { expect, test } from 'vitest';
import { stepOfKey } from './step-keys.ts';

test('PN9: keys and clickers go on and back, all others do nothing', () => {
  expect([' ', 'Enter', 'ArrowRight', 'PageDown'].map(stepOfKey)).toEqual([1, 1, 1, 1]);
  expect(['ArrowLeft', 'PageUp'].map(stepOfKey)).toEqual([-1, -1]);
  expect(['a', 'Tab', 'Escape', 'ArrowUp', 'ArrowDown'].map(stepOfKey)).toEqual(
    new Array(5).fill(null),
  );
});
