#!/usr/bin/env node
// @ts-check
// `npm run schema` publishes the record's JSON Schema; `--check` fails where the file is not fresh.
import './lib/node-version.mjs';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { bundled } from './lib/bundled.mjs';
import { ROOT } from './lib/root.mjs';

const program = await bundled('packages/record/src/json-schema.ts', '.cache/json-schema.mjs');
/** @type {typeof import('../packages/record/src/json-schema.ts')} */
const { SCHEMA_FILE, schemaText } = await import(pathToFileURL(program).href);
const file = join('packages', 'record', 'schema', SCHEMA_FILE);
const path = join(ROOT, file);
const fresh = existsSync(path) && readFileSync(path, 'utf8') === schemaText();

if (process.argv.includes('--check')) {
  console.log(
    fresh ? `${file} is fresh.` : `${file} is not what the code says. Run: npm run schema`,
  );
  process.exit(fresh ? 0 : 1);
}
if (!fresh) writeFileSync(path, schemaText());
console.log(fresh ? `${file} was fresh.` : `${file} is written.`);
