import { expect, test } from 'vitest';
import { dueOf, type Reminder, readReminders, withReminders } from './reminders.ts';

const MINUTE = 60_000;
const reminder = (of: string, atMs: number): Reminder => ({
  of,
  atMs,
  title: 'Weigh it',
  body: '',
  hash: '#/',
});

test('RM1: what is due is told once; what was due long ago was missed', () => {
  const all = [0, 55, 60, 61].map((at) => reminder('a', at * MINUTE));
  const { due, missed, ahead } = dueOf(all, 60 * MINUTE);
  expect([missed, due, ahead].map((each) => each.map(({ atMs }) => atMs / MINUTE))).toEqual([
    [0],
    [55, 60],
    [61],
  ]);
});

test('RM2: reminders of one drying are replaced together, and leave others alone', () => {
  const all = [reminder('a', 1), reminder('b', 2), reminder('a', 3)];
  expect(withReminders(all, 'a', [reminder('a', 9)])).toEqual([reminder('b', 2), reminder('a', 9)]);
  expect(withReminders(all, 'a', [])).toEqual([reminder('b', 2)]);
});

test('RM3: they are read back as they were kept, and nonsense is nothing', () => {
  const all = [reminder('a', 1)];
  expect(readReminders(JSON.stringify(all))).toEqual(all);
  for (const note of [null, '', '{', '{}', '[1, null, {"of":"a"}]'])
    expect(readReminders(note)).toEqual([]);
});
