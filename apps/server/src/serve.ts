import {
  createServer,
  type OutgoingHttpHeaders,
  type RequestListener,
  type Server,
  type ServerResponse,
  STATUS_CODES,
} from 'node:http';
import type { AddressInfo } from 'node:net';
import type { Duplex } from 'node:stream';
import { type Answer, refusal } from './answer.ts';
import { answering, LOOPBACK } from './answering.ts';
import { EVERYWHERE } from './headers.ts';

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

const headersOf = ({ status, headers, body }: Answer): OutgoingHttpHeaders => ({
  ...EVERYWHERE,
  ...headers,
  // That of a 304 would be the whole file's.
  ...(status === 304 ? {} : { 'Content-Length': Buffer.byteLength(body) }),
});

/** An answer in the words of HTTP, for a socket on which no request could be read. */
const inWords = (answer: Answer): string =>
  [
    `HTTP/1.1 ${answer.status} ${STATUS_CODES[answer.status]}`,
    ...Object.entries({ ...headersOf(answer), Connection: 'close' }).map(
      ([name, value]) => `${name}: ${value}`,
    ),
    '',
    answer.body,
  ].join('\r\n');

/** What the parser says of a request that it cannot read; anything else is a 400. */
const PARSER_STATUS: Readonly<Record<string, number>> = {
  ERR_HTTP_REQUEST_TIMEOUT: 408,
  HPE_CHUNK_EXTENSIONS_OVERFLOW: 413,
  HPE_HEADER_OVERFLOW: 431,
};

/** A server for the files of a folder; nothing that is sent to it ends it. */
const serverOf = (dir: string): Server => {
  const answerTo = answering(dir);
  const latest = new WeakMap<Duplex, ServerResponse>();
  const listener: RequestListener = async (request, response) => {
    latest.set(request.socket, response);
    const answer = await answerTo(request);
    response.writeHead(answer.status, headersOf(answer)).end(answer.body);
  };
  // A missing Host is refused with the headers of every answer, which Node's own refusal lacks.
  const server = createServer({ requireHostHeader: false }, listener)
    .on('checkContinue', listener)
    .on('checkExpectation', listener)
    .on('clientError', (error: NodeJS.ErrnoException, socket) => {
      const answer = inWords(refusal(PARSER_STATUS[error.code ?? ''] ?? 400));
      const say = () =>
        socket.writable ? socket.end(answer, () => socket.destroy()) : socket.destroy();
      const before = latest.get(socket);
      // Where an answer is under way, a second one would be read as part of it.
      if (before === undefined || before.writableFinished) say();
      else before.once('finish', say);
    });
  // A client that says that it has no more to send (`nc -N`) still waits for its answer.
  return Object.assign(server, { httpAllowHalfOpen: true });
};

const listen = (server: Server, port: number, host: string): Promise<AddressInfo> =>
  new Promise((resolve, reject) => {
    server.on('error', reject);
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
  const name = host === '::1' ? '[::1]' : host;
  if (!LOOPBACK.includes(name)) throw new RangeError(`${host} is not a loopback address`);
  const server = serverOf(dir);
  const address = await listen(server, port, host);
  return { url: `http://${name}:${address.port}`, close: () => close(server) };
};
