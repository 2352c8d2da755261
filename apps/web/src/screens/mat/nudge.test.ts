import { expect, test } from 'vitest';
import { nudgeOf } from './nudge.ts';

test('M6: arrows move by a mark of the tape, with shift by a coarse one, in the unit that is shown', () => {
  expect(nudgeOf('ArrowRight', false, 'cm')).toEqual({ dx: 1, dy: 0 });
  expect(nudgeOf('ArrowUp', true, 'cm')).toEqual({ dx: 0, dy: -10 });
  expect(nudgeOf('ArrowDown', false, 'in')).toEqual({ dx: 0, dy: 3.175 });
  expect(nudgeOf('ArrowLeft', true, 'in')).toEqual({ dx: -12.7, dy: 0 });
  expect(nudgeOf('Enter', false, 'cm')).toBeNull();
});
