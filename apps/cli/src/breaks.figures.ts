import { spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { forecast } from '@dryflat/engine/garment';
import {
  askForecast,
  CURRENT_VERSION,
  findExample,
  type GarmentRecord,
  readRecord,
  writeRecord,
} from '@dryflat/record';
import { type Fuzzed, fuzzExtremes, fuzzMutated } from './mutated/fuzz.ts';

const SEED = 20_261_130;

/** s. As long as anybody waits for a command; alone on two cores nearly all take less than one. */
const PATIENCE = 20;

const judge = async (records: AsyncIterable<Fuzzed>) => {
  let [count, complaints, slowest] = [0, 0, 0];
  for await (const each of records) {
    count += 1;
    complaints += each.complaints.length;
    slowest = Math.max(slowest, each.slowest.ms / 1000);
    for (const { line, what } of each.complaints) console.error(`${each.name}: ${line}: ${what}`);
  }
  return { count, complaints, slowest };
};

/** The example with its first swatch again and again, each with that many readings. */
const withSpecimens = (count: number, readings: number): GarmentRecord => {
  const record = structuredClone(findExample('yoke-pullover')!.record);
  const first = record.evidence[0]!;
  record.evidence = Array.from({ length: count }, (_, k) => ({
    ...structuredClone(first),
    id: `s${k}`,
    name: `S${k}`,
    readings: Array.from({ length: readings }, (_, j) => ({
      ...structuredClone(first.readings[j % first.readings.length]!),
      id: `r${j}`,
    })),
  }));
  return record;
};

/** Least ms of a few forecasts on so few draws that what is inferred before them shows. */
const inferenceMs = (count: number, readings: number): number => {
  const asked = askForecast(withSpecimens(count, readings));
  if (!asked.ok) throw new Error(JSON.stringify(asked.faults));
  const once = (): number => {
    const began = performance.now();
    forecast(asked.value, { draws: 100, seed: 1 });
    return performance.now() - began;
  };
  return Math.min(...Array.from({ length: 5 }, once));
};

const nested = (levels: number): string[] => {
  const deep = '['.repeat(levels) + ']'.repeat(levels);
  const record = (version: number, field: string) =>
    `{"format":"dryflat-garment","version":${version},"${field}":${deep}}`;
  return [
    deep,
    '['.repeat(levels),
    record(CURRENT_VERSION, 'notes'),
    record(CURRENT_VERSION, 'moons'),
    record(99, 'moons'),
  ];
};

/** How many of those texts open, or do anything else than be refused for their depth. */
const notRefused = (texts: readonly string[]): number =>
  texts.filter((text) => {
    const read = readRecord(text);
    return read.ok || read.faults.some(({ code }) => code !== 'too-deep');
  }).length;

const dryflat = join(process.cwd(), 'apps', 'cli', 'bin', 'dryflat.mjs');

/**
 * Writes over a file on a disk of its own that has room for half of the new one; null where this user
 * may not make a disk. The number of ways in which it went wrong.
 */
const onFullDisk = (): number | null => {
  const disk = mkdtempSync(join(tmpdir(), 'dryflat-disk-'));
  const made = spawnSync('mount', ['-t', 'tmpfs', '-o', 'size=64k', 'tmpfs', disk]);
  if (made.status !== 0) return null;
  try {
    const old = 'old'.repeat(1_000);
    writeFileSync(join(disk, 'old.json'), old);
    writeFileSync(join(disk, 'rest'), Buffer.alloc(40_000));
    const text = writeRecord(findExample('hayloft-pullover')!.record);
    if (text.length < 24_000) throw new Error('the example fits on the disk');
    const line = ['example', 'hayloft-pullover', '-o', 'old.json', '--force'];
    const ran = spawnSync('node', [dryflat, ...line], { cwd: disk, encoding: 'utf8' });
    return [
      ran.status !== 2,
      !ran.stderr.startsWith('old.json: file: there is no space left on the disk'),
      readFileSync(join(disk, 'old.json'), 'utf8') !== old,
      readdirSync(disk).length !== 2,
    ].filter(Boolean).length;
  } finally {
    spawnSync('umount', [disk]);
    rmSync(disk, { recursive: true, force: true });
  }
};

export async function* figures(full: boolean) {
  const seed = SEED;
  const mutated = await judge(fuzzMutated(full ? 4_000 : 300, { seed, every: false }));
  yield {
    name: `complaints about commands on ${mutated.count} mutated records`,
    value: mutated.complaints,
    unit: '',
    goal: { exactly: 0 },
  };
  yield {
    name: `slowest command on ${mutated.count} mutated records`,
    value: mutated.slowest,
    unit: 's',
    goal: { most: PATIENCE },
  };
  if (full) {
    const extremes = await judge(fuzzExtremes());
    yield {
      name: `complaints about all commands on ${extremes.count} records at the bounds of sense`,
      value: extremes.complaints,
      unit: '',
      goal: { exactly: 0 },
    };
    yield {
      name: `slowest command on ${extremes.count} records at the bounds of sense`,
      value: extremes.slowest,
      unit: 's',
      goal: { most: PATIENCE },
    };
  }
  const readings = full ? 100 : 10;
  yield {
    name: `time of a forecast from ${100 * readings} readings over one from ${50 * readings}: at most quadratic`,
    value: inferenceMs(100, readings) / inferenceMs(50, readings),
    unit: '',
    goal: { most: 4 },
  };
  const levels = full ? 1_000_000 : 10_000;
  yield {
    name: `texts nested ${levels} deep, in five places, that are not refused for it`,
    value: notRefused(nested(levels)),
    unit: '',
    goal: { exactly: 0 },
  };
  const wrong = onFullDisk();
  if (wrong === null) console.error('No disk could be made to fill: run as root to measure that.');
  else
    yield {
      name: 'faults in writing over a file on a full disk: ending, message, old file, nothing left beside it',
      value: wrong,
      unit: '',
      goal: { exactly: 0 },
    };
}
