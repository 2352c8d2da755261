#!/usr/bin/env node
// @ts-check
// `npm run --silent figures [-- TOPIC] [-- --full]`: one JSON line per figure on standard output, and
// nothing else. Figures of a topic stand in files `TOPIC.figures.ts` beside what they measure; each
// exports `figures: (full: boolean) => AsyncIterable<Figure>`. With `--full` the large draws are made,
// and docs/figures.md is written anew for the topics that ran.
import './lib/node-version.mjs';
import { readFileSync, writeFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { parseArgs } from 'node:util';
import { goalText, holds, withTopic } from './lib/figures.mjs';
import { filesEnding, keepOutputForResults, loaded, rounded } from './lib/measuring.mjs';
import { ROOT } from './lib/root.mjs';
import { endLeftovers } from './lib/run.mjs';

keepOutputForResults();

const ENDING = '.figures.ts';
const PAGE = join(ROOT, 'docs', 'figures.md');
const { values, positionals } = parseArgs({
  options: { full: { type: 'boolean', default: false } },
  allowPositionals: true,
});
const files = filesEnding(ENDING);
const topics = [...new Set(files.map((file) => basename(file, ENDING)))].sort();
const unknown = positionals.filter((topic) => !topics.includes(topic));
if (unknown.length > 0) {
  console.error(`No figures of ${unknown.join(', ')}. There are: ${topics.join(', ')}.`);
  process.exit(2);
}

let failed = 0;
for (const topic of positionals.length > 0 ? positionals : topics) {
  /** @type {import('./lib/figures.mjs').Line[]} */
  const lines = [];
  for (const file of files.filter((each) => basename(each, ENDING) === topic)) {
    try {
      /** @type {{ figures: (full: boolean) => AsyncIterable<import('./lib/figures.mjs').Figure> }} */
      const { figures } = await loaded(file, 'figures');
      for await (const { name, value, unit, goal } of figures(values.full)) {
        const line = {
          topic,
          name,
          value: rounded(value),
          unit,
          goal: goalText(goal),
          holds: holds(value, goal),
        };
        process.stdout.write(`${JSON.stringify(line)}\n`);
        lines.push(line);
      }
    } catch (error) {
      failed += 1;
      console.error(`${file}: ${/** @type {Error} */ (error).stack}`);
    }
  }
  if (values.full) writeFileSync(PAGE, withTopic(readFileSync(PAGE, 'utf8'), topic, lines));
}
endLeftovers();
process.exit(failed > 0 ? 1 : 0);
