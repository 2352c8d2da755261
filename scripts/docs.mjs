#!/usr/bin/env node
// @ts-check
// `npm run docs`: runs the examples of the pages and writes down what they print now.
import './lib/node-version.mjs';
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { pages, refreshed } from './lib/docs.mjs';
import { ROOT } from './lib/root.mjs';

for (const file of pages()) {
  const path = join(ROOT, file);
  const page = readFileSync(path, 'utf8');
  const now = refreshed(page);
  if (now !== page) writeFileSync(path, now);
  console.log(`${now === page ? 'as it was' : 'rewritten'}  ${file}`);
}
