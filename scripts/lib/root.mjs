// @ts-check
import { fileURLToPath } from 'node:url';

/** The folder of the repository, without a slash at the end. */
export const ROOT = fileURLToPath(new URL('../..', import.meta.url)).replace(/[\\/]$/, '');
