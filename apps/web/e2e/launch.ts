import { execFileSync } from 'node:child_process';
import { type BrowserContext, chromium } from 'playwright-core';
import { CHROMIUM_ARGS } from '../../../scripts/lib/chromium.mjs';

export const PHONE = { width: 390, height: 844 };

export const LAUNCH = {
  executablePath: process.env.CHROMIUM_PATH ?? '/usr/bin/chromium',
  args: CHROMIUM_ARGS,
};

/** A browser whose storage lies in a folder, so that it can be killed and started again. */
export const openProfile = (folder: string): Promise<BrowserContext> =>
  chromium.launchPersistentContext(folder, { ...LAUNCH, viewport: PHONE, locale: 'en-GB' });

/** The processes of a browser on that profile, killed without warning. */
export const killBrowser = (profile: string): void => {
  const lines = execFileSync('ps', ['-eo', 'pid=,args=']).toString().split('\n');
  const pids = lines
    .filter((line) => line.includes(`--user-data-dir=${profile}`))
    .map((line) => Number.parseInt(line, 10));
  if (pids.length === 0) throw new Error(`no browser runs on ${profile}`);
  for (const pid of pids) {
    try {
      process.kill(pid, 'SIGKILL');
    } catch {
      // Gone with its parent.
    }
  }
};
