import type { GarmentRecord } from '@dryflat/record';
import { expect, test } from 'vitest';
import { holder } from './holder.ts';
import type { MatWorker } from './mat-worker.ts';
import { planner } from './planner.ts';
import type { MatAsk, MatChoices, MatTold, OpenAsk, Places } from './protocol.ts';

const record = { id: 'g' } as GarmentRecord;
const choices = { piece: null } as MatChoices;

const bench = () => {
  const made: (MatWorker & { asked: MatAsk[]; ended: boolean })[] = [];
  const told: MatTold[] = [];
  const make = (): MatWorker => {
    const worker = {
      asked: [] as MatAsk[],
      ended: false,
      postMessage: (ask: MatAsk) => void worker.asked.push(ask),
      onmessage: null as MatWorker['onmessage'],
      onerror: null as MatWorker['onerror'],
      terminate: () => {
        worker.ended = true;
      },
    };
    made.push(worker);
    return worker;
  };
  const say = (at: number, data: unknown) =>
    made[at]?.onmessage?.({ data } as MessageEvent<MatTold>);
  return { made, told, make, say, tell: (each: MatTold) => void told.push(each) };
};

test('MV1: a newer question ends the plan under way; what the old worker still says is not heard', () => {
  const { made, told, make, say, tell } = bench();
  const plans = planner(make, tell);
  plans.ask(record, choices);
  say(0, { kind: 'progress', turn: 1, done: 0.5 });
  plans.ask(record, choices);
  expect(made.map(({ ended }) => ended)).toEqual([true, false]);
  say(0, { kind: 'plan', turn: 2 });
  expect(told).toEqual([{ kind: 'progress', turn: 1, done: 0.5 }]);
  say(1, { kind: 'plan', turn: 2 });
  expect(told).toHaveLength(2);
});

test('MV1: a worker that has answered is kept for the next question', () => {
  const { made, make, say, tell } = bench();
  const plans = planner(make, tell);
  plans.ask(record, choices);
  say(0, { kind: 'plan', turn: 1 });
  plans.ask(record, choices);
  expect(made).toHaveLength(1);
  expect(made[0]?.asked).toHaveLength(2);
});

test('MV2: cancel ends the worker at once, and a question after it is answered', () => {
  const { made, told, make, say, tell } = bench();
  const plans = planner(make, tell);
  plans.ask(record, choices);
  plans.stop();
  expect(made[0]?.ended).toBe(true);
  say(0, { kind: 'plan', turn: 1 });
  expect(told).toEqual([]);
  plans.ask(record, choices);
  say(1, { kind: 'plan', turn: 2 });
  expect(told).toHaveLength(1);
});

test('MV3: while pins move one question is under way, and only the last of the others follows', () => {
  const { made, make, say, tell } = bench();
  const hand = holder(make, tell);
  hand.open({} as OpenAsk);
  const places = [1, 2, 3].map((x): Places => [[x, 0]]);
  for (const each of places) hand.move(each);
  expect(made[0]?.asked).toHaveLength(1);
  say(0, { kind: 'open', turn: 1 });
  expect(made[0]?.asked.slice(1)).toEqual([{ kind: 'move', turn: 2, places: [[3, 0]] }]);
  hand.move(places[0]!);
  say(0, { kind: 'lying', turn: 2, lying: { stopped: false } });
  expect(made[0]?.asked.at(-1)).toEqual({ kind: 'move', turn: 3, places: [[1, 0]] });
});

test('MV3: what is said of a piece that was put away is not heard', () => {
  const { told, make, say, tell } = bench();
  const hand = holder(make, tell);
  hand.open({} as OpenAsk);
  hand.open({} as OpenAsk);
  say(0, { kind: 'open', turn: 1 });
  expect(told).toEqual([]);
  say(0, { kind: 'open', turn: 2 });
  expect(told).toEqual([{ kind: 'open', turn: 2 }]);
});

test('MV2: a worker that dies is told, and replaced at the next question', () => {
  const { made, told, make, tell } = bench();
  const plans = planner(make, tell);
  plans.ask(record, choices);
  made[0]?.onerror?.({ message: '' } as ErrorEvent);
  expect(told).toEqual([
    { kind: 'broken', turn: 1, message: 'the calculation could not be loaded' },
  ]);
  plans.ask(record, choices);
  expect(made).toHaveLength(2);
});

test('MV8: what was told in part is asked for again, unless the pins have moved since', () => {
  const { made, make, say, tell } = bench();
  const hand = holder(make, tell);
  hand.open({} as OpenAsk);
  say(0, { kind: 'open', turn: 1 });
  hand.move([[1, 0]]);
  say(0, { kind: 'lying', turn: 2, lying: { stopped: true } });
  expect(made[0]?.asked.at(-1)).toEqual({ kind: 'move', turn: 3, places: [[1, 0]] });
  hand.move([[2, 0]]);
  say(0, { kind: 'lying', turn: 3, lying: { stopped: true } });
  expect(made[0]?.asked.at(-1)).toEqual({ kind: 'move', turn: 4, places: [[2, 0]] });
  say(0, { kind: 'lying', turn: 4, lying: { stopped: false } });
  expect(made[0]?.asked).toHaveLength(4);
});
