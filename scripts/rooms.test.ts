import { spawnSync } from 'node:child_process';
import {
  cpSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { impurities } from './lib/purity.mjs';
import { ROOT } from './lib/root.mjs';

/**
 * The rule of the rooms, tested from both sides: planted violations are found by name, through
 * relative paths, through package names and through type-only imports; and our own tree is clean.
 */
interface Violation {
  readonly from: string;
  readonly to: string;
  readonly rule: { readonly name: string };
}

const cruise = (cwd: string, ...folders: readonly string[]): readonly Violation[] => {
  const program = join(ROOT, 'node_modules', 'dependency-cruiser', 'bin', 'dependency-cruise.mjs');
  const args = ['--config', '.dependency-cruiser.mjs', '--output-type', 'json', ...folders];
  const { stdout, stderr } = spawnSync('node', [program, ...args], {
    cwd,
    encoding: 'utf8',
    maxBuffer: 256 * 1024 * 1024,
  });
  if (stdout === '') throw new Error(stderr);
  return JSON.parse(stdout).summary.violations;
};

const CLEAN: Readonly<Record<string, string>> = {
  'packages/engine/src/units/index.ts': 'export interface Length { readonly mm: number }\n',
  'packages/engine/src/textile/index.ts': 'export const wool = 1;\n',
  'packages/engine/src/fabric/index.ts':
    "import { wool } from '../textile/index.ts';\nexport const growth = wool;\n",
  'packages/engine/src/garment/index.ts':
    "import type { Length } from '../units/index.ts';\nexport type Chest = Length;\n",
  'packages/record/src/index.ts':
    "import { growth } from '@dryflat/engine/fabric';\nexport const record = growth;\n",
  'packages/paper/src/clean.ts':
    "import { record } from '@dryflat/record';\nexport interface Sheet { readonly of: typeof record }\n",
  'apps/cli/src/clean.ts':
    "import { record } from '@dryflat/record';\nimport { readFileSync } from 'node:fs';\nexport const run = () => readFileSync(String(record));\n",
};

const PLANTED: Readonly<Record<string, string>> = {
  'packages/engine/src/fabric/upward.ts':
    "import { outline } from '../garment/outline.ts';\nexport const upward = outline;\n",
  'packages/engine/src/garment/outline.ts': 'export const outline = 1;\n',
  'packages/engine/src/units/upward-type.ts':
    "import type { Chest } from '../garment/index.ts';\nexport type Also = Chest;\n",
  'packages/engine/src/garment/to-record.ts':
    "import { record } from '@dryflat/record';\nexport const toRecord = record;\n",
  'packages/record/src/to-app.ts':
    "import type { run } from '../../../apps/cli/src/clean.ts';\nexport type Run = typeof run;\n",
  'packages/engine/src/stats/one.ts':
    "import { other } from './other.ts';\nexport const one = () => other;\n",
  'packages/engine/src/stats/other.ts':
    "import { one } from './one.ts';\nexport const other = () => one;\n",
  'packages/engine/src/garment/files.ts':
    "import { readFileSync } from 'node:fs';\nexport const read = readFileSync;\n",
  'packages/engine/src/garment/files.test.ts':
    "import { readFileSync } from 'node:fs';\nexport const read = readFileSync;\n",
  'apps/web/src/to-cli.ts':
    "import { run } from '../../cli/src/clean.ts';\nexport const web = run;\n",
  'packages/engine/src/membrane/knitted.ts':
    "import type { wool } from '../textile/index.ts';\nexport type Wool = typeof wool;\n",
  'packages/record/src/to-paper.ts':
    "import type { Sheet } from '../../paper/src/clean.ts';\nexport type Page = Sheet;\n",
  'packages/paper/src/files.ts':
    "import { readFileSync } from 'node:fs';\nexport const read = readFileSync;\n",
  'packages/record/src/lost.ts': "import { gone } from './gone.ts';\nexport const lost = gone;\n",
};

const plant = (root: string, files: Readonly<Record<string, string>>) => {
  for (const [path, content] of Object.entries(files)) {
    mkdirSync(dirname(join(root, path)), { recursive: true });
    writeFileSync(join(root, path), content);
  }
};

const furnish = (root: string) => {
  for (const file of [
    '.dependency-cruiser.mjs',
    'tsconfig.json',
    'package.json',
    'packages/engine/package.json',
    'packages/record/package.json',
  ])
    cpSync(join(ROOT, file), join(root, file), { recursive: true });
  mkdirSync(join(root, 'node_modules', '@dryflat'), { recursive: true });
  for (const name of ['engine', 'record'])
    symlinkSync(join('..', '..', 'packages', name), join(root, 'node_modules', '@dryflat', name));
};

let root: string;
let found: readonly Violation[];

beforeAll(() => {
  root = mkdtempSync(join(tmpdir(), 'dryflat-rooms-'));
  plant(root, { ...CLEAN, ...PLANTED });
  furnish(root);
  found = cruise(root, 'packages', 'apps');
}, 60_000);
afterAll(() => rmSync(root, { recursive: true }));

const rulesAt = (from: string) =>
  [...new Set(found.filter((each) => each.from === from).map((each) => each.rule.name))].sort();

describe('planted violations are reported by name', () => {
  it.each([
    [
      'a room importing from above',
      'packages/engine/src/fabric/upward.ts',
      'fabric-imports-upwards',
    ],
    ['a type from above', 'packages/engine/src/units/upward-type.ts', 'units-imports-upwards'],
    [
      'the engine importing the record by its package name',
      'packages/engine/src/garment/to-record.ts',
      'garment-imports-upwards',
    ],
    [
      'the record importing a type of an app',
      'packages/record/src/to-app.ts',
      'record-imports-upwards',
    ],
    [
      'the record importing a type of the paper',
      'packages/record/src/to-paper.ts',
      'record-imports-upwards',
    ],
    ['the paper reading files', 'packages/paper/src/files.ts', 'paper-runs-anywhere'],
    ['one half of a cycle', 'packages/engine/src/stats/one.ts', 'no-cycles'],
    ['the engine reading files', 'packages/engine/src/garment/files.ts', 'engine-is-pure'],
    ['an app importing an app', 'apps/web/src/to-cli.ts', 'apps-web-imports-an-app'],
    [
      'the membrane importing a type of the textiles',
      'packages/engine/src/membrane/knitted.ts',
      'membrane-knows-no-knitting',
    ],
    ['an import of nothing', 'packages/record/src/lost.ts', 'not-resolved'],
  ])('%s', (_, from, rule) => {
    expect(rulesAt(from)).toEqual([rule]);
  });

  it('imports from below are left alone, through package names as well', () => {
    const clean = Object.keys(CLEAN);
    expect(found.filter((each) => clean.includes(each.from))).toEqual([]);
  });

  it('tests of the engine may read files', () => {
    expect(rulesAt('packages/engine/src/garment/files.test.ts')).toEqual([]);
  });
});

describe('our own tree', () => {
  it('has no violation', () => {
    const violations = cruise(ROOT, 'packages', 'apps', 'scripts');
    expect(violations.map(({ from, to, rule }) => `${rule.name}: ${from} → ${to}`)).toEqual([]);
  }, 60_000);

  it('has an engine without clock, chance, page or process', () => {
    const source = 'packages/engine/src';
    const files = readdirSync(join(ROOT, source), { recursive: true, encoding: 'utf8' })
      .map((file) => `${source}/${file}`)
      .filter((file) => file.endsWith('.ts'))
      .filter((file) => !/\.(test|bench|figures)\.ts$|\/fixtures\/|\/check\//.test(file));
    expect(files.length).toBeGreaterThan(10);
    const impure = files.flatMap((file) =>
      impurities(readFileSync(join(ROOT, file), 'utf8')).map((name) => `${file}: ${name}`),
    );
    expect(impure).toEqual([]);
  });

  it.each([
    ['const t = Date.now();', 'Date.now'],
    ['const d = new Date();', 'new Date()'],
    ['const r = Math.random();', 'Math.random'],
    ['await fetch(url);', 'fetch('],
    ['const e = process.env.HOME;', 'process.e'],
    ['document.title = name;', 'document.t'],
  ])('an engine with `%s` would be found out', (source, name) => {
    expect(impurities(source)).toEqual([name]);
    expect(impurities(`// ${source}\n/* ${source} */`)).toEqual([]);
  });
});
