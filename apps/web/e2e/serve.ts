import { readFile } from 'node:fs/promises';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname, join, normalize } from 'node:path';

const TYPES: Readonly<Record<string, string>> = {
  '.css': 'text/css',
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript',
  '.json': 'application/json',
  '.png': 'image/png',
  '.svg': 'image/svg+xml',
  '.webmanifest': 'application/manifest+json',
  '.woff': 'font/woff',
  '.woff2': 'font/woff2',
};

export interface Served {
  readonly address: string;
  readonly stop: () => Promise<void>;
}

/** Serves the files of a folder on a free port of this machine alone. */
export const serveFolder = async (folder: string): Promise<Served> => {
  const server = createServer(async (request, response) => {
    const path = normalize(new URL(request.url ?? '/', 'http://x').pathname);
    const file = join(folder, path.endsWith('/') ? 'index.html' : path);
    try {
      const body = await readFile(file);
      response.writeHead(200, { 'content-type': TYPES[extname(file)] ?? 'text/plain' });
      response.end(body);
    } catch {
      response.writeHead(404).end('not found');
    }
  });
  await new Promise<void>((listening) => server.listen(0, '127.0.0.1', listening));
  return {
    address: `http://127.0.0.1:${(server.address() as AddressInfo).port}/`,
    stop: () => stop(server),
  };
};

const stop = (server: Server): Promise<void> =>
  new Promise((stopped) => {
    server.close(() => stopped());
    server.closeAllConnections();
  });
