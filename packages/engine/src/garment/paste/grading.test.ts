import { expect, test } from 'vitest';
import { viewOf } from './grading.ts';

const all = () => true;

test('P6: a value fits between the sizes beside it', () => {
  expect(viewOf([860, 960, 1060], 1, all)).toEqual({ fits: true, off: 0 });
  expect(viewOf([860, 690, 1060], 1, all)).toEqual({ fits: false, off: 270 });
  expect(viewOf([1060, 960, 860], 1, all)).toEqual({ fits: true, off: 0 });
});

test('P6: at an end it may differ by up to twice the last step', () => {
  expect(viewOf([860, 960, 1060], 2, all)).toEqual({ fits: true, off: 0 });
  expect(viewOf([860, 960, 1160], 2, all)).toEqual({ fits: true, off: 100 });
  expect(viewOf([860, 960, 1170], 2, all)).toEqual({ fits: false, off: 110 });
  expect(viewOf([680, 960, 1060], 0, all)).toEqual({ fits: false, off: 180 });
});

test('P6: sizes that are doubtful themselves are passed over, and too few tell nothing', () => {
  expect(viewOf([860, 690, 1060, 1160], 2, (i) => i !== 1)).toEqual({ fits: true, off: 0 });
  expect(viewOf([860, null, 1060, 1160], 2, all)?.fits).toBe(true);
  expect(viewOf([860, 960], 1, all)).toBeNull();
  expect(viewOf([860, null, 1060], 1, all)).toBeNull();
});
