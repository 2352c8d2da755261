import { cp, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { benchHere, DIST, openExample, PHONE } from './harness.ts';
import { serveFolder } from './serve.ts';

const at = benchHere();

const copyKept = (page: Page): Promise<void> =>
  page.evaluate(async () => {
    const registration = await navigator.serviceWorker.ready;
    if (registration.active?.state === 'activated') return;
    await new Promise((done) =>
      registration.active?.addEventListener('statechange', () => done(null)),
    );
  });

test('B16: after one visit everything works without a network, forecast and unopened places too', async () => {
  const page = await at.open();
  await copyKept(page);
  await page.context().setOffline(true);
  await page.reload();
  await openExample(page, 'Sluice shawl');
  const line = page.getByRole('navigation').getByRole('link', { name: /^Forecast:/ });
  await expect.poll(() => line.textContent(), { timeout: 10_000 }).toMatch(/ cm|in 100|to mend/);
  for (const place of [
    'Wearer',
    'Pattern',
    'Yarn',
    'Evidence',
    'Routes',
    'Counts',
    'Pieces',
    'Pace',
    'Mat',
    'Dry',
    'After',
    'Paper',
    'Report',
  ]) {
    await page.getByRole('link', { name: place, exact: true }).click();
    await page.getByRole('heading', { level: 2 }).first().waitFor();
  }
});

test('B28: what is inside is told with its licences, without a network too', async () => {
  const page = await at.open();
  await copyKept(page);
  await page.context().setOffline(true);
  await page.reload();
  await page.goto(`${at.address}#/settings`);
  await page.getByRole('button', { name: 'Licences of what is inside' }).click();
  const text = page.getByText('What is inside Dryflat');
  await text.waitFor();
  expect(await text.textContent()).toMatch(
    /\n@fontsource\/open-sans \d.*: OFL-1\.1\n[\s\S]*\nreact \d/,
  );
});

test('B17: a newer version is offered and taken only when asked for', async () => {
  const folder = await mkdtemp(join(tmpdir(), 'dryflat-dist-'));
  await cp(DIST, folder, { recursive: true });
  const served = await serveFolder(folder);
  const context = await at.browser.newContext({ viewport: PHONE });
  const page = await context.newPage();
  await page.goto(served.address);
  await copyKept(page);
  await page.reload();
  await page.evaluate(() => {
    (window as unknown as { stayed: boolean }).stayed = true;
  });
  const worker = join(folder, 'sw.js');
  await writeFile(worker, `${await readFile(worker, 'utf8')}\n// newer`);
  await page.evaluate(async () => (await navigator.serviceWorker.ready).update());
  const take = page.getByRole('button', { name: 'Use it now' });
  await take.waitFor();
  expect(await page.evaluate(() => 'stayed' in window)).toBe(true);
  await Promise.all([page.waitForEvent('load'), take.click()]);
  expect(await page.evaluate(() => 'stayed' in window)).toBe(false);
  await context.close();
  await served.stop();
  await rm(folder, { recursive: true, force: true });
});

test('B18: the app can be installed: a manifest with a name, a start and icons that exist', async () => {
  const page = await at.open();
  const found = await page.evaluate(async () => {
    const link = document.querySelector<HTMLLinkElement>('link[rel=manifest]');
    const manifest = await (await fetch(link?.href ?? '')).json();
    const icons = await Promise.all(
      manifest.icons.map(async (icon: { src: string; sizes: string }) => {
        const picture = await createImageBitmap(await (await fetch(icon.src)).blob());
        return `${picture.width}x${picture.height}` === icon.sizes;
      }),
    );
    return { name: manifest.name, start: manifest.start_url, display: manifest.display, icons };
  });
  expect(found).toEqual({
    name: 'Dryflat',
    start: '/',
    display: 'standalone',
    icons: [true, true, true],
  });
});
