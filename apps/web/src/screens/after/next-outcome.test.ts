import type { Outcome } from '@dryflat/record';
import { expect, test } from 'vitest';
import { parseHash } from '../../shell/hash.ts';
import { today } from '../result/today.ts';
import { afterHash, outcomeFor, stateAsked } from './next-outcome.ts';

const outcome = (on: string, washes: number, taken = 1): Outcome => ({
  id: on,
  on,
  washes,
  remark: '',
  measured: Array.from({ length: taken }, (_, k) => ({
    id: `${k}`,
    measurement: 'chest',
    state: 'dried',
    mm: 500,
  })),
});

test('DR9: a first day is opened with one wash', () => {
  expect(outcomeFor([], 'dried')).toMatchObject([{ on: today(), washes: 1, measured: [] }]);
});

test('DR9: today’s day, or one that holds nothing, is filled in rather than opened twice', () => {
  const empty = [outcome('2031-01-01', 1, 0)];
  expect(outcomeFor(empty, 'worn')).toEqual(empty);
  const now = [outcome(today(), 1)];
  expect(outcomeFor(now, 'worn')).toEqual(now);
});

test('DR9: after the next wash it had one wash more', () => {
  const before = [outcome('2031-01-01', 2)];
  expect(outcomeFor(before, 'rewashed').at(-1)?.washes).toBe(3);
  expect(outcomeFor(before, 'worn').at(-1)?.washes).toBe(2);
});

test('DR9: an address with a state leads to the outcomes, and says the state', () => {
  const hash = afterHash('a/b', 'worn');
  expect(parseHash(hash)).toEqual({ at: 'garment', id: 'a/b', place: 'after' });
  expect(stateAsked(hash)).toBe('worn');
  expect(stateAsked('#/garment/x/after')).toBeNull();
});
