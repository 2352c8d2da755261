import { expect, it } from 'vitest';
import { sample } from '../malformed/sample.ts';
import type { Outcome } from '../schema/index.ts';
import { measuredOnGarment } from './measurements.ts';

const outcome = (
  id: string,
  more: Partial<Outcome>,
  ...tapes: readonly (readonly [state: 'dried' | 'rewashed', mm: number])[]
): Outcome => ({
  id,
  washes: 1,
  remark: '',
  measured: tapes.map(([state, mm], k) => ({
    id: `${id}${k}`,
    measurement: 'length',
    state,
    mm,
  })),
  ...more,
});

const asked = (outcomes: readonly Outcome[]) => {
  const record = { ...sample(), pieces: [], outcomes: [...outcomes] };
  return measuredOnGarment(record).map(({ id, state, value }) => [id, state, Number(value)]);
};

it('R99: of a place that was measured in a state again, the latest counts; other states stay', () => {
  expect(
    asked([
      outcome('third', { washes: 3 }, ['rewashed', 630]),
      outcome('first', { washes: 1 }, ['dried', 580]),
      outcome('second', { washes: 2 }, ['rewashed', 610]),
    ]),
  ).toEqual([
    ['third0', 'rewashed', 630],
    ['first0', 'dried', 580],
  ]);
});

it('R99: after as many washes the later day counts, and on one day all that was read', () => {
  expect(
    asked([
      outcome('spring', { on: '2031-04-01' }, ['dried', 590], ['dried', 592]),
      outcome('winter', { on: '2031-01-01' }, ['dried', 580]),
      outcome('undated', {}, ['dried', 570]),
    ]),
  ).toEqual([
    ['spring0', 'dried', 590],
    ['spring1', 'dried', 592],
  ]);
});
