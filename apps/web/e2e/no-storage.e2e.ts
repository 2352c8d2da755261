import { expect, test } from 'vitest';
import { beginGarment, benchHere } from './harness.ts';
import { keeping } from './storage.ts';

const at = benchHere();

/** What a browser may lack or forbid, as a script that runs before the page's own. */
const LACKS: Readonly<Record<string, () => void>> = {
  'localStorage throws when it is named': () => {
    Object.defineProperty(window, 'localStorage', {
      get: () => {
        throw new DOMException('forbidden', 'SecurityError');
      },
    });
  },
  'localStorage is null': () => {
    Object.defineProperty(window, 'localStorage', { value: null });
  },
  'localStorage throws when it is used': () => {
    for (const method of ['getItem', 'setItem', 'removeItem', 'key', 'clear'] as const)
      Storage.prototype[method] = () => {
        throw new DOMException('forbidden', 'SecurityError');
      };
  },
  'indexedDB is missing': () => {
    Object.defineProperty(window, 'indexedDB', { value: undefined });
  },
  'indexedDB throws when it is named': () => {
    Object.defineProperty(window, 'indexedDB', {
      get: () => {
        throw new DOMException('forbidden', 'SecurityError');
      },
    });
  },
  'indexedDB throws when it is opened': () => {
    IDBFactory.prototype.open = () => {
      throw new DOMException('forbidden', 'SecurityError');
    };
  },
  'navigator.storage is missing': () => {
    Object.defineProperty(navigator, 'storage', { value: undefined });
  },
  'navigator.storage throws': () => {
    Object.defineProperty(navigator, 'storage', {
      get: () => {
        throw new DOMException('forbidden', 'SecurityError');
      },
    });
  },
  'BroadcastChannel throws': () => {
    window.BroadcastChannel = class {
      constructor() {
        throw new DOMException('forbidden', 'SecurityError');
      }
    } as unknown as typeof BroadcastChannel;
  },
  'BroadcastChannel is missing': () => {
    Object.defineProperty(window, 'BroadcastChannel', { value: undefined });
  },
  'service workers throw': () => {
    Object.defineProperty(navigator, 'serviceWorker', {
      get: () => {
        throw new DOMException('forbidden', 'SecurityError');
      },
    });
  },
  'a media query cannot be listened to': () => {
    Object.defineProperty(MediaQueryList.prototype, 'addEventListener', { value: undefined });
    Object.defineProperty(MediaQueryList.prototype, 'removeEventListener', { value: undefined });
  },
};

for (const [lack, script] of Object.entries(LACKS))
  test(`B39: it works where ${lack}`, async () => {
    const page = await at.open();
    await page.addInitScript(script);
    await page.reload();
    await page.getByRole('button', { name: 'Begin a garment' }).click();
    await page.getByLabel('What do you call it?').fill('Hat for the quay');
    // A name outlives its dialog.
    await page.keyboard.press('Escape');
    await beginGarment(page, 'Hat for the quay');
    const kept = /indexedDB/.test(lack) ? /^This browser keeps nothing/ : /^Kept on this device/;
    await page.getByRole('link', { name: 'Pattern' }).click();
    await expect.poll(() => keeping(page)).toMatch(kept);
    await page.getByRole('link', { name: 'Shelf' }).click();
    await page.getByRole('link', { name: 'Settings' }).click();
    await page.getByText('Dark').click();
    await expect
      .poll(() => page.evaluate(() => document.documentElement.dataset.theme))
      .toBe('dark');
    await page.getByRole('button', { name: 'Delete everything here' }).click();
    await page.getByRole('button', { name: 'Delete everything', exact: true }).click();
    await page.getByRole('heading', { name: 'What will it measure when it is dry?' }).waitFor();
  });
