import { chromium, type Page } from 'playwright-core';
import * as Y from 'yjs';
import type { Figure } from '../../../scripts/lib/figures.mjs';
import { ROOT } from '../../../scripts/lib/root.mjs';
import { buildWeb, webDist } from '../../../scripts/lib/web-build.mjs';
import { beginGarment, openId } from './garments.ts';
import { killWhileTyping } from './kill.ts';
import { LAUNCH, PHONE } from './launch.ts';
import { serveFolder } from './serve.ts';
import { putRaw, type Silence, silence, untilKept } from './storage.ts';

/** Kills of a small run and of a full one, half of them with writes that fail. */
const KILLS = { small: 6, full: 300 };

/** What storage does to what was typed: a browser killed, writes that fail, no answer, entries that nobody can read. */
export async function* figures(full: boolean): AsyncGenerator<Figure> {
  if (!(await buildWeb(ROOT, { quiet: true }))) throw new Error('the app could not be built');
  yield* killed(full ? KILLS.full : KILLS.small);
  yield* unanswered();
  yield* besideStrays(full ? 40 : 4);
}

async function* killed(kills: number): AsyncGenerator<Figure> {
  const plain = await killWhileTyping(webDist(ROOT), { kills: kills / 2, abort: false });
  const failing = await killWhileTyping(webDist(ROOT), { kills: kills / 2, abort: true });
  yield {
    name: 'kills of the browser while somebody types',
    value: plain.kills + failing.kills,
    unit: '',
    goal: { least: kills },
  };
  for (const [what, { kills: of, acknowledged, lost }] of [
    ['no write failing', plain],
    ['half of all writes made to fail', failing],
  ] as const) {
    for (const line of lost) console.error(line);
    yield {
      name: `kills before which something was acknowledged, of ${of}, ${what}`,
      value: acknowledged,
      unit: '',
      // Some come before the first key has gone to the disk.
      goal: { least: of / 2 },
    };
    yield {
      name: `acknowledged values lost in ${of} kills, ${what}`,
      value: lost.length,
      unit: '',
      goal: { exactly: 0 },
    };
  }
}

/** The app in a browser of its own. */
const visiting = async <T>(visit: (page: Page) => Promise<T>): Promise<T> => {
  const served = await serveFolder(webDist(ROOT));
  const browser = await chromium.launch(LAUNCH);
  try {
    const context = await browser.newContext({ viewport: PHONE, locale: 'en-GB' });
    const page = await context.newPage();
    await page.goto(served.address);
    return await visit(page);
  } finally {
    await browser.close();
    await served.stop();
  }
};

const SILENT: readonly (readonly [string, Silence])[] = [
  ['opening no database', { of: 'dryflat', what: 'open', list: true }],
  ['reading no shelf', { of: 'dryflat-shelf', what: 'read', list: false }],
];

async function* unanswered(): AsyncGenerator<Figure> {
  for (const [what, silent] of SILENT)
    yield {
      name: `from opening the app to a page that says so, where storage answers ${what}`,
      value: await visiting(async (first) => {
        const page = await first.context().newPage();
        await silence(page, silent);
        const began = performance.now();
        await page.goto(first.url());
        await page.getByRole('heading', { level: 1, name: 'Your shelf does not open' }).waitFor();
        await page.getByRole('button', { name: 'Try again' }).waitFor();
        return (performance.now() - began) / 1000;
      }),
      unit: 's',
      goal: { most: 5 },
    };
}

/** An update with something in it that the app does not read. */
const foreign = (): readonly number[] => {
  const doc = new Y.Doc();
  doc.getMap('record').set('foreign', 'x'.repeat(40));
  return [...Y.encodeStateAsUpdate(doc)];
};

/** Stray entries of every kind: bytes, an update cut at each length, values that are no bytes. */
const straysFrom = (update: readonly number[]) => [
  { bytes: [1, 2, 3] },
  ...update.map((_, length) => ({ bytes: update.slice(0, length) })),
  ...['text', 7, null, true, {}, [[0]], { record: { name: 'x' } }].map((value) => ({ value })),
];

async function* besideStrays(garments: number): AsyncGenerator<Figure> {
  const strays = straysFrom(foreign());
  const opened = await visiting(async (page) => {
    const shelf = page.url();
    const ids: string[] = [];
    for (let garment = 0; garment < garments; garment += 1) {
      await page.goto(`${shelf}#/`);
      await beginGarment(page, `Garment ${garment}`);
      await untilKept(page);
      ids.push(openId(page));
    }
    await putRaw(page, 'dryflat-shelf', strays);
    for (const id of ids) await putRaw(page, `dryflat-garment-${id}`, strays);
    let open = 0;
    for (const [garment, id] of ids.entries()) {
      await page.goto(`${shelf}#/`);
      await page.reload();
      await page.getByRole('link', { name: new RegExp(`^Garment ${garment}\\b`) }).click();
      await page.getByText('of this garment could not be read').waitFor();
      const heading = page.getByRole('heading', { level: 1, name: `Garment ${garment}` });
      if (openId(page) === id && (await heading.isVisible())) open += 1;
    }
    return open;
  });
  yield {
    name: `garments that open beside ${strays.length} entries that cannot be read, of ${garments}`,
    value: opened,
    unit: '',
    goal: { exactly: garments },
  };
}
