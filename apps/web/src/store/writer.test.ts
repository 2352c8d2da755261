import fc from 'fast-check';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import * as Y from 'yjs';
import { type Outcome, type Standing, writer } from './writer.ts';

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

/** A document whose writes are answered by hand, in their order, as a database answers them. */
const desk = () => {
  const doc = new Y.Doc();
  const disk: Uint8Array[] = [];
  const asked: { update: Uint8Array; answer: (outcome: Outcome) => void }[] = [];
  const said: Standing[] = [];
  const writes = writer({
    write: (update) => new Promise((answer) => asked.push({ update, answer })),
    whole: () => Y.encodeStateAsUpdate(doc),
    tell: (standing) => said.push(standing),
  });
  doc.on('update', writes.add);
  return {
    doc,
    writes,
    said,
    type: (text: string) => doc.getMap('record').set('name', text),
    typed: () => doc.getMap('record').get('name'),
    waiting: () => asked.length,
    answer: async (outcome: Outcome): Promise<void> => {
      const first = asked.shift();
      if (first === undefined) throw new Error('nothing was asked');
      if (outcome === 'written') disk.push(first.update);
      first.answer(outcome);
      await Promise.resolve();
      await Promise.resolve();
    },
    /** What a restart finds. */
    kept: (field = 'name') => {
      const read = new Y.Doc();
      for (const update of disk) Y.applyUpdate(read, update);
      return read.getMap('record').get(field);
    },
    loseAll: () => disk.splice(0),
  };
};

test('V17: kept is said only when all that was typed is acknowledged', async () => {
  const { type, answer, said, kept, waiting } = desk();
  type('a');
  type('ab');
  type('abc');
  expect(said).toEqual(['waiting']);
  await answer('written');
  expect(kept()).toBe('a');
  expect(said).toEqual(['waiting']);
  // The two that came meanwhile go together.
  expect(waiting()).toBe(1);
  await answer('written');
  expect(kept()).toBe('abc');
  expect(said).toEqual(['waiting', 'written']);
});

test('V18: after a write that failed nothing typed before or later is lost', async () => {
  const { type, answer, said, kept, waiting } = desk();
  type('a');
  await answer('written');
  type('ab');
  type('abc');
  await answer('failed');
  expect(waiting()).toBe(0);
  await vi.advanceTimersByTimeAsync(100);
  type('abcd');
  await answer('written');
  await answer('written');
  expect(kept()).toBe('abcd');
  expect(said).toEqual(['waiting', 'written', 'waiting', 'written']);
});

test('V18: it tries again after growing pauses of at most four seconds, and at once with the next edit', async () => {
  const { type, answer, said, waiting } = desk();
  type('a');
  const pauses: number[] = [];
  for (let refused = 0; refused < 8; refused += 1) {
    await answer('failed');
    const from = Date.now();
    await vi.advanceTimersToNextTimerAsync();
    while (waiting() === 0) await vi.advanceTimersToNextTimerAsync();
    pauses.push(Date.now() - from);
  }
  expect(pauses).toEqual([100, 200, 400, 800, 1600, 3200, 4000, 4000]);
  expect(said).toEqual(['waiting', 'failing']);
  await answer('failed');
  type('ab');
  expect(waiting()).toBe(1);
  await answer('written');
  expect(said.at(-1)).toBe('written');
});

test('V18: typing on while it fails does not make the pauses longer', async () => {
  const { type, answer, waiting } = desk();
  for (const text of ['a', 'ab', 'abc', 'abcd', 'abcde', 'abcdef']) {
    type(text);
    await answer('failed');
  }
  expect(waiting()).toBe(0);
  await vi.advanceTimersByTimeAsync(100);
  expect(waiting()).toBe(1);
});

test('V18: no space is told at once, and taken back once there is some', async () => {
  const { type, answer, said, writes, waiting } = desk();
  type('a');
  await answer('full');
  expect(said).toEqual(['waiting', 'full']);
  writes.retry();
  expect(waiting()).toBe(1);
  await answer('written');
  expect(said).toEqual(['waiting', 'full', 'written']);
});

