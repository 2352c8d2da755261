import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { ROOT } from './lib/root.mjs';

const bench = (word: string) =>
  spawnSync('node', [join(ROOT, 'scripts', 'bench.mjs'), word], { encoding: 'utf8' });

it('one JSON line per benchmark on standard output, and nothing else', () => {
  const { status, stdout } = bench('forecast.bench');
  expect(status).toBe(0);
  const lines = stdout.trimEnd().split('\n');
  const results = lines.map((line) => JSON.parse(line));
  expect(results.map(({ name }) => name)).toContain('forecast-full-record');
  for (const { ms, ratio, against } of results) {
    expect(ms).toBeGreaterThan(0);
    expect(ratio).toBeGreaterThan(0);
    expect(against).not.toBe('');
  }
});

it('a word that no file has runs nothing', () => {
  expect(bench('no-such-benchmark')).toMatchObject({ status: 0, stdout: '' });
});
