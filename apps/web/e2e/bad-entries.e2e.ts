import { randomBytes } from 'node:crypto';
import { mkdtemp, readdir, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import * as Y from 'yjs';
import { openId } from './garments.ts';
import { beginGarment, benchHere, DIST, isSound, openProfile, PHONE } from './harness.ts';
import { serveFolder } from './serve.ts';
import { putRaw, untilKept } from './storage.ts';

const at = benchHere();

const update = (edit: (doc: Y.Doc) => void): { readonly bytes: readonly number[] } => {
  const doc = new Y.Doc();
  edit(doc);
  return { bytes: [...Y.encodeStateAsUpdate(doc)] };
};
const whole = update((doc) => doc.getMap('record').set('note', 'cut short'));

/** What no version of the app wrote. */
const STRAY = [
  { bytes: [1, 2, 3] },
  { bytes: [] },
  { bytes: whole.bytes.slice(0, -4) },
  { value: 'a text' },
  { value: { record: { name: 'Vest' } } },
  { value: null },
  { value: 7 },
];

const downloaded = async (page: Page, press: () => Promise<void>): Promise<string> => {
  const [download] = await Promise.all([page.waitForEvent('download'), press()]);
  return readFile(await download.path(), 'utf8');
};

test('B34: stray entries lock nothing out; they are told, saved as a file, and removed when asked', async () => {
  const page = await at.open({ acceptDownloads: true });
  await beginGarment(page, 'Vest');
  await untilKept(page);
  const garment = page.url();
  await putRaw(page, 'dryflat-shelf', STRAY);
  await putRaw(page, `dryflat-garment-${openId(page)}`, STRAY);
  await page.reload();
  await page.getByRole('heading', { level: 1, name: 'Vest' }).waitFor();
  await page.getByText('7 entries of this garment could not be read').waitFor();
  await page.getByRole('button', { name: 'More for this garment' }).click();
  await page.getByRole('dialog').getByLabel('Name').fill('Vest after all');
  await page.keyboard.press('Escape');
  await untilKept(page);

  await page.getByRole('link', { name: 'Shelf' }).click();
  await page.getByText('7 entries of this shelf could not be read').waitFor();
  await isSound(page);
  const text = await downloaded(page, () =>
    page.getByRole('button', { name: 'Save them as a file' }).click(),
  );
  const { of, entries } = JSON.parse(text);
  expect(of).toBe('dryflat-shelf');
  expect(entries.map(({ number: _, ...entry }: { number: number }) => entry)).toEqual([
    { base64: 'AQID' },
    { base64: '' },
    { base64: Buffer.from(STRAY[2]?.bytes ?? []).toString('base64') },
    { value: 'a text' },
    { value: { record: { name: 'Vest' } } },
    { value: null },
    { value: 7 },
  ]);
  await page.getByRole('link', { name: 'Settings' }).click();
  await page.getByRole('heading', { level: 1, name: 'Settings' }).waitFor();
  await page.goBack();
  await page.reload();
  await page.getByRole('link', { name: /Vest after all/ }).waitFor();
  await downloaded(page, () => page.getByRole('button', { name: 'Save them as a file' }).click());
  await page.getByRole('button', { name: 'Remove them here' }).click();
  await expect.poll(() => page.getByText('could not be read').count()).toBe(0);
  await page.reload();
  await page.getByRole('link', { name: /Vest after all/ }).waitFor();
  expect(await page.getByText('could not be read').count()).toBe(0);
  await page.goto(garment);
  await page.getByText('7 entries of this garment could not be read').waitFor();
});

/** Cuts an entry of a database short, the one at that place in their order. */
const cutShort = (page: Page, database: string, place: number): Promise<void> =>
  page.evaluate(
    async ([name, index]) => {
      const db = await new Promise<IDBDatabase>((resolve) => {
        const request = indexedDB.open(name);
        request.onsuccess = () => resolve(request.result);
      });
      const transaction = db.transaction('updates', 'readwrite');
      const store = transaction.objectStore('updates');
      const keys = store.getAllKeys();
      const values = store.getAll();
      values.onsuccess = () => {
        const value: Uint8Array = values.result[index];
        store.put(value.slice(0, value.length - 3), keys.result[index]);
      };
      await new Promise((done) => {
        transaction.oncomplete = done;
      });
      db.close();
    },
    [database, place] as const,
  );

test('B35: garments whose line on the shelf is damaged are put back on it', async () => {
  const page = await at.open();
  for (const name of ['First', 'Second', 'Third']) {
    await page.goto(`${at.address}#/`);
    await beginGarment(page, name);
    await untilKept(page);
  }
  // The first edit of the shelf is its first garment; the others of this visit follow on it.
  await cutShort(page, 'dryflat-shelf', 0);
  await page.goto(`${at.address}#/`);
  await page.reload();
  for (const name of ['First', 'Second', 'Third'])
    await page.getByRole('link', { name: new RegExp(name) }).waitFor();
  await page.getByText('One entry of this shelf could not be read').waitFor();
});

test('B35: of a garment that nothing can be read of, the page says so and saves what there is', async () => {
  const page = await at.open({ acceptDownloads: true });
  await putRaw(page, 'dryflat-garment-lost', [{ bytes: [1, 2, 3] }]);
  await page.goto(`${at.address}#/garment/lost/forecast`);
  await page.getByText('This garment cannot be read').waitFor();
  await isSound(page);
  const text = await downloaded(page, () =>
    page.getByRole('button', { name: 'Save it as a file' }).click(),
  );
  expect(JSON.parse(text).entries).toEqual([{ number: 1, base64: 'AQID' }]);
});

/** Chromium keeps what is large in files of its own, beside the database. */
const largeFiles = async (profile: string): Promise<string[]> => {
  const folder = join(profile, 'Default', 'IndexedDB');
  const entries = await readdir(folder, { recursive: true, withFileTypes: true });
  return entries
    .filter((entry) => entry.isFile() && entry.parentPath.includes('.indexeddb.blob'))
    .map((entry) => join(entry.parentPath, entry.name));
};

test('B34: an entry that the browser itself lost on its disk is left out, and the rest opens', async () => {
  const profile = await mkdtemp(join(tmpdir(), 'dryflat-profile-'));
  const served = await serveFolder(DIST);
  const first = await openProfile(profile);
  const page = first.pages()[0] ?? (await first.newPage());
  await page.goto(served.address);
  await beginGarment(page, 'Vest with a picture');
  await untilKept(page);
  const address = page.url();
  // Bytes that cannot be packed into less.
  const picture = randomBytes(200_000).toString('base64');
  await putRaw(page, `dryflat-garment-${openId(page)}`, [
    update((doc) => doc.getMap('file').set('picture', picture)),
  ]);
  await first.close();
  const lost = await largeFiles(profile);
  expect(lost).not.toEqual([]);
  for (const file of lost) await rm(file);

  const second = await openProfile(profile);
  const again = second.pages()[0] ?? (await second.newPage());
  await again.goto(address);
  await again.getByText('One entry of this garment could not be read').waitFor();
  await again.getByRole('heading', { level: 1, name: 'Vest with a picture' }).waitFor();
  await second.close();
  await served.stop();
  await rm(profile, { recursive: true, force: true, maxRetries: 5, retryDelay: 200 });
});

const JUNK: readonly Readonly<Record<string, unknown>>[] = [
  { junk: 1 },
  { name: { first: 'Vest' }, kind: 'vest' },
  {
    format: 'dryflat-garment',
    version: 3,
    name: 'Vest',
    wearer: 'Ada',
    pattern: null,
    evidence: 'abc',
  },
  { format: 'dryflat-garment', version: 2, name: 'Vest' },
  { name: 7, kind: 7, wearer: { name: [] }, pattern: {}, onMat: 'x' },
];

test('B36: a record of the wrong shape opens to a page that says what is wrong, and its file', async () => {
  // What breaks while it is drawn is on the console too, which the bench takes for a fault.
  const context = await at.browser.newContext({ acceptDownloads: true, viewport: PHONE });
  const page = await context.newPage();
  await page.goto(at.address);
  await beginGarment(page, 'Sound');
  await untilKept(page);
  for (const [i, junk] of JUNK.entries()) {
    const record = update((doc) => {
      for (const [key, value] of Object.entries(junk)) doc.getMap('record').set(key, value);
    });
    const line = update((doc) =>
      doc.getMap('garments').set(`junk-${i}`, i % 2 === 0 ? i : new Y.Map([['name', junk.name]])),
    );
    await putRaw(page, `dryflat-garment-junk-${i}`, [record]);
    await putRaw(page, 'dryflat-shelf', [line]);
  }
  await page.reload();
  for (const [i, junk] of JUNK.entries()) {
    await page.goto(`${at.address}#/garment/junk-${i}/wearer`);
    await page.getByRole('heading', { level: 1, name: 'This garment cannot be read' }).waitFor();
    if (i === 0) await isSound(page);
    const text = await downloaded(page, () =>
      page.getByRole('button', { name: 'Save what is there as a file' }).click(),
    );
    expect(JSON.parse(text)).toEqual(junk);
  }
  await page.getByRole('link', { name: 'Go to the shelf' }).click();
  await page.getByRole('link', { name: /Sound/ }).click();
  await page.getByRole('heading', { level: 1, name: 'Sound' }).waitFor();
  await context.close();
});

test('B37: what another tab says that is no update changes nothing and breaks nothing', async () => {
  const page = await at.open();
  await beginGarment(page, 'Vest');
  const other = await page.context().newPage();
  await other.goto(`${at.address}icon.svg`);
  await other.evaluate(
    ([names, stray]) => {
      for (const name of names) {
        const channel = new BroadcastChannel(name);
        for (const each of stray)
          channel.postMessage('bytes' in each ? new Uint8Array(each.bytes) : each.value);
        channel.close();
      }
    },
    [['dryflat-shelf', `dryflat-garment-${openId(page)}`], STRAY] as const,
  );
  await page.getByRole('button', { name: 'More for this garment' }).click();
  await page.getByRole('dialog').getByLabel('Name').fill('Vest for Ada');
  await page.keyboard.press('Escape');
  await page.getByRole('heading', { level: 1, name: 'Vest for Ada' }).waitFor();
  await untilKept(page);
});
