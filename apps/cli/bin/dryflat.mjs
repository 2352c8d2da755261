#!/usr/bin/env node
// @ts-check
// Bundles the command when its sources changed, then runs it. Needs nothing but what is installed.
import '../../../scripts/lib/node-version.mjs';
import { pathToFileURL } from 'node:url';
import { bundled } from '../../../scripts/lib/bundled.mjs';

const prepare = async () => {
  try {
    return await bundled('apps/cli/src/main.ts', 'apps/cli/dist/dryflat.mjs');
  } catch (error) {
    const { code, message } = /** @type {NodeJS.ErrnoException} */ (error);
    console.error(
      code === 'ERR_MODULE_NOT_FOUND'
        ? 'dryflat: its packages are not installed yet. Run npm install first.'
        : `dryflat: the command could not be put together.\n${message}`,
    );
    process.exit(1);
  }
};

await import(pathToFileURL(await prepare()).href);
