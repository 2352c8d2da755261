import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anyRecord } from '../arbitrary/index.ts';
import { setAt } from '../malformed/set-at.ts';
import { readRecord } from '../read/read-record.ts';
import { CURRENT_VERSION, type GarmentRecord, garmentRecord } from '../schema/index.ts';
import { writeRecord } from '../write/write-record.ts';
import { migrateDown, migrateUp, OLDEST_VERSION, STEPS } from './index.ts';
import { oneToTwo } from './one-to-two.ts';
import type { Loss, MigrationStep, PlainRecord } from './step.ts';
import { threeToFour } from './three-to-four.ts';
import { twoToThree } from './two-to-three.ts';

const plainOf = (record: GarmentRecord): PlainRecord => JSON.parse(writeRecord(record));
const anyPlain = anyRecord.map(plainOf);
const anyVersionThree = anyPlain.map((plain) => threeToFour.down(plain).plain);
const anyVersionTwo = anyVersionThree.map((plain) => twoToThree.down(plain).plain);
const anyVersionOne = anyVersionTwo.map((plain) => oneToTwo.down(plain).plain);

const WAYS: readonly (readonly [string, MigrationStep, fc.Arbitrary<PlainRecord>])[] = [
  ['one to two', oneToTwo, anyVersionOne],
  ['two to three', twoToThree, anyVersionTwo],
  ['three to four', threeToFour, anyVersionThree],
];

/** A plain record with what a migration named as lost put back: `plan.sewn`, `evidence[0].massG`. */
const restored = (plain: PlainRecord, lost: readonly Loss[]): unknown =>
  lost.reduce<unknown>((record, { field, given }) => setAt(record, field, asValue(given)), plain);

/** Texts stand in a loss without their quotes. */
const asValue = (given: string): unknown =>
  /^[a-z]+-[a-z-]+$/.test(given) ? given : JSON.parse(given);

