import type { IncomingMessage, OutgoingHttpHeaders } from 'node:http';
import { relative } from 'node:path';
import type { Readable } from 'node:stream';
import { buffer } from 'node:stream/consumers';
import { send } from '@fastify/send';
import { type Answer, refusal } from './answer.ts';
import { rangeOf } from './byte-range.ts';
import { cacheControl } from './headers.ts';
import { codingFor, type FileVersion, packing } from './packing.ts';

/** Names of this machine as they stand in an address; the one that npm start prints first. */
export const LOOPBACK: readonly string[] = ['127.0.0.1', 'localhost', '[::1]'];

/**
 * Why a request is not for this server; null where it is. A page from elsewhere can have its own
 * name lead to this machine (DNS rebinding); what it then asks for comes under that name.
 */
const refusedName = ({ socket, headersDistinct }: IncomingMessage): Answer | null => {
  const [host, second] = headersDistinct.host ?? [];
  if (host === undefined || second !== undefined) return refusal(400);
  const names = LOOPBACK.map((name) => `${name}:${socket.localPort}`);
  if (names.includes(host.toLowerCase())) return null;
  return refusal(421, { why: `${JSON.stringify(host)} is not here. Open http://${names[0]}.` });
};

/** The path asked for, escapes and all; null where the target is none, like `*`. */
const pathOf = ({ url = '', headers }: IncomingMessage): string | null => {
  const own = `http://${headers.host}/`;
  const target = url.startsWith(own) ? url.slice(own.length - 1) : url;
  return target.startsWith('/') ? (target.split('?', 1)[0] ?? null) : null;
};

/** A place in the app; a path with a dot or an escape in it means a file. */
const isPlace = (path: string): boolean => !/[.%]/.test(path);

/** @throws where the file went meanwhile (`ENOENT`), cannot be read, or is another one now */
const read = async (stream: Readable, size: number): Promise<Uint8Array> => {
  const bytes = await buffer(stream);
  // The start of the old file with the end of the new one would be neither.
  if (bytes.length !== size) throw new Error('the file changed while it was read');
  return bytes;
};

/** Answers requests for the files in a folder, which is looked at anew for each. */
export const answering = (dir: string) => {
  const packed = packing();

  /** What the request asks of a file: a range of it, or all of it, packed or not. */
  const partOf = async (
    { method, headers: asked }: IncomingMessage,
    file: FileVersion,
    headers: OutgoingHttpHeaders,
  ): Promise<Answer> => {
    const { bytes } = file;
    const size = bytes.length;
    // Range is for GET alone (RFC 9110, 14.2); If-Range asks for a strong ETag (13.1.5), ours is weak.
    const isRanged = method === 'GET' && asked['if-range'] === undefined;
    const range = isRanged ? rangeOf(asked.range, size) : 'whole';
    if (range === 'none') return refusal(416, { headers: { 'Content-Range': `bytes */${size}` } });
    if (range !== 'whole') {
      const { from, to } = range;
      const part = { ...headers, 'Content-Range': `bytes ${from}-${to}/${size}` };
      return { status: 206, headers: part, body: bytes.subarray(from, to + 1) };
    }
    const coding = codingFor(asked['accept-encoding'], file);
    if (coding === null) return { status: 200, headers, body: bytes };
    const coded = { ...headers, 'Content-Encoding': coding };
    return { status: 200, headers: coded, body: await packed(file, coding) };
  };

  const fileAt = async (request: IncomingMessage, path: string): Promise<Answer> => {
    // HEAD is answered with what GET would be, so the file is read for it too. For Cache-Control the
    // library sends again what the browser has; If-None-Match says better whether it needs that.
    const asGet: IncomingMessage = Object.create(request, {
      method: { value: 'GET' },
      headers: { value: { ...request.headers, 'cache-control': '' } },
    });
    const look = (at: string) =>
      // Ranges are ours: the library refuses the last 99 bytes of a file of 10.
      send(asGet, at, { root: dir, dotfiles: 'ignore', cacheControl: false, acceptRanges: false });
    const first = await look(path);
    const found = first.type !== 'file' && isPlace(path) ? await look('/') : first;
    if (found.type !== 'file') {
      // A folder's name (301) and a way out of the folder (403) are no files either.
      return refusal([301, 403].includes(found.statusCode) ? 404 : found.statusCode);
    }
    const {
      ETag: version = '',
      'Content-Type': type = '',
      'Last-Modified': modified,
    } = found.headers;
    const { path: place, stat } = found.metadata;
    const headers = {
      ETag: version,
      'Last-Modified': modified,
      'Cache-Control': cacheControl(relative(dir, place)),
      Vary: 'Accept-Encoding',
    };
    if (found.statusCode === 304) return { status: 304, headers, body: '' };
    const bytes = await read(found.stream, stat.size);
    const whole = { ...headers, 'Content-Type': type, 'Accept-Ranges': 'bytes' };
    return partOf(request, { path: place, version, type, bytes }, whole);
  };

  return async (request: IncomingMessage): Promise<Answer> => {
    const refused = refusedName(request);
    if (refused !== null) return refused;
    if (request.method !== 'GET' && request.method !== 'HEAD')
      return refusal(405, { headers: { Allow: 'GET, HEAD' } });
    const path = pathOf(request);
    if (path === null) return refusal(400);
    try {
      return await fileAt(request, path);
    } catch (error) {
      return refusal((error as NodeJS.ErrnoException).code === 'ENOENT' ? 404 : 500);
    }
  };
};
