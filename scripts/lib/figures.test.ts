import { describe, expect, it } from 'vitest';
import { goalText, holds, linesOf, withTopic } from './figures.mjs';

const line = (topic: string, name: string, value: number) => ({
  topic,
  name,
  value,
  unit: 's',
  goal: '≤ 5',
  holds: value <= 5,
});

describe('a goal', () => {
  it.each([
    [{ most: 5 }, 5, true, '≤ 5'],
    [{ most: 5 }, 5.1, false, '≤ 5'],
    [{ least: 2 }, 2, true, '≥ 2'],
    [{ least: 2 }, 1.9, false, '≥ 2'],
    [{ exactly: 0 }, 0, true, '0'],
    [{ exactly: 0 }, 1, false, '0'],
    [{ most: 5 }, Number.NaN, false, '≤ 5'],
  ])('%o of %d: %s', (goal, value, verdict, text) => {
    expect(holds(value, goal)).toBe(verdict);
    expect(goalText(goal)).toBe(text);
  });
});

async function* measured(breaks: boolean) {
  yield { name: 'time', value: 4.00001, unit: 's', goal: { most: 5 } };
  if (breaks) throw new Error('no such garment');
}

/** What a run of two files comes to, the first of which may throw. */
const ran = async (breaks: boolean) => {
  const told: string[] = [];
  const threw: string[] = [];
  const lines = await linesOf(
    'mats',
    ['a', 'b'],
    async (file) => measured(breaks && file === 'a'),
    {
      tell: ({ name, value }) => told.push(`${name} ${value}`),
      threw: (file, error) => threw.push(`${file}: ${(error as Error).message}`),
    },
  );
  return { lines, told, threw };
};

describe('a topic', () => {
  it('has every figure of its files', async () => {
    const { lines, told, threw } = await ran(false);
    expect(lines).toEqual([line('mats', 'time', 4), line('mats', 'time', 4)]);
    expect([told, threw]).toEqual([['time 4', 'time 4'], []]);
  });

  it('of which a file threw keeps its old section; the rest is told all the same', async () => {
    const { lines, told, threw } = await ran(true);
    expect([told, threw]).toEqual([['time 4', 'time 4'], ['a: no such garment']]);
    const page = withTopic('# Figures\n', 'mats', [line('mats', 'time', 6)]);
    expect(withTopic(page, 'mats', lines)).toBe(page);
  });
});

describe('the page', () => {
  it('takes a topic anew and keeps the others, in the order of their names', () => {
    const first = withTopic('# Figures\n\nHead.\n', 'mats', [line('mats', 'time', 6)]);
    const second = withTopic(first, 'breaks', [line('breaks', 'crashes', 0)]);
    const third = withTopic(second, 'mats', [line('mats', 'time', 4)]);
    expect(third).toBe(
      [
        '# Figures',
        '',
        'Head.',
        '',
        '## breaks',
        '',
        '| figure | measured | goal | holds |',
        '|---|---|---|---|',
        '| crashes | 0 s | ≤ 5 | yes |',
        '',
        '## mats',
        '',
        '| figure | measured | goal | holds |',
        '|---|---|---|---|',
        '| time | 4 s | ≤ 5 | yes |',
        '',
      ].join('\n'),
    );
    expect(first).toContain('| time | 6 s | ≤ 5 | **no** |');
  });
});
