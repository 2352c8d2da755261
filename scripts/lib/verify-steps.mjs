// @ts-check

/**
 * @param {string} report
 * @param {...string} more
 */
const vitest = (report, ...more) => [
  'npx',
  '--no-install',
  'vitest',
  'run',
  ...more,
  '--reporter=default',
  '--reporter=json',
  `--outputFile.json=${report}`,
];

/** @param {...string} command */
const local = (...command) => ['npx', '--no-install', ...command];

/** @type {readonly import('./steps.mjs').Step[]} */
export const STEPS = [
  { title: 'type check', commands: [local('tsc', '--noEmit', '-p', 'tsconfig.json')] },
  {
    title: 'lint',
    commands: [
      local('biome', 'check', '.'),
      local('depcruise', '--config', '.dependency-cruiser.mjs', 'packages', 'apps', 'scripts'),
    ],
  },
  {
    title: 'unit, property and documentation tests',
    report: '.cache/unit.json',
    commands: [vitest('.cache/unit.json')],
  },
  { title: 'web build', commands: [['node', 'scripts/build.mjs']] },
  {
    title: 'browser tests',
    needs: 'web build',
    needsChromium: true,
    report: '.cache/browser.json',
    commands: [vitest('.cache/browser.json', '--config', 'vitest.browser.config.ts')],
  },
  { title: 'published schema is fresh', commands: [['node', 'scripts/schema.mjs', '--check']] },
];
