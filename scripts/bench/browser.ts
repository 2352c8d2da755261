import { pathToFileURL } from 'node:url';
import { type Browser, chromium } from 'playwright-core';
import { bundled } from '../lib/bundled.mjs';
import { CHROMIUM_ARGS, chromiumAdvice, findChromium } from '../lib/chromium.mjs';
import { ROOT } from '../lib/root.mjs';
import { buildWeb, webDist } from '../lib/web-build.mjs';

export interface Visit {
  readonly browser: Browser;
  readonly url: string;
}

/** The built app on loopback and a browser to visit it with; both are closed afterwards. */
export const visiting = async <T>(visit: (visit: Visit) => Promise<T>): Promise<T> => {
  const executablePath = findChromium();
  if (executablePath === null) throw new Error(chromiumAdvice());
  if (!(await buildWeb(ROOT, { quiet: true }))) throw new Error('the app could not be built');
  const made = await bundled('apps/server/src/index.ts', 'apps/server/dist/server.mjs');
  const { serve }: typeof import('../../apps/server/src/index.ts') = await import(
    pathToFileURL(made).href
  );
  const serving = await serve({ dir: webDist(ROOT), port: 0 });
  const browser = await chromium.launch({ executablePath, args: CHROMIUM_ARGS });
  try {
    return await visit({ browser, url: serving.url });
  } finally {
    await browser.close();
    await serving.close();
  }
};
