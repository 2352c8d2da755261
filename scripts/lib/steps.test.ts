import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { countsOf, failures, inOrder, lastLine, type Step } from './steps.mjs';

let root: string;
beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), 'dryflat-steps-'));
  vi.spyOn(console, 'log').mockImplementation(() => {});
});
afterEach(() => {
  vi.restoreAllMocks();
  rmSync(root, { recursive: true });
});

const exits = (code: number) => ['node', '-e', `process.exit(${code})`];
const reports = (passed: number, failed: number, code: number) => [
  'node',
  '-e',
  `require('fs').writeFileSync('r.json', JSON.stringify({ numPassedTests: ${passed}, numFailedTests: ${failed}, testResults: [] })); process.exit(${code})`,
];
const run = (...steps: readonly Step[]) => inOrder(steps, { root, chromium: null });

it('all steps pass: the line is clean', async () => {
  const results = await run(
    { title: 'types', commands: [exits(0)] },
    { title: 'unit', commands: [reports(7, 0, 0)], report: 'r.json' },
  );
  expect(failures(results)).toEqual([]);
  expect(lastLine(results)).toBe('7 passed, 0 failed');
});

it('a failing step does not stop the ones after it, and the line shows it', async () => {
  const results = await run(
    { title: 'types', commands: [exits(2)] },
    { title: 'unit', commands: [reports(7, 2, 1)], report: 'r.json' },
  );
  expect(failures(results)).toEqual(['types', 'unit']);
  expect(lastLine(results)).toBe('7 passed, 3 failed');
});

it('a step whose need failed, or that has no browser, is not run and counts as failed', async () => {
  const results = await run(
    { title: 'build', commands: [exits(1)] },
    { title: 'after', commands: [exits(0)], needs: 'build' },
    { title: 'browser', commands: [exits(0)], needsChromium: true },
  );
  expect(failures(results)).toEqual(['build', 'after (not run)', 'browser (not run)']);
  expect(lastLine(results)).toBe('0 passed, 3 failed');
});

it('a run of tests that leaves no report failed, whatever its exit code says', async () => {
  const results = await run({ title: 'unit', commands: [exits(0)], report: 'r.json' });
  expect(failures(results)).toEqual(['unit']);
});

it('every command of a step runs, and one failure fails the step', async () => {
  const results = await run({ title: 'lint', commands: [exits(1), exits(0)] });
  expect(failures(results)).toEqual(['lint']);
});

it('a program that does not exist fails its step', async () => {
  vi.spyOn(console, 'error').mockImplementation(() => {});
  const results = await run({ title: 'ghost', commands: [['dryflat-no-such-program']] });
  expect(failures(results)).toEqual(['ghost']);
});

it('a test file that broke before its tests counts as one failure', () => {
  const broken = { status: 'failed', assertionResults: [] };
  const failing = { status: 'failed', assertionResults: [{ status: 'failed' }] };
  const report = { numPassedTests: 3, numFailedTests: 1, testResults: [broken, failing] };
  expect(countsOf(report)).toEqual({ passed: 3, failed: 2 });
});
