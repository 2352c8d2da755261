import type { Figure } from '../../../scripts/lib/figures.mjs';
import { ROOT } from '../../../scripts/lib/root.mjs';
import { buildWeb, webDist } from '../../../scripts/lib/web-build.mjs';
import { type Serving, serve } from './serve.ts';
import { builtApp } from './testing/built-app.ts';
import { exchange } from './testing/exchange.ts';
import { hostileRun } from './testing/hostile.ts';

const portOf = ({ url }: Serving): number => Number(new URL(url).port);

const hostile = async (count: number) => {
  const app = await builtApp();
  const serving = await serve({ dir: app.dir, port: 0 });
  const tally = await hostileRun(portOf(serving), count, 20_261_130);
  const page = await fetch(serving.url);
  await serving.close();
  await app.remove();
  return { ...tally, stopped: tally.stopped + (page.status === 200 ? 0 : 1) };
};

/** Bytes of what the page itself names, script and style, and of the page, as they are sent. */
const firstLoad = async (serving: Serving, coding: string): Promise<number> => {
  const page = await (await fetch(serving.url)).text();
  const named = [...page.matchAll(/(?:src|href)="(\/[^"]+\.(?:js|css))"/g)].map(([, path]) => path);
  if (named.length === 0) throw new Error('the page names no script');
  let bytes = 0;
  for (const path of ['/', ...named]) {
    const host = new URL(serving.url).host;
    const text = `GET ${path} HTTP/1.1\r\nHost: ${host}\r\nConnection: close\r\nAccept-Encoding: ${coding}\r\n\r\n`;
    const [head = '', body = ''] = (await exchange({ port: portOf(serving), text })).text.split(
      /\r\n\r\n(.*)/s,
    );
    if (!head.startsWith('HTTP/1.1 200')) throw new Error(`${path} was answered with ${head}`);
    bytes += body.length;
  }
  return bytes;
};

/** What the server withstands, and what it spares the browser. */
export async function* figures(full: boolean): AsyncIterable<Figure> {
  const { sent, stopped, answers, bare } = await hostile(full ? 20_000 : 2_000);
  yield {
    name: `hostile requests that ended or hung the server, of ${sent}`,
    value: stopped,
    unit: '',
    goal: { exactly: 0 },
  };
  yield {
    name: `answers without a header of safety, of ${answers} to those`,
    value: bare,
    unit: '',
    goal: { exactly: 0 },
  };
  if (!(await buildWeb(ROOT, { quiet: true }))) throw new Error('the app could not be built');
  const serving = await serve({ dir: webDist(ROOT), port: 0 });
  const share = (await firstLoad(serving, 'br')) / (await firstLoad(serving, 'identity'));
  await serving.close();
  yield {
    name: 'bytes of the first load as they are sent, of those in its files',
    value: share,
    unit: '',
    // Script and style pack to a third or less; more would mean that a large one went unpacked.
    goal: { most: 0.4 },
  };
}
