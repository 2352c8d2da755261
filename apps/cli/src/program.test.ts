import { expect, it } from 'vitest';
import { runProgram } from './program.ts';
import type { Surroundings } from './surroundings.ts';

const surroundings: Surroundings = {
  read: () => Promise.reject(new TypeError('a bug')),
  write: () => Promise.reject(new TypeError('another bug')),
  font: () => Promise.reject(new TypeError('a third bug')),
  random: () => 0,
  today: () => '2031-01-13',
  colours: false,
};

it('C8: an error that is not one of the system is thrown on, not taken for bad input', async () => {
  await expect(runProgram(['check', 'one.json'], surroundings)).rejects.toThrow('a bug');
  await expect(runProgram(['new', '-o', 'one.json'], surroundings)).rejects.toThrow('another bug');
});

it('C2: a new record is the same wherever chance is the same', async () => {
  const one = await runProgram(['new', '--kind', 'sock'], surroundings);
  expect(await runProgram(['new', '--kind', 'sock'], surroundings)).toEqual(one);
  const other = await runProgram(['new', '--kind', 'sock'], { ...surroundings, random: () => 0.5 });
  expect(other.out).not.toBe(one.out);
});
