import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { planningAtImport, WORK, workAtImport } from './lib/at-import.mjs';
import { fixedWaits, fixedWaitsIn } from './lib/fixed-waits.mjs';
import { once } from './lib/once.mjs';

const folder = mkdtempSync(join(tmpdir(), 'dryflat-at-import-'));
afterAll(() => rmSync(folder, { recursive: true }));

const planted = (files: Readonly<Record<string, string>>): readonly string[] => {
  for (const [name, text] of Object.entries(files)) {
    mkdirSync(dirname(join(folder, name)), { recursive: true });
    writeFileSync(join(folder, name), text);
  }
  const first = join(folder, Object.keys(files)[0] ?? '');
  return workAtImport(first).map((way) => way.replaceAll(`${folder}/`, ''));
};

describe('a test file that plans while it is imported is found', () => {
  const helper = `
    import { planBlock } from './plan.ts';
    export const planOf = (piece) => planBlock(piece);
    export const again = () => planOf(1);
  `;

  it.each([
    ['at the top', 'const plan = planBlock(1);', 'a.test.ts > planBlock'],
    [
      'in a callback of describe',
      "describe('a', () => { const a = forecast(1); });",
      'a.test.ts > forecast',
    ],
    [
      'in a callback of describe.each, and of map',
      "describe.each([1])('a', () => { [2].map((b) => routes(b)); });",
      'a.test.ts > routes',
    ],
    ['for a table of cases', "it.each([replan(1)])('a', () => {});", 'a.test.ts > replan'],
    [
      'through a function of its own',
      'const mine = () => planBlock(1);\nconst plan = mine();',
      'a.test.ts > mine > planBlock',
    ],
    [
      'through functions of another file',
      "import { again as often } from './helper.ts';\nconst { pins } = often().pieces[0];",
      'a.test.ts > often > planOf > planBlock',
    ],
    [
      'through a file that it imports',
      "import { PLAN } from './made.ts';\nit('a', () => expect(PLAN));",
      'made.ts > planOf > planBlock',
    ],
  ])('%s', (_, text, way) => {
    const made = "import { planOf } from './helper.ts';\nexport const PLAN = planOf(1);";
    expect(planted({ 'a.test.ts': text, 'helper.ts': helper, 'made.ts': made })).toEqual([way]);
    rmSync(join(folder, 'made.ts'));
  });

  it('work that a test does, or that waits for one, is none', () => {
    const text = `
      import { planOf } from './helper.ts';
      const plan = once(() => planOf(1));
      const others = { get later() { return planOf(2); } };
      const forecast = (change) => ({ change });
      const asked = forecast(1);
      describe('a', () => {
        const mine = () => planOf(3);
        beforeAll(() => { mine(); });
        it.each([1])('b', (k) => { expect(planBlock(k)).toBe(plan()); });
      });
    `;
    expect(planted({ 'b.test.ts': text, 'helper.ts': helper })).toEqual([]);
  });
});

describe('our own tests', () => {
  const found = once(planningAtImport);

  it('none plans, draws or starts a program while it is imported', () => {
    expect(found().files).toEqual([]);
  });

  it('each kind of work that is looked for is one that something here does', () => {
    expect(WORK.length).toBeGreaterThan(10);
    expect(found().missing).toEqual([]);
  });

  it('none waits in a browser for a time to pass', () => {
    expect(fixedWaits()).toEqual([]);
  });
});

it('waits for a time are told from others', () => {
  const source = `
    await page.waitForTimeout(130);
    await new Promise((done) => setTimeout(done, 500));
    import { setTimeout as sleep } from 'node:timers/promises';
    // never page.waitForTimeout(130)
    await new Promise((done) => setTimeout(done, 80 + 420 * random()));
    await page.getByText('Kept').waitFor({ timeout: 500 });
    await new Promise((done) => setTimeout(done, 500)); // at random
    await new Promise((random) => setTimeout(random, 500));
    await pause(80 + 420 * random(), setTimeout(done, 500));
    await page.clock.fastForward(130);
  `;
  expect(fixedWaitsIn(source)).toHaveLength(6);
});
