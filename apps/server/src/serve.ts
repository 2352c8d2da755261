import { createServer, type RequestListener, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import sirv from 'sirv';
import { headersOf } from './headers.ts';

export interface ServeOptions {
  /** Folder with the built app; `index.html` in it answers every path without a file of its own. */
  readonly dir: string;
  /** 0 takes any free port. */
  readonly port: number;
  /** A loopback address. Records stay on this machine, so nothing else is listened on. */
  readonly host?: Loopback;
}

export type Loopback = '127.0.0.1' | '::1' | 'localhost';

export interface Serving {
  /** Without a slash at the end: `http://127.0.0.1:4747`. */
  readonly url: string;
  /** Stops listening and drops open connections. */
  readonly close: () => Promise<void>;
}

const LOOPBACK: readonly string[] = ['127.0.0.1', '::1', 'localhost'];

const refuse = (response: Parameters<RequestListener>[1], status: number, why: string) => {
  response.writeHead(status, { 'Content-Type': 'text/plain; charset=utf-8' });
  response.end(`${why}\n`);
};

const listener = (dir: string): RequestListener => {
  // `dev` reads the folder at each request, so that a rebuild is served without a restart.
  const files = sirv(dir, {
    dev: true,
    etag: true,
    single: true,
    setHeaders: (response, pathname) => {
      for (const [name, value] of Object.entries(headersOf(pathname)))
        response.setHeader(name, value);
    },
  });
  return (request, response) => {
    if (request.method !== 'GET' && request.method !== 'HEAD')
      return refuse(response, 405, 'Only GET and HEAD are answered here.');
    files(request, response, () => refuse(response, 404, 'There is no such file.'));
  };
};

const listen = (server: Server, port: number, host: string): Promise<AddressInfo> =>
  new Promise((resolve, reject) => {
    server.once('error', reject);
    server.listen(port, host, () => resolve(server.address() as AddressInfo));
  });

const close = (server: Server): Promise<void> =>
  new Promise((resolve, reject) => {
    server.close((error) => (error ? reject(error) : resolve()));
    server.closeAllConnections();
  });

/**
 * Serves a built app on loopback.
 *
 * Rejects with the system's error when it cannot listen (`code` is `EADDRINUSE` for a taken port);
 * throws a RangeError when the host is not a loopback address.
 */
export const serve = async ({ dir, port, host = '127.0.0.1' }: ServeOptions): Promise<Serving> => {
  if (!LOOPBACK.includes(host)) throw new RangeError(`${host} is not a loopback address`);
  const server = createServer(listener(dir));
  const address = await listen(server, port, host);
  const name = host === '::1' ? '[::1]' : host;
  return { url: `http://${name}:${address.port}`, close: () => close(server) };
};
