#!/usr/bin/env node
// @ts-check
import './lib/node-version.mjs';
import { pathToFileURL } from 'node:url';
import { parseArgs } from 'node:util';
import { bundled } from './lib/bundled.mjs';
import { installMissing } from './lib/install.mjs';
import { nextFreePort, portComplaint, readPort, USUAL_PORT } from './lib/port.mjs';
import { ROOT } from './lib/root.mjs';
import { buildWeb, webDist } from './lib/web-build.mjs';

const HELP = `npm start: serves the app on this machine only.

It installs what is missing, builds the app when its sources changed, prints the
address and stays until Ctrl-C.

  npm start                     on port ${USUAL_PORT}
  PORT=5000 npm start           on another port; PORT=0 takes any free one
  npm start -- --no-install     installs nothing, even where something is missing
  npm start -- --help           this page

Exit codes: 0 ended by Ctrl-C, 1 could not start, 2 an option or PORT is wrong.`;

/**
 * @param {number} code
 * @param {string} message
 * @returns {never}
 */
const give = (code, message) => {
  console.error(message);
  process.exit(code);
};

const readOptions = () => {
  try {
    const options = {
      'no-install': { type: /** @type {const} */ ('boolean') },
      help: { type: /** @type {const} */ ('boolean'), short: 'h' },
    };
    return parseArgs({ options }).values;
  } catch (error) {
    return give(2, `${/** @type {Error} */ (error).message}\n\n${HELP}`);
  }
};

/** @param {number} port */
const listen = async (port) => {
  const server = await bundled('apps/server/src/index.ts', 'apps/server/dist/server.mjs').catch(
    (error) => give(1, `The server could not be put together.\n${error.message}`),
  );
  /** @type {typeof import('../apps/server/src/index.ts')} */
  const { serve } = await import(pathToFileURL(server).href);
  try {
    return await serve({ dir: webDist(ROOT), port });
  } catch (error) {
    const code = /** @type {NodeJS.ErrnoException} */ (error).code;
    if (code === undefined) throw error;
    return give(1, portComplaint(port, code, await nextFreePort(port)));
  }
};

const options = readOptions();
if (options.help) {
  console.log(HELP);
  process.exit(0);
}
const asked = readPort(process.env.PORT);
if ('complaint' in asked) give(2, asked.complaint);
if (!options['no-install'] && !(await installMissing(ROOT))) process.exit(1);
if (!(await buildWeb(ROOT))) process.exit(1);

const serving = await listen(asked.port);
console.log(`
Dryflat is at ${serving.url}

  an example garment   ${serving.url}/#/example/waistcoat
  an empty start       ${serving.url}/#/

Only this machine can reach it. Ctrl-C ends it.`);

for (const signal of /** @type {const} */ (['SIGINT', 'SIGTERM', 'SIGHUP']))
  process.once(signal, async () => {
    await serving.close();
    process.exit(0);
  });