describe('migrations', () => {
  it('R20: the steps lead from the oldest version to the current one without a gap', () => {
    expect(STEPS.map(({ from, to }) => [from, to])).toEqual(
      STEPS.map((_, at) => [OLDEST_VERSION + at, OLDEST_VERSION + at + 1]),
    );
    expect(STEPS.at(-1)?.to).toBe(CURRENT_VERSION);
  });

  it.each(WAYS)('R21: %s: down(up(x)) = x, with nothing lost', (_, step, anyOlder) => {
    fc.assert(
      fc.property(anyOlder, (old) => {
        const back = step.down(step.up(old));
        expect(back.plain).toEqual(old);
        expect(back.lost).toEqual([]);
      }),
    );
  });

  it('R22: one to two: up(down(y)) = y once what is named as lost is put back', () => {
    fc.assert(
      fc.property(anyVersionTwo, (record) => {
        const { plain, lost } = oneToTwo.down(record);
        expect(restored(oneToTwo.up(plain), lost)).toEqual(record);
      }),
    );
  });

  it('R22: two to three: up(down(y)) = y once what is named as lost is put back', () => {
    fc.assert(
      fc.property(anyVersionThree, (record) => {
        const { plain, lost } = twoToThree.down(record);
        expect(restored(twoToThree.up(plain), lost)).toEqual(record);
      }),
    );
  });

  it('R22: three to four: up(down(y)) = y once what is named as lost is put back', () => {
    fc.assert(
      fc.property(anyPlain, (record) => {
        const { plain, lost } = threeToFour.down(record);
        expect(restored(threeToFour.up(plain), lost)).toEqual(record);
      }),
    );
  });

  it('R22: all the new parts are lost, and named, on the way to version 2', () => {
    const parts = {
      plan: { drying: 'lay', weights: { fit: 1, time: 0, yarn: 0 } },
      pattern: { sizes: [], repeat: { stitches: 4, plus: 2 } },
      evidence: [{ id: 'a' }, { id: 'b', massG: 12 }],
      onMat: [],
      dryings: [],
      photos: [],
      finished: { on: '2031-02-03', remark: '' },
      people: [],
      pace: { log: [], hours: [], away: [] },
      progress: [],
      left: [],
      instructions: [],
      report: { changes: '' },
    };
    const { plain, lost } = twoToThree.down({ version: 3, id: 'x', ...parts });
    expect(plain).toEqual({
      version: 2,
      id: 'x',
      plan: { drying: 'lay' },
      pattern: { sizes: [] },
      evidence: [{ id: 'a' }, { id: 'b' }],
    });
    expect(lost.map(({ field }) => field)).toEqual([
      'plan.weights',
      'pattern.repeat',
      'evidence[1].massG',
      'onMat',
      'dryings',
      'photos',
      'finished',
      'people',
      'pace',
      'progress',
      'left',
      'instructions',
      'report',
    ]);
    expect(lost[2]).toEqual({
      field: 'evidence[1].massG',
      given: '12',
      problem: 'version 2 cannot hold the mass of a specimen',
    });
  });

  it('R22: a loss names the field, the value and what is lost', () => {
    expect(oneToTwo.down({ version: 2, plan: { washing: 'machine-warm' } })).toEqual({
      plain: { version: 1, plan: {} },
      lost: [
        {
          field: 'plan.washing',
          given: 'machine-warm',
          problem: 'version 1 cannot say how the garment is washed',
        },
      ],
    });
    expect(oneToTwo.down({ version: 2, plan: { sewn: true, mat: { tileMm: 0 } } }).lost).toEqual([
      {
        field: 'plan.sewn',
        given: 'true',
        problem: 'version 1 cannot say whether it is sewn before it is pinned',
      },
      {
        field: 'plan.mat',
        given: '{"tileMm":0}',
        problem: 'version 1 cannot say how large the mat is',
      },
    ]);
  });

  it.each([
    [1, anyVersionOne],
    [2, anyVersionTwo],
    [3, anyVersionThree],
  ])('R23: every version %i record comes up as a record of the current version', (from, any) => {
    fc.assert(
      fc.property(any, (old) => {
        expect(garmentRecord.safeParse(migrateUp(old, from)).success).toBe(true);
      }),
    );
  });

  it('R23: neither way throws on what is no record, nor changes what it was given', () => {
    fc.assert(
      fc.property(fc.dictionary(fc.string(), fc.jsonValue()), fc.jsonValue(), (rest, any) => {
        const plain = { ...rest, plan: any, pattern: any, evidence: any };
        const before = structuredClone(plain);
        migrateUp(plain, 1);
        migrateDown(plain, 1);
        expect(plain).toEqual(before);
      }),
    );
  });

  it('R24: going nowhere changes nothing', () => {
    fc.assert(
      fc.property(anyPlain, (plain) => {
        expect(migrateUp(plain, CURRENT_VERSION)).toEqual(plain);
        expect(migrateDown(plain, CURRENT_VERSION)).toEqual({ plain, lost: [] });
      }),
    );
  });
});

describe('files of older versions', () => {
  const folder = new URL('./fixtures/', import.meta.url);
  const versionOf = (name: string): number => Number(/\.v(\d+)\.json$/.exec(name)?.[1]);
  const textOf = (name: string): string => readFileSync(new URL(name, folder), 'utf8');
  const names = readdirSync(folder);

  it('R25: there is a file of every older version', () => {
    expect([...new Set(names.map(versionOf))].sort()).toEqual(STEPS.map(({ from }) => from));
  });

  it.each(names)('R25: %s opens, says so, and goes down again to what it was', (name) => {
    const text = textOf(name);
    const read = readRecord(text);
    expect(read.ok ? [] : read.faults).toEqual([]);
    if (!read.ok) return;
    expect(read.value.migratedFrom).toBe(versionOf(name));
    expect(read.value.notices).toEqual([
      `This file was in version ${versionOf(name)}; it is saved in version 4 from now on.`,
    ]);
    expect(read.value.original).toBe(text);
    const { plain, lost } = migrateDown(plainOf(read.value.record), versionOf(name));
    expect(plain).toEqual(JSON.parse(text));
    expect(lost).toEqual([]);
  });

  it.each(names.filter((name) => versionOf(name) === 1))(
    'R25: %s of version 1 is washed in a way not said',
    (name) => {
      const read = readRecord(textOf(name));
      expect(read.ok && read.value.record.plan.washing).toBe('not-said');
    },
  );
});
