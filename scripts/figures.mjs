#!/usr/bin/env node
// @ts-check
// `npm run --silent figures [-- TOPIC] [-- --full]`: one JSON line per figure on standard output, and
// nothing else. Figures of a topic stand in files `TOPIC.figures.ts` beside what they measure; each
// exports `figures: (full: boolean) => AsyncIterable<Figure>`. With `--full` the large draws are made,
// and docs/figures.md is written anew for the topics that ran to their end.
import './lib/node-version.mjs';
import { readFileSync, writeFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { parseArgs } from 'node:util';
import { linesOf, withTopic } from './lib/figures.mjs';
import { filesEnding, keepOutputForResults, loaded } from './lib/measuring.mjs';
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

let failed = false;
for (const topic of positionals.length > 0 ? positionals : topics) {
  const lines = await linesOf(
    topic,
    files.filter((each) => basename(each, ENDING) === topic),
    async (file) => (await loaded(file, 'figures')).figures(values.full),
    {
      tell: (line) => process.stdout.write(`${JSON.stringify(line)}\n`),
      threw: (file, error) => {
        console.error(`${file}: ${error instanceof Error ? error.stack : error}`);
      },
    },
  );
  failed ||= lines === null;
  if (values.full) writeFileSync(PAGE, withTopic(readFileSync(PAGE, 'utf8'), topic, lines));
}
endLeftovers();
process.exit(failed ? 1 : 0);
