import { execFileSync } from 'node:child_process';
import {
  closeSync,
  mkdirSync,
  mkdtempSync,
  openSync,
  rmSync,
  writeFileSync,
  writeSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** A file system of its own, so small that it can be filled. */
export interface SmallDisk {
  readonly folder: string;
  /** Leaves no space on it, and takes what becomes free, until `free`. */
  readonly fill: () => void;
  readonly free: () => void;
  readonly unmount: () => void;
}

/** Chromium's own files take about 12 MB of it. */
const SIZE = '64m';
/** Milliseconds between two looks for what became free. */
const EVERY = 20;

/** Null where this user may not mount. */
export const smallDisk = (): SmallDisk | null => {
  const folder = mkdtempSync(join(tmpdir(), 'dryflat-disk-'));
  try {
    execFileSync('mount', ['-t', 'tmpfs', '-o', `size=${SIZE}`, 'tmpfs', folder], {
      stdio: 'ignore',
    });
  } catch {
    rmSync(folder, { recursive: true });
    return null;
  }
  const filler = join(folder, 'filler');
  let filling: ReturnType<typeof setInterval> | undefined;
  return {
    folder,
    fill: () => {
      fillUp(filler);
      filling = setInterval(fillUp, EVERY, filler);
    },
    free: () => {
      clearInterval(filling);
      rmSync(filler, { force: true });
    },
    unmount: () => {
      clearInterval(filling);
      execFileSync('umount', ['--lazy', folder]);
      rmSync(folder, { recursive: true });
    },
  };
};

const fillUp = (filler: string): void => {
  const file = openSync(filler, 'a');
  for (const size of [2 ** 20, 2 ** 12]) {
    try {
      for (;;) writeSync(file, Buffer.alloc(size, 1));
    } catch {
      // No space for another of that size.
    }
  }
  closeSync(file);
};

/** Makes a profile in which an address may keep its storage when space runs short, as an installed app may. */
export const allowToPersist = (profile: string, address: string): void => {
  const origin = new URL(address).origin;
  const exceptions = { durable_storage: { [`${origin},*`]: { setting: 1 } } };
  mkdirSync(join(profile, 'Default'), { recursive: true });
  writeFileSync(
    join(profile, 'Default', 'Preferences'),
    JSON.stringify({ profile: { content_settings: { exceptions } } }),
  );
};
