import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anyRecord } from '../arbitrary.ts';
import { readRecord } from '../read/read-record.ts';
import { CURRENT_VERSION, type GarmentRecord, garmentRecord } from '../schema/index.ts';
import { writeRecord } from '../write/write-record.ts';
import { migrateDown, migrateUp, OLDEST_VERSION, STEPS } from './index.ts';
import { oneToTwo } from './one-to-two.ts';
import type { PlainRecord } from './step.ts';

const plainOf = (record: GarmentRecord): PlainRecord => JSON.parse(writeRecord(record));
const anyPlain = anyRecord.map(plainOf);
const anyVersionOne = anyPlain.map((plain) => oneToTwo.down(plain).plain);

describe('migrations', () => {
  it('R20: the steps lead from the oldest version to the current one without a gap', () => {
    expect(STEPS.map(({ from, to }) => [from, to])).toEqual(
      STEPS.map((_, at) => [OLDEST_VERSION + at, OLDEST_VERSION + at + 1]),
    );
    expect(STEPS.at(-1)?.to).toBe(CURRENT_VERSION);
  });

  it('R21: down(up(x)) = x, with nothing lost', () => {
    fc.assert(
      fc.property(anyVersionOne, (old) => {
        const back = oneToTwo.down(oneToTwo.up(old));
        expect(back.plain).toEqual(old);
        expect(back.lost).toEqual([]);
      }),
    );
  });

  it('R22: up(down(y)) = y unless something was lost, and then the loss is all that differs', () => {
    fc.assert(
      fc.property(anyRecord, (record) => {
        const { plain, lost } = oneToTwo.down(plainOf(record));
        const again = oneToTwo.up(plain);
        const { washing, sewn, stock, mat, pins, ...kept } = record.plan;
        const said = [washing === 'not-said' ? undefined : washing, sewn, stock, mat, pins];
        expect(lost.length).toBe(said.filter((each) => each !== undefined).length);
        expect(again).toEqual(plainOf({ ...record, plan: { ...kept, washing: 'not-said' } }));
      }),
    );
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

  it('R23: every version 1 record comes up as a record of the current version', () => {
    fc.assert(
      fc.property(anyVersionOne, (old) => {
        expect(garmentRecord.safeParse(migrateUp(old, 1)).success).toBe(true);
      }),
    );
  });

  it('R23: neither way throws on what is no record, nor changes what it was given', () => {
    fc.assert(
      fc.property(fc.dictionary(fc.string(), fc.jsonValue()), fc.jsonValue(), (rest, plan) => {
        const plain = { ...rest, plan };
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

describe('files of version 1', () => {
  const folder = new URL('./fixtures/', import.meta.url);
  it.each(readdirSync(folder))(
    'R25: %s opens, says so, and is washed in a way not said',
    (name) => {
      const text = readFileSync(new URL(name, folder), 'utf8');
      const read = readRecord(text);
      expect(read.ok ? [] : read.faults).toEqual([]);
      if (!read.ok) return;
      expect(read.value.migratedFrom).toBe(1);
      expect(read.value.notices).toEqual([
        'This file was in version 1; it is saved in version 2 from now on.',
      ]);
      expect(read.value.original).toBe(text);
      expect(read.value.record.plan.washing).toBe('not-said');
      const { plain } = migrateDown(plainOf(read.value.record), 1);
      expect(plain).toEqual(JSON.parse(text));
    },
  );
});
