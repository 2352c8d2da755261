import { expect, it } from 'vitest';
import { learnedNotices } from './learned-notices.ts';

const doubt = { mean: 0, sd: 0.6 };
const changes = [{ what: 'stiffness', before: doubt, after: doubt, text: '' }] as const;
const codes = (settled: boolean) =>
  learnedNotices([], [], { values: [], slopes: [], taken: [], changes, settled }).map(
    ({ code }) => code,
  );

it('B16: readings that settled on no answer are told as a guess, and only those', () => {
  expect(codes(false)).toContain('readings-not-settled');
  expect(codes(true)).not.toContain('readings-not-settled');
});
