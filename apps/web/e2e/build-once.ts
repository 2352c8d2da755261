import { fileURLToPath } from 'node:url';
import { buildWeb } from '../../../scripts/lib/web-build.mjs';

/**
 * Builds the app before the browser tests, unless the build is newer than its sources. A build
 * named by DRYFLAT_DIST is taken as it is.
 */
export default async function setup(): Promise<void> {
  if (process.env.DRYFLAT_DIST) return;
  const built = await buildWeb(fileURLToPath(new URL('../../../', import.meta.url)));
  if (!built) throw new Error('the app did not build');
}
