// @ts-check
import { existsSync } from 'node:fs';
import { run } from './run.mjs';

const USUAL = ['/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome'];

/**
 * What a browser without a screen does without. The two pages behind its address line are made anew for
 * each window, unseen, and take a third of what opening the app takes. Chromium heeds the last list of
 * features only, so those that Playwright leaves out are named again.
 */
const FEATURES = [
  'WebUIOmniboxPopup',
  'WebUIOmniboxAimPopup',
  'AimEnabled',
  'AvoidCorsURLLoaderRestartOnRedirect',
  'AvoidUnnecessaryBeforeUnloadCheckSync',
  'DestroyProfileOnBrowserClose',
  'HttpsFirstBalancedModeAutoEnable',
  'HttpsUpgrades',
  'LensOverlay',
  'MediaRouter',
  'NetworkTimeServiceQuerying',
  'OptimizationHints',
  'PaintHolding',
  'PreconnectToSearch',
  'ThirdPartyStoragePartitioning',
];

/** Arguments for a browser that needs no sandbox, screen or network of its own. */
export const CHROMIUM_ARGS = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-background-networking',
  '--disable-component-update',
  '--no-first-run',
  `--disable-features=${FEATURES.join(',')}`,
];

/** @returns {string | null} path of a Chromium; CHROMIUM_PATH decides where it is set */
export const findChromium = () => {
  const named = process.env.CHROMIUM_PATH;
  if (named) return existsSync(named) ? named : null;
  return USUAL.find((path) => existsSync(path)) ?? null;
};

/** Why there is no Chromium, and what to do about it. */
export const chromiumAdvice = () =>
  process.env.CHROMIUM_PATH
    ? `CHROMIUM_PATH is ${process.env.CHROMIUM_PATH}, and there is no such file. ` +
      'Point it at a Chromium, or unset it.'
    : 'The browser tests need Chromium, and none was found. Install it (on Debian: apt-get install ' +
      'chromium, as root), or set CHROMIUM_PATH to the one that you have.';

/**
 * Finds Chromium, or installs Debian's when we may.
 * @param {string} root
 * @returns {Promise<string | null>}
 */
export const chromium = async (root) => {
  const found = findChromium();
  const mayInstall = process.getuid?.() === 0 && existsSync('/usr/bin/apt-get');
  if (found !== null || process.env.CHROMIUM_PATH || !mayInstall) return found;
  console.error('Installing Chromium with apt-get …');
  const env = { DEBIAN_FRONTEND: 'noninteractive' };
  const install = ['install', '--yes', '--no-install-recommends', 'chromium'];
  await run('apt-get', ['update'], { cwd: root, env });
  await run('apt-get', install, { cwd: root, env });
  return findChromium();
};
