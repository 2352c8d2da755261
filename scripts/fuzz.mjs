#!/usr/bin/env node
// @ts-check
// `npm run fuzz [-- COUNT [SEED]]`: mutated records, and records at the bounds of what is taken for one,
// through every command. What is wrong is told and its record kept in .cache/fuzz; ends with 1 then.
import './lib/node-version.mjs';
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { loaded } from './lib/measuring.mjs';
import { ROOT } from './lib/root.mjs';

const count = Number(process.argv[2] ?? 2_000);
const seed = Number(process.argv[3] ?? Date.now() % 2 ** 31);
if (!(Number.isInteger(count) && count >= 0 && Number.isInteger(seed))) {
  console.error('npm run fuzz [-- COUNT [SEED]]: both whole numbers');
  process.exit(2);
}

/** @type {typeof import('../apps/cli/src/mutated/fuzz.ts')} */
const { fuzzExtremes, fuzzMutated } = await loaded('apps/cli/src/mutated/fuzz.ts', 'fuzz');
const folder = join(ROOT, '.cache', 'fuzz');
mkdirSync(folder, { recursive: true });

/** s. Longer than this and it is told as if it were wrong. */
const PATIENCE = 30;
let [run, sound, wrong] = [0, 0, 0];
let slowest = { line: '', ms: 0 };

/** @param {AsyncIterable<import('../apps/cli/src/mutated/fuzz.ts').Fuzzed>} records */
const through = async (records) => {
  for await (const { name, text, complaints, ...judged } of records) {
    run += 1;
    if (judged.sound) sound += 1;
    if (judged.slowest.ms > slowest.ms) slowest = judged.slowest;
    const late = judged.slowest.ms > 1000 * PATIENCE ? [judged.slowest.line] : [];
    if (complaints.length + late.length > 0) {
      wrong += 1;
      const file = join('.cache', 'fuzz', `${seed}-${name.replaceAll(/\W+/g, '-')}.json`);
      writeFileSync(join(ROOT, file), text);
      console.log(`${name}, kept as ${file}`);
      for (const { line, what } of complaints) console.log(`  ${line}: ${what}`);
      for (const line of late) console.log(`  ${line}: took longer than ${PATIENCE} s`);
    }
    if (run % 500 === 0) console.log(`${run} records, ${sound} sound, ${wrong} wrong`);
  }
};

console.log(`Seed ${seed}. Ctrl-C ends it.`);
await through(fuzzExtremes());
await through(fuzzMutated(count, { seed, every: true }));
const took = `${slowest.line} took longest, ${(slowest.ms / 1000).toFixed(1)} s`;
console.log(`${run} records, ${sound} sound, ${wrong} wrong; ${took}.`);
process.exit(wrong > 0 ? 1 : 0);
