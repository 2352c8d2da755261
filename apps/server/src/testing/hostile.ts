import fc from 'fast-check';
import { type Exchange, exchange, type Sending } from './exchange.ts';

const oneOf = fc.constantFrom;

/** Bytes of any kind but those that end a line, so that what follows stays a header. */
const noise = fc
  .array(fc.integer({ min: 1, max: 255 }), { maxLength: 40 })
  .map((codes) => String.fromCharCode(...codes).replace(/[\r\n]/g, ''));

const position = fc.oneof(
  { weight: 4, arbitrary: fc.oneof(fc.nat(20).map(String), oneOf('')) },
  {
    weight: 1,
    arbitrary: oneOf('-1', '1e3', '0x1', '9007199254740993', '9'.repeat(400)),
  },
);
const range = fc.tuple(position, position).map(([from, to]) => `${from}-${to}`);
const ranges = fc.oneof(
  {
    weight: 3,
    arbitrary: oneOf('bytes=5-1', 'bytes=0-9007199254740993', 'bytes=10-9,0-1', 'bytes=-5'),
  },
  { weight: 6, arbitrary: range.map((one) => `bytes=${one}`) },
  {
    weight: 2,
    arbitrary: fc.array(range, { maxLength: 4 }).map((some) => `bytes=${some.join(',')}`),
  },
  { weight: 1, arbitrary: fc.tuple(noise, range).map((parts) => parts.join('=')) },
);

const coding = fc
  .tuple(oneOf('br', 'gzip', 'identity', '*', 'zstd', ''), oneOf('', ';q=0', ';q=1e9', ';q="', ';'))
  .map((parts) => parts.join(''));

const NAMES = [
  'Accept-Encoding',
  'Cache-Control',
  'Content-Length',
  'Expect',
  'If-Match',
  'If-Modified-Since',
  'If-None-Match',
  'If-Range',
  'Range',
  'Transfer-Encoding',
  'Upgrade',
];
const VALUES = [
  '*',
  '"a"',
  'W/"a-1"',
  '5',
  '-1',
  'chunked',
  '100-continue',
  'websocket',
  'no-cache',
];

/** Weights leave most requests sound but for one thing: two that are wrong hide each other. */
const header = fc.oneof(
  { weight: 12, arbitrary: ranges.map((value) => `Range: ${value}`) },
  {
    weight: 6,
    arbitrary: fc
      .array(coding, { maxLength: 6 })
      .map((each) => `Accept-Encoding: ${each.join(', ')}`),
  },
  {
    weight: 3,
    arbitrary: fc.tuple(oneOf(...NAMES), oneOf(...VALUES)).map((parts) => parts.join(': ')),
  },
  {
    weight: 1,
    arbitrary: fc.tuple(fc.oneof(oneOf(...NAMES), noise), noise).map((parts) => parts.join(': ')),
  },
  {
    weight: 1,
    arbitrary: oneOf(`X: ${'x'.repeat(20_000)}`, `Accept-Encoding: ${'a,'.repeat(7000)}`),
  },
);

const TARGETS = [
  '/%',
  '/%00',
  '/%2e%2e/secret.txt',
  '/..%2fsecret.txt',
  '/../secret.txt',
  '//../secret.txt',
  '/..\\secret.txt',
  '/..%5csecret.txt',
  '/%252e%252e/secret.txt',
  '/%c0%ae%c0%ae/secret.txt',
  '/.built-from',
  '/%2ebuilt-from',
  '/.vite/manifest.json',
  '/assets',
  '/assets/',
  '/gone.js',
  '*',
  '',
  'ten.txt',
  'http://SERVER/ten.txt',
  'http://elsewhere.example/',
  '//elsewhere.example/',
  `/${'a'.repeat(300)}`,
  '/a'.repeat(4000),
  `/${'%61'.repeat(3000)}`,
  `/?${'a'.repeat(9000)}`,
];
const target = fc.oneof(
  { weight: 6, arbitrary: oneOf('/', '/ten.txt', '/empty.txt', '/assets/app-1a2b3c.js') },
  { weight: 3, arbitrary: oneOf(...TARGETS) },
  { weight: 1, arbitrary: noise.map((text) => `/${text}`) },
);

