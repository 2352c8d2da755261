// @ts-check
import { spawn } from 'node:child_process';
import { randomUUID } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';

/** Every process started here inherits this, so that whatever one of them leaves behind is found. */
const MARK = `DRYFLAT_RUN=${randomUUID()}`;

/**
 * @typedef {object} Ran
 * @property {number} code exit code; 1 when it was ended by a signal or a time limit
 * @property {number} ms wall-clock time
 */

/**
 * Runs a command and waits for it; its output goes where ours goes.
 * @param {string} command
 * @param {readonly string[]} args
 * @param {{ cwd: string, env?: Record<string, string>, limitMs?: number, quiet?: boolean }} options
 *   `quiet` sends its standard output to our standard error
 * @returns {Promise<Ran>}
 */
export const run = (command, args, { cwd, env = {}, limitMs = 30 * 60_000, quiet = false }) => {
  const began = performance.now();
  const [name = '', value = ''] = MARK.split('=');
  const child = spawn(command, args, {
    cwd,
    env: { ...process.env, ...env, [name]: value },
    stdio: ['ignore', quiet ? 2 : 'inherit', 'inherit'],
    timeout: limitMs,
    killSignal: 'SIGKILL',
  });
  return new Promise((resolve) => {
    const end = (/** @type {number} */ code) => resolve({ code, ms: performance.now() - began });
    child.on('error', (error) => {
      console.error(`${command} could not be started: ${error.message}`);
      end(127);
    });
    child.on('exit', (code) => end(code ?? 1));
  });
};

/** @param {string} pid */
const carriesMark = (pid) => {
  try {
    return readFileSync(`/proc/${pid}/environ`, 'utf8').split('\0').includes(MARK);
  } catch {
    return false;
  }
};

/**
 * Ends whatever our commands left running; on systems without /proc nothing is found.
 * @returns {number} how many processes were ended
 */
export const endLeftovers = () => {
  let entries;
  try {
    entries = readdirSync('/proc');
  } catch {
    return 0;
  }
  const left = entries.filter((pid) => /^\d+$/.test(pid) && carriesMark(pid)).map(Number);
  for (const pid of left) {
    try {
      process.kill(pid, 'SIGKILL');
    } catch {
      // It ended by itself in the meantime.
    }
  }
  return left.length;
};
