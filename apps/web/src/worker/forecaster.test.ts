import type { GarmentRecord } from '@dryflat/record';
import { expect, test } from 'vitest';
import { forecaster, type WorkerLike } from './forecaster.ts';
import type { Answer, Ask } from './protocol.ts';

const record = { id: 'g' } as GarmentRecord;

const bench = () => {
  const made: (WorkerLike & { asked: Ask[]; ended: boolean })[] = [];
  const told: Answer[] = [];
  const make = (): WorkerLike => {
    const worker = {
      asked: [] as Ask[],
      ended: false,
      postMessage: (ask: Ask) => void worker.asked.push(ask),
      onmessage: null as WorkerLike['onmessage'],
      onerror: null as WorkerLike['onerror'],
      terminate: () => {
        worker.ended = true;
      },
    };
    made.push(worker);
    return worker;
  };
  return { made, told, asks: forecaster(make, (answer) => told.push(answer)) };
};

const answer = (turn: number) =>
  ({ data: { kind: 'faults', turn, faults: [] } }) as unknown as MessageEvent<Answer>;

test('V15: the answer to an older question is dropped', () => {
  const { made, told, asks } = bench();
  asks.ask(record);
  asks.ask(record);
  made[0]?.onmessage?.(answer(1));
  expect(told).toEqual([]);
  made[0]?.onmessage?.(answer(2));
  expect(told.map((each) => each.turn)).toEqual([2]);
});

test('V16: a worker that dies is told and replaced at the next question', () => {
  const { made, told, asks } = bench();
  asks.ask(record);
  made[0]?.onerror?.({ message: '' } as ErrorEvent);
  expect(told).toEqual([{ kind: 'broken', turn: 1, message: 'the forecast could not be loaded' }]);
  expect(made[0]?.ended).toBe(true);
  asks.ask(record);
  expect(made).toHaveLength(2);
  expect(made[1]?.asked[0]?.turn).toBe(2);
});
