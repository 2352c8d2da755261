import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { findExample, type GarmentRecord, writeRecord } from '@dryflat/record';
import { describe, expect, it } from 'vitest';
import { dryflat, emptyFolder } from './testing/dryflat.ts';

const hayloft = findExample('hayloft-pullover')?.record ?? expect.fail('no example');
const input = writeRecord(hayloft);
const dry = (...flags: string[]) => dryflat(['dry', '-', ...flags], { input });
const answerOf = (...flags: string[]) => JSON.parse(dry('--json', ...flags).out);

describe('dryflat dry', () => {
  it('C11: each weighing counts; the last drying of the file came out inside what its first two foretold', () => {
    const [early, late] = [answerOf('--weighings', '2'), answerOf()];
    expect([early.weighings, late.weighings]).toEqual([2, 5]);
    const width = ({ dryHours }: typeof early) => dryHours.p95 - dryHours.p05;
    expect(width(late)).toBeLessThan(width(early));
    const [drying] = hayloft.dryings!;
    const took = (Date.parse(drying!.dried!) - Date.parse(drying!.begun)) / 3_600_000;
    expect(took).toBeGreaterThan(early.dryHours.p05);
    expect(took).toBeLessThan(early.dryHours.p95);
    expect(late.now.chance).toBeGreaterThan(early.now.chance);
    expect(answerOf('--weighings', '0').now).toBeNull();
  });

  it('C11: the calendar holds every mark, and is the same again', () => {
    const cwd = emptyFolder();
    const line = ['dry', '-', '--weighings', '2', '--calendar', 'drying.ics'];
    expect(dryflat(line, { cwd, input })).toMatchObject({
      code: 0,
      err: 'Written to drying.ics.\n',
    });
    const first = readFileSync(join(cwd, 'drying.ics'), 'utf8');
    expect(first.match(/^BEGIN:VEVENT\r$/gm)).toHaveLength(
      answerOf('--weighings', '2').marks.length,
    );
    expect(dryflat(line, { cwd, input })).toMatchObject({ code: 2, out: '' });
    expect(dryflat([...line, '--force'], { cwd, input }).code).toBe(0);
    expect(readFileSync(join(cwd, 'drying.ics'), 'utf8')).toBe(first);
  });

  it('C2, C4: the same bytes again, within 80 columns', () => {
    const told = dry('--weighings', '1');
    expect(told).toMatchObject({ code: 0, err: '' });
    expect(told.out).toContain('or less');
    expect(told.out.split('\n').filter((line) => [...line].length > 80)).toEqual([]);
    expect(dry('--weighings', '1')).toEqual(told);
  });

  it('C1: a file without a drying, and one that has nothing left to be reminded of, say so', () => {
    const { dryings: _, ...without } = hayloft;
    const none = dryflat(['dry', '-'], { input: writeRecord(without as GarmentRecord) });
    expect(none).toMatchObject({ code: 2, out: '' });
    expect(none.err).toContain('the record has no drying');
    expect(dry('--weighings', 'two')).toMatchObject({ code: 2, out: '' });
    const wet = { ...hayloft.dryings![0]!, wet: 300 };
    const impossible = dryflat(['dry', '-'], {
      input: writeRecord({ ...hayloft, dryings: [wet] }),
    });
    expect(impossible).toMatchObject({ code: 2, out: '' });
  });
});
