#!/usr/bin/env node
// @ts-check
// Bundles the command when its sources changed, then runs it. Needs nothing but what is installed.
import '../../../scripts/lib/node-version.mjs';
import { pathToFileURL } from 'node:url';
import { bundled } from '../../../scripts/lib/bundled.mjs';

const program = await bundled('apps/cli/src/main.ts', 'apps/cli/dist/dryflat.mjs');
await import(pathToFileURL(program).href);
