#!/usr/bin/env node
// @ts-check
// `npm run build`: builds the web app, whether or not it is stale.
import './lib/node-version.mjs';
import { installMissing } from './lib/install.mjs';
import { ROOT } from './lib/root.mjs';
import { buildWeb } from './lib/web-build.mjs';

const built = (await installMissing(ROOT)) && (await buildWeb(ROOT, { force: true }));
process.exit(built ? 0 : 1);
