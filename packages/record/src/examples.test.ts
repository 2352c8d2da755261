import { readFileSync } from 'node:fs';
import { forecastDrying } from '@dryflat/engine/drying';
import { bodyFromTable } from '@dryflat/engine/garment';
import { describe, expect, it } from 'vitest';
import { askForecast } from './ask/ask-forecast.ts';
import { faultsOf } from './check/faults-of.ts';
import { askDrying } from './dry/index.ts';
import { EXAMPLES, findExample } from './examples.ts';
import { finishFaults, pinsMissing, pinWords } from './pins/index.ts';
import { questionsOf } from './questions/span-questions.ts';
import { readRecord } from './read/read-record.ts';
import type { GarmentRecord } from './schema/index.ts';
import { writeRecord } from './write/write-record.ts';

const fileOf = (slug: string): string =>
  readFileSync(new URL(`../../../examples/${slug}.json`, import.meta.url), 'utf8');

describe.each(EXAMPLES.map((each) => [each.slug, each] as const))('example %s', (slug, example) => {
  const read = readRecord(fileOf(slug));

  it('R30: opens without a fault, in the current version', () => {
    expect(read.ok ? [] : read.faults).toEqual([]);
    expect(read.ok && [read.value.readOnly, read.value.migratedFrom]).toEqual([false, null]);
    expect(read.ok && read.value.record).toEqual(example.record);
  });

  it('R30: means something throughout: no fault, no doubt, no open question', () => {
    expect(faultsOf(example.record)).toEqual([]);
    expect(questionsOf(example.record)).toEqual([]);
    expect(askForecast(example.record).ok).toBe(true);
  });

  it('R10: the file is the bytes that writing gives', () => {
    expect(writeRecord(example.record)).toBe(fileOf(slug));
  });

  it('R31: the table has six to nine sizes, and its counts fit its values at the gauge', () => {
    const { sizes, gauge, measurements } = example.record.pattern;
    expect(sizes.length).toBeGreaterThanOrEqual(6);
    expect(sizes.length).toBeLessThanOrEqual(9);
    for (const { values, counts, direction, landmark } of measurements)
      counts?.forEach((count, size) => {
        const value = values[size] ?? 0;
        const rows = direction === 'length' || /depth/.test(landmark);
        const per = (rows ? gauge?.rows : gauge?.stitches) ?? 0;
        // Patterns round to a repeat of up to four stitches: at most two off.
        expect(Math.abs(((count ?? 0) * (gauge?.overMm ?? 0)) / per - value)).toBeLessThanOrEqual(
          (2 * (gauge?.overMm ?? 0)) / per + 1e-9,
        );
      });
  });
});

describe('the child cardigan', () => {
  it('R33: has the body of the published table that it names, to the millimetre', () => {
    const bodies = findExample('child-cardigan')?.record.wearer.body ?? [];
    expect(bodies.length).toBeGreaterThan(0);
    for (const { landmark, mm, from } of bodies) {
      const table = from.kind === 'table' ? bodyFromTable(from.table, from.size) : null;
      const row = table?.ok ? table.value.find(({ body }) => body === landmark) : undefined;
      expect([landmark, mm]).toEqual([landmark, Math.round(row?.middle ?? 0)]);
    }
  });
});

describe('the examples together', () => {
  it('R30: are found by slug, each once', () => {
    expect(new Set(EXAMPLES.map(({ slug }) => slug)).size).toBe(EXAMPLES.length);
    expect(findExample('waistcoat')?.record.kind).toBe('vest');
    expect(findExample('nothing')).toBeUndefined();
  });

  it('R32: show every kind of reading and each way of drying and judging', () => {
    const records = EXAMPLES.map(({ record }) => record);
    const kinds = records.flatMap(({ evidence }) =>
      evidence.flatMap(({ readings }) => readings.map(({ kind }) => kind)),
    );
    expect([...new Set(kinds)].sort()).toEqual(['count', 'extent', 'hang', 'set']);
    expect(new Set(records.map(({ plan }) => plan.drying))).toEqual(new Set(['lay', 'pin']));
    expect(new Set(records.map(({ plan }) => plan.judgeAt))).toEqual(
      new Set(['dried', 'worn', 'rewashed']),
    );
  });

  it('R34: show the work after the last stitch, and what bears on what to do next', () => {
    const records = EXAMPLES.map(({ record }) => record);
    const parts = ['onMat', 'dryings', 'finished', 'people', 'pace', 'progress'] as const;
    const others = ['left', 'instructions', 'report'] as const;
    for (const part of [...parts, ...others])
      expect([part, records.some((record) => record[part] !== undefined)]).toEqual([part, true]);
    expect(records.some(({ evidence }) => evidence.some(({ massG }) => massG !== undefined))).toBe(
      true,
    );
  });
});

describe('the hayloft pullover', () => {
  const record = findExample('hayloft-pullover')?.record as GarmentRecord;

  it('R34: has every pin accounted for, one of them as lost', () => {
    expect(finishFaults(record)).toEqual([]);
    expect(pinWords(pinsMissing(record))).toBe('1 straight pin');
  });

  it('R34: dried as its weighings say, with nothing strange about them', () => {
    const asked = askDrying(record, 'd1');
    const forecast = asked.ok ? forecastDrying(asked.value, { draws: 500 }) : asked;
    expect(forecast.ok ? forecast.value.notices : forecast.faults).toEqual([]);
  });
});