const method = fc.oneof(
  { weight: 20, arbitrary: oneOf('GET', 'GET', 'HEAD') },
  { weight: 1, arbitrary: oneOf('POST', 'PUT', 'OPTIONS', 'TRACE', 'CONNECT', 'get', '', 'G ET') },
  { weight: 1, arbitrary: noise },
);
const version = fc.oneof(
  { weight: 30, arbitrary: oneOf('HTTP/1.1') },
  { weight: 1, arbitrary: oneOf('HTTP/1.0', 'HTTP/0.9', 'HTTP/2.0', 'HTTP/1.1x', '') },
);
const host = fc.oneof(
  { weight: 20, arbitrary: oneOf('Host: SERVER') },
  {
    weight: 1,
    arbitrary: oneOf('Host: elsewhere.example', 'Host:', 'X: x', 'Host: SERVER\r\nHost: a'),
  },
);

const request = fc
  .tuple(method, target, version, host, fc.array(header, { maxLength: 2 }))
  .map(([verb, at, as, name, others]) =>
    [`${verb} ${at} ${as}`, name, 'Connection: close', ...others, '', ''].join('\r\n'),
  );

/** A request that may follow a sound one on its connection, be cut short, or be left alone. */
const hostile = fc
  .tuple(
    request,
    oneOf('', '', '', 'GET / HTTP/1.1\r\nHost: SERVER\r\n\r\n'),
    oneOf('listen', 'listen', 'listen', 'half-close', 'leave'),
    fc.double({ min: 0, max: 1, noNaN: true }),
  )
  .map(([text, before, after, share]) => {
    const kept = after === 'half-close' ? text.slice(0, Math.floor(share * text.length)) : text;
    return { text: before + kept, after } as const;
  });

/** What a browser must be told by every answer, whatever was asked. */
const REQUIRED = [
  'content-security-policy',
  'cross-origin-opener-policy',
  'cross-origin-resource-policy',
  'permissions-policy',
  'referrer-policy',
  'x-content-type-options',
];

/** The heads of the answers that came back; no file of the built app has such a line in it. */
const headsIn = ({ text }: Exchange): string[] =>
  text
    .split(/(?=HTTP\/1\.1 \d{3} )/)
    .filter((part) => part !== '')
    .map((part) => part.split('\r\n\r\n', 1)[0]!.toLowerCase());

export interface Tally {
  readonly sent: number;
  /** Requests that would have ended the process, or were never answered. */
  readonly stopped: number;
  readonly answers: number;
  /** Answers that lack a header of safety. */
  readonly bare: number;
}

/** Connections open at a time. */
const AT_ONCE = 40;

/**
 * Sends requests that no browser would to a server in this process. What would end the process is
 * caught and counted, so that the run goes on to the next one.
 */
export const hostileRun = async (port: number, count: number, seed: number): Promise<Tally> => {
  const waiting: Omit<Sending, 'port'>[] = fc.sample(hostile, { numRuns: count, seed });
  let [stopped, answers, bare] = [0, 0, 0];
  const end = () => {
    stopped += 1;
  };
  process.on('uncaughtException', end).on('unhandledRejection', end);
  const client = async () => {
    for (let next = waiting.pop(); next !== undefined; next = waiting.pop()) {
      const text = next.text.replaceAll('SERVER', `127.0.0.1:${port}`);
      const back = await exchange({ ...next, port, text });
      if (next.after === 'leave') continue;
      const heads = headsIn(back);
      // Node ends a connection at CONNECT, with what is under way on it; so it may what is cut short.
      const mayBeSilent = next.after === 'half-close' || /^CONNECT /m.test(text);
      if (back.end === 'hung' || (heads.length === 0 && !mayBeSilent)) end();
      answers += heads.length;
      bare += heads.filter(
        (head) => !REQUIRED.every((name) => head.includes(`\r\n${name}: `)),
      ).length;
    }
  };
  await Promise.all(Array.from({ length: AT_ONCE }, client));
  process.off('uncaughtException', end).off('unhandledRejection', end);
  return { sent: count, stopped, answers, bare };
};
