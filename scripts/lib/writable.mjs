// @ts-check
import { accessSync, constants, existsSync } from 'node:fs';
import { dirname } from 'node:path';
import { ROOT } from './root.mjs';

/**
 * What to do about a file or folder that is to be written and cannot be; null where it can.
 * @param {string} path absolute; need not be there yet
 */
export const readOnlyComplaint = (path) => {
  let there = path;
  while (!existsSync(there)) there = dirname(there);
  try {
    accessSync(there, constants.W_OK);
    return null;
  } catch {
    return (
      `Dryflat puts itself together where it lies, and may not write to ${there}. ` +
      'Run the same command once as somebody who may; or copy the whole folder ' +
      `${ROOT} to a place of your own, and run it there.`
    );
  }
};
