import { expect, test } from 'vitest';
import { clockMarks, type MarksAsked } from './marks.ts';

const around = (p50: number) => ({ p5: p50 - 1, p50, p95: p50 + 2 });
const ASKED: MarksAsked = {
  thirdGone: around(3),
  halfGone: around(5),
  dryHours: around(16),
  pinned: false,
  now: 0,
  isDry: false,
};
const at = (change: Partial<MarksAsked>) =>
  clockMarks({ ...ASKED, ...change }).map(({ id, hours }) => [id, hours]);

test('D16: marks stand at a third, a half, the early end and the middle of dry', () => {
  expect(at({})).toEqual([
    ['first-look', 3],
    ['turn', 5],
    ['may-be-dry', 15],
    ['dry', 16],
  ]);
});

test('D16: what has passed is left out, and a weighing stands for the first look', () => {
  expect(at({ now: 2 }).map(([id]) => id)).toEqual(['turn', 'may-be-dry', 'dry']);
  expect(at({ now: 15.2 })).toEqual([
    ['look-again', 15.7],
    ['dry', 16],
  ]);
});

test('D16: past every mark there is a look in half an hour; dry has none', () => {
  expect(at({ now: 20 })).toEqual([['look-again', 20.5]]);
  expect(at({ now: 20, isDry: true })).toEqual([]);
});
