// @ts-check
import { readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { run } from './run.mjs';

/**
 * @typedef {object} Surroundings
 * @property {string} root
 * @property {string | null} chromium path of the browser, null where there is none
 *
 * @typedef {object} Step
 * @property {string} title
 * @property {readonly (readonly string[])[]} commands each a program and its arguments, run in turn
 * @property {string} [report] file, relative to the root, that a run of tests reports to as JSON
 * @property {string} [needs] title of a step that has to have passed
 * @property {boolean} [needsChromium]
 *
 * @typedef {'passed' | 'failed' | 'not run'} Verdict
 * @typedef {object} StepResult
 * @property {string} title
 * @property {Verdict} verdict
 * @property {number} ms
 * @property {{ passed: number, failed: number } | null} tests null for a step without tests
 */

/**
 * Counts in a report of Vitest's json reporter. A file that fails before any of its tests ran counts
 * as one failure, so that it cannot vanish from the sum.
 * @param {{ numPassedTests: number, numFailedTests: number, testResults: { status: string, assertionResults: { status: string }[] }[] }} report
 */
export const countsOf = (report) => {
  const broken = report.testResults.filter(
    (file) =>
      file.status === 'failed' && !file.assertionResults.some((test) => test.status === 'failed'),
  ).length;
  return { passed: report.numPassedTests, failed: report.numFailedTests + broken };
};

/**
 * @param {string} file
 * @returns {{ passed: number, failed: number } | null}
 */
const readCounts = (file) => {
  try {
    return countsOf(JSON.parse(readFileSync(file, 'utf8')));
  } catch {
    return null;
  }
};

/**
 * @param {Step} step
 * @param {Surroundings} surroundings
 * @returns {Promise<StepResult>}
 */
const runStep = async (step, { root, chromium }) => {
  const report = step.report === undefined ? null : join(root, step.report);
  if (report !== null) rmSync(report, { force: true });
  /** @type {Record<string, string>} */
  const env = chromium === null ? {} : { CHROMIUM_PATH: chromium };
  let failed = false;
  let ms = 0;
  for (const [command = '', ...args] of step.commands) {
    const ran = await run(command, args, { cwd: root, env });
    failed ||= ran.code !== 0;
    ms += ran.ms;
  }
  const tests = report === null ? null : readCounts(report);
  // Tests that left no report did not run, whatever the exit code was.
  failed ||= report !== null && tests === null;
  return { title: step.title, verdict: failed ? 'failed' : 'passed', ms, tests };
};

/**
 * Runs every step whose needs are met, also after another one failed.
 * @param {readonly Step[]} steps
 * @param {Surroundings} surroundings
 * @returns {Promise<StepResult[]>}
 */
export const inOrder = async (steps, surroundings) => {
  /** @type {StepResult[]} */
  const results = [];
  for (const [index, step] of steps.entries()) {
    console.log(`\n── ${index + 1} of ${steps.length}: ${step.title} ──`);
    const before = results.find((result) => result.title === step.needs);
    const held =
      (step.needs !== undefined && before?.verdict !== 'passed') ||
      (step.needsChromium === true && surroundings.chromium === null);
    if (held) results.push({ title: step.title, verdict: 'not run', ms: 0, tests: null });
    else results.push(await runStep(step, surroundings));
  }
  return results;
};

/** @param {readonly StepResult[]} results */
export const failures = (results) =>
  results
    .filter(({ verdict }) => verdict !== 'passed')
    .map(({ title, verdict }) => (verdict === 'not run' ? `${title} (not run)` : title));

/**
 * `N passed, N failed`: tests of all runs together. A step that failed without a failed test (types,
 * lint, a build, a step that could not run) counts as one failure: the line never looks clean when
 * the exit code is not.
 * @param {readonly StepResult[]} results
 */
export const lastLine = (results) => {
  const passed = results.reduce((sum, { tests }) => sum + (tests?.passed ?? 0), 0);
  const failed = results.reduce((sum, { verdict, tests }) => {
    const inTests = tests?.failed ?? 0;
    return sum + (verdict !== 'passed' && inTests === 0 ? 1 : inTests);
  }, 0);
  return `${passed} passed, ${failed} failed`;
};
