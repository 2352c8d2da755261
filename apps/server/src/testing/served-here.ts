import { afterEach, beforeEach } from 'vitest';
import { type Serving, serve } from '../serve.ts';
import { type BuiltApp, builtApp } from './built-app.ts';
import { exchange } from './exchange.ts';

/** A built app and its server, made anew for each test of a file. */
export const servedHere = () => {
  let app: BuiltApp;
  let serving: Serving;
  beforeEach(async () => {
    app = await builtApp();
    serving = await serve({ dir: app.dir, port: 0 });
  });
  afterEach(async () => {
    await serving.close();
    await app.remove();
  });
  const port = (): number => Number(new URL(serving.url).port);
  return {
    dir: (): string => app.dir,
    url: (): string => serving.url,
    port,
    get: (path: string, init?: RequestInit): Promise<Response> =>
      fetch(`${serving.url}${path}`, init),
    /** What comes back on a text as it stands; `SERVER` in it becomes this server's name. */
    raw: async (text: string): Promise<string> => {
      const sent = text.replaceAll('SERVER', `127.0.0.1:${port()}`);
      return (await exchange({ port: port(), text: sent })).text;
    },
  };
};
