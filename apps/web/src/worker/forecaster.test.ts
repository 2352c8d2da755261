import type { GarmentRecord } from '@dryflat/record';
import { expect, test, vi } from 'vitest';
import { forecaster, type WorkerLike } from './forecaster.ts';
import { isLongWork, stopLongWork } from './long-work.ts';
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

test('V23: a calculation that a newer question finds at work for long is ended with its worker', () => {
  vi.useFakeTimers();
  const { made, told, asks } = bench();
  asks.ask(record);
  vi.advanceTimersByTime(300);
  asks.ask(record);
  expect(made).toHaveLength(1);
  vi.advanceTimersByTime(300);
  asks.ask(record);
  expect(made.map(({ ended }) => ended)).toEqual([true, false]);
  made[0]?.onmessage?.(answer(3));
  made[0]?.onerror?.({ message: 'ended' } as ErrorEvent);
  made[1]?.onmessage?.(answer(3));
  expect(told.map(({ kind }) => kind)).toEqual(['faults']);
  vi.useRealTimers();
});

test('V23: what has been at work for long can be stopped, says so, and begins again when asked', () => {
  vi.useFakeTimers();
  const { made, told, asks } = bench();
  asks.ask(record);
  vi.advanceTimersByTime(3_900);
  expect(isLongWork()).toBe(false);
  vi.advanceTimersByTime(200);
  expect(isLongWork()).toBe(true);
  stopLongWork();
  expect(isLongWork()).toBe(false);
  expect(made[0]?.ended).toBe(true);
  expect(told).toMatchObject([{ kind: 'broken', turn: 1 }]);
  asks.ask(record);
  made[1]?.onmessage?.(answer(2));
  expect(told.at(-1)).toMatchObject({ kind: 'faults', turn: 2 });
  vi.advanceTimersByTime(10_000);
  expect(isLongWork()).toBe(false);
  vi.useRealTimers();
});
