// @ts-check
import { createServer } from 'node:net';

export const USUAL_PORT = 4747;

/**
 * The port asked for, or a complaint about it. 0 takes any free port.
 * @param {string | undefined} given the PORT variable as it stands
 * @returns {{ port: number } | { complaint: string }}
 */
export const readPort = (given) => {
  if (given === undefined || given.trim() === '') return { port: USUAL_PORT };
  const port = Number(given);
  if (/^\d+$/.test(given.trim()) && port <= 65_535) return { port };
  return {
    complaint: `PORT is "${given}", which is not a port. Give a whole number from 1024 to 65535, or leave it out for ${USUAL_PORT}.`,
  };
};

/**
 * @param {number} port
 * @returns {Promise<boolean>}
 */
const isFree = (port) =>
  new Promise((resolve) => {
    const probe = createServer();
    probe.once('error', () => resolve(false));
    probe.listen(port, '127.0.0.1', () => probe.close(() => resolve(true)));
  });

/**
 * The next port after this one that nothing listens on; null when none of the next 50 is free.
 * @param {number} port
 */
export const nextFreePort = async (port) => {
  for (let next = port + 1; next <= Math.min(port + 50, 65_535); next += 1)
    if (await isFree(next)) return next;
  return null;
};

/**
 * What to say when the port cannot be listened on.
 * @param {number} port
 * @param {string} code the system's, as `EADDRINUSE`
 * @param {number | null} free
 */
export const portComplaint = (port, code, free) => {
  const other = `Choose another: PORT=${free ?? 8080} npm start`;
  if (code === 'EADDRINUSE')
    return `Port ${port} is taken: another program, or another Dryflat, listens on it. Stop that one, or choose another: PORT=${free ?? 8080} npm start`;
  if (code === 'EACCES')
    return `Port ${port} may not be used without special rights (ports below 1024 are reserved). ${other}`;
  return `Port ${port} cannot be used (${code}). ${other}`;
};