test('V18: no space stays what is told where later tries just fail', async () => {
  const { type, answer, said } = desk();
  type('a');
  await answer('full');
  await vi.advanceTimersByTimeAsync(100);
  await answer('failed');
  await vi.advanceTimersByTimeAsync(200);
  await answer('failed');
  expect(said).toEqual(['waiting', 'full']);
  await vi.advanceTimersByTimeAsync(400);
  await answer('written');
  expect(said).toEqual(['waiting', 'full', 'written']);
});

test('V17: a write that is never answered is told', async () => {
  const { type, said } = desk();
  type('a');
  await vi.advanceTimersByTimeAsync(3_999);
  expect(said).toEqual(['waiting']);
  await vi.advanceTimersByTimeAsync(1);
  expect(said).toEqual(['waiting', 'failing']);
});

test('V17: where the document was deleted elsewhere, what is typed is told as not kept, and not written', async () => {
  const { type, answer, said, waiting } = desk();
  type('a');
  await answer('gone');
  type('ab');
  await vi.advanceTimersByTimeAsync(60_000);
  expect(waiting()).toBe(0);
  expect(said).toEqual(['waiting', 'gone']);
});

test('V18: a page that ends writes all that is not acknowledged, though a write is under way', async () => {
  const { type, answer, kept, said, writes, waiting } = desk();
  type('a');
  type('ab');
  writes.flush();
  expect(waiting()).toBe(2);
  await answer('failed');
  await answer('written');
  expect(kept()).toBe('ab');
  // The whole is still to come.
  expect(said).toEqual(['waiting']);
  await vi.advanceTimersByTimeAsync(100);
  await answer('written');
  expect(said).toEqual(['waiting', 'written']);
});

test('V18: after a write that failed the whole is written: more may be lost than that write', async () => {
  const { doc, type, answer, kept, loseAll } = desk();
  doc.getMap('record').set('kind', 'vest');
  await answer('written');
  type('a');
  loseAll();
  await answer('failed');
  await vi.advanceTimersByTimeAsync(100);
  await answer('written');
  expect(kept('kind')).toBe('vest');
  expect(kept()).toBe('a');
});

test('V17: a database that may have lost what it had acknowledged gets the whole at once, and until then nothing is called kept', async () => {
  const { type, answer, writes, loseAll, kept, said } = desk();
  type('a');
  await answer('written');
  loseAll();
  writes.distrust();
  expect(said.at(-1)).toBe('waiting');
  await answer('written');
  expect(said.at(-1)).toBe('written');
  expect(kept()).toBe('a');
});

test('V17: a write under way when its database is closed does not count as all of it', async () => {
  const { type, answer, writes, loseAll, kept, said } = desk();
  type('a');
  await answer('written');
  type('ab');
  loseAll();
  writes.distrust();
  await answer('written');
  expect(said.at(-1)).toBe('waiting');
  await answer('written');
  expect(kept()).toBe('ab');
});

test('V18: whatever the device answers and whenever, what was said to be kept is there', async () => {
  const outcome = fc.constantFrom<Outcome>('written', 'failed', 'full');
  const step = fc.oneof(
    fc.constant('type' as const),
    fc.constant('flush' as const),
    fc.constant('retry' as const),
    fc.constant('pass' as const),
    fc.constant('lose' as const),
    outcome,
  );
  await fc.assert(
    fc.asyncProperty(fc.array(step, { maxLength: 60 }), async (steps) => {
      const { type, typed, answer, waiting, writes, loseAll, said, kept } = desk();
      let text = '';
      const check = (): void => {
        if (said.at(-1) === 'written') expect(kept()).toBe(typed());
      };
      for (const each of steps) {
        if (each === 'type') {
          text += 'x';
          type(text);
        } else if (each === 'flush') writes.flush();
        else if (each === 'retry') writes.retry();
        else if (each === 'pass') await vi.advanceTimersByTimeAsync(1000);
        else if (each === 'lose') {
          loseAll();
          writes.distrust();
        } else if (waiting() > 0) await answer(each);
        check();
      }
      // Once the device takes what it is given, all of it is there.
      for (let rounds = 0; rounds < 20 && (waiting() > 0 || rounds < 2); rounds += 1) {
        while (waiting() > 0) await answer('written');
        await vi.advanceTimersByTimeAsync(4000);
      }
      expect(kept()).toBe(typed());
      expect(said.at(-1) ?? 'written').toBe('written');
      writes.stop();
    }),
    { numRuns: 500 },
  );
});
