import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';

export interface BuiltApp {
  /** The folder to serve; a file that must never be sent lies beside it. */
  readonly dir: string;
  readonly remove: () => Promise<void>;
}

export const SECRET = 'not for the browser';
export const SCRIPT = 'export const stitches = 120;\n'.repeat(400);
export const TEN_BYTES = '0123456789';

const FILES: Readonly<Record<string, string | Uint8Array>> = {
  'secret.txt': SECRET,
  'dist/.built-from': SECRET,
  'dist/.vite/manifest.json': SECRET,
  'dist/index.html': '<!doctype html><title>page</title>',
  'dist/sw.js': 'self.skipWaiting();',
  'dist/app.webmanifest': '{}',
  'dist/ten.txt': TEN_BYTES,
  'dist/empty.txt': '',
  'dist/assets/app-1a2b3c.js': SCRIPT,
  'dist/assets/icon-5e6f.png': new Uint8Array(5000),
};

/** A small app as it is built, in a folder of its own. */
export const builtApp = async (): Promise<BuiltApp> => {
  const root = await mkdtemp(join(tmpdir(), 'dryflat-serve-'));
  for (const [file, content] of Object.entries(FILES)) {
    await mkdir(dirname(join(root, file)), { recursive: true });
    await writeFile(join(root, file), content);
  }
  return { dir: join(root, 'dist'), remove: () => rm(root, { recursive: true }) };
};
