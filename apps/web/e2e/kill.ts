import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { BrowserContext, Page } from 'playwright-core';
import { beginGarment } from './garments.ts';
import { killBrowser, openProfile } from './launch.ts';
import { serveFolder } from './serve.ts';
import { untilKept } from './storage.ts';

export interface Killed {
  readonly kills: number;
  /** Kills before which something typed since the last one had been acknowledged. */
  readonly acknowledged: number;
  /** What was acknowledged and not there after the restart, one line each. */
  readonly lost: readonly string[];
  /** Writes of garment or shelf that were made to fail. */
  readonly aborted: number;
}

/** What stood in each field when something was acknowledged, by the label of the field. */
type Stand = Readonly<Record<string, string>>;

/** The name goes to the garment and to the shelf at each key; the chest is no number, and kept as typed. */
const FIELDS = ['Name', 'Chest'] as const;
type Field = (typeof FIELDS)[number];

/**
 * Kills a browser so many times while somebody types, each time on the same profile, and compares what was
 * acknowledged with what is there after the restart. Acknowledged is what a completed transaction or the
 * words "Kept on this device" came after. `folder`: of the built app. `abort`: half of all writes fail.
 */
export const killWhileTyping = async (
  folder: string,
  { kills, abort, onKill = () => {} }: { kills: number; abort: boolean; onKill?: () => void },
): Promise<Killed> => {
  const profile = await mkdtemp(join(tmpdir(), 'dryflat-kill-'));
  const served = await serveFolder(folder);
  const random = seeded(abort ? 2 : 1);
  const lost: string[] = [];
  let acknowledged = 0;
  let aborted = 0;
  let stand: Stand = {};
  let address = `${served.address}#/`;

  const visit = async (): Promise<{ browser: BrowserContext; page: Page }> => {
    const browser = await openProfile(profile);
    const page = browser.pages()[0] ?? (await browser.newPage());
    await page.exposeFunction('acknowledge', (now: Stand) => {
      stand = { ...stand, ...now };
    });
    await page.exposeFunction('noteAbort', () => {
      aborted += 1;
    });
    await page.addInitScript(listenIn, { fields: FIELDS, abort, seed: seedOf(random) });
    await page.goto(address);
    return { browser, page };
  };

  try {
    let { browser, page } = await visit();
    address = await begin(page);
    for (let kill = 0; kill <= kills; kill += 1) {
      await field(page, 'Chest').waitFor();
      lost.push(...(await lostSince(page, stand)).map((line) => `kill ${kill}: ${line}`));
      if (kill === kills) break;
      const before = stand;
      const typing = typeInto(page, kill).catch(() => {});
      await new Promise((done) => setTimeout(done, 150 + 500 * random()));
      killBrowser(profile);
      await typing;
      await browser.close().catch(() => {});
      if (FIELDS.some((each) => stand[each] !== before[each])) acknowledged += 1;
      onKill();
      ({ browser, page } = await visit());
    }
    await browser.close();
  } finally {
    await served.stop();
    await rm(profile, { recursive: true, force: true, maxRetries: 5, retryDelay: 200 });
  }
  return { kills, acknowledged, lost, aborted };
};

const field = (page: Page, name: Field) =>
  page.getByRole('textbox', { name: new RegExp(`^${name}\\b`) }).first();

/** A garment for a child, at its wearer; gives the address. */
const begin = async (page: Page): Promise<string> => {
  await beginGarment(page, 'Typed and killed');
  await page.getByText('A child', { exact: true }).click();
  await field(page, 'Chest').waitFor();
  await untilKept(page);
  return page.url();
};

const LETTERS = 'abcdefghijklmnopqrstuvwxyz';

/** What is typed before a kill: the number of the kill, then letters. No two kills type the same. */
const textOf = (kill: number): string => `${kill}:${LETTERS}`;

const typeInto = async (page: Page, kill: number): Promise<void> => {
  for (const each of kill % 2 === 0 ? FIELDS : [...FIELDS].reverse()) {
    await field(page, each).fill(`${kill}:`);
    await page.keyboard.type(LETTERS);
  }
};

/** What is there has to be what was acknowledged, or something typed after it. */
const lostSince = async (page: Page, stand: Stand): Promise<string[]> => {
  const lost: string[] = [];
  for (const name of FIELDS) {
    const wanted = stand[name];
    if (wanted === undefined) continue;
    const there = await field(page, name).inputValue();
    if (!isAtLeast(there, wanted))
      lost.push(`${name}: “${wanted}” was acknowledged, “${there}” is there`);
  }
  return lost;
};

const isAtLeast = (there: string, wanted: string): boolean => {
  const [kill, since] = [there, wanted].map((text) => Number.parseInt(text, 10));
  if (kill === undefined || since === undefined || !textOf(kill).startsWith(there)) return false;
  return kill > since || (kill === since && there.length >= wanted.length);
};

/**
 * Runs in the page before its own scripts: tells what is acknowledged, and lets writes fail. Standing in the
 * fields when a write is sent is what its completion acknowledges.
 */
const listenIn = ({
  fields,
  abort,
  seed,
}: {
  fields: readonly string[];
  abort: boolean;
  seed: number;
}): void => {
  const page = window as unknown as {
    acknowledge: (stand: Record<string, string>) => void;
    noteAbort: () => void;
  };
  const standing = (): Record<string, string> =>
    Object.fromEntries(
      [...document.querySelectorAll('label')].flatMap((label) => {
        const name = label.firstChild?.textContent ?? '';
        const { control } = label;
        const isOne = fields.includes(name) && control instanceof HTMLInputElement;
        return isOne && control.value.includes(':') ? [[name, control.value]] : [];
      }),
    );
  let state = seed;
  const random = (): number => {
    state = (state * 16807) % 2147483647;
    return state / 2147483647;
  };
  const { transaction } = IDBDatabase.prototype;
  IDBDatabase.prototype.transaction = function (...args: Parameters<typeof transaction>) {
    const made = transaction.apply(this, args);
    if (made.mode !== 'readwrite') return made;
    const stand = standing();
    // Not before the first key, so that there is a garment to come back to whatever is lost.
    if (abort && Object.keys(stand).length > 0 && random() < 0.5) {
      made.commit = () => {
        made.abort();
        page.noteAbort();
      };
    } else if (this.name.startsWith('dryflat-garment'))
      made.addEventListener('complete', () => page.acknowledge(stand));
    return made;
  };
  let said = '';
  new MutationObserver(() => {
    const now = document.querySelector('.df-keeping')?.textContent ?? '';
    if (now !== said && now.startsWith('Kept')) page.acknowledge(standing());
    said = now;
  }).observe(document, { subtree: true, childList: true, characterData: true });
};

/** A seed for a generator elsewhere. */
const seedOf = (random: () => number): number => 1 + Math.floor(random() * 2147483645);

/** Numbers from 0 to 1, the same for the same seed (Park and Miller's generator). */
const seeded = (seed: number): (() => number) => {
  let state = seed;
  return () => {
    state = (state * 16807) % 2147483647;
    return state / 2147483647;
  };
};
