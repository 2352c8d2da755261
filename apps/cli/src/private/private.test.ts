import { writeRecord } from '@dryflat/record';
import { PLANTED } from '@dryflat/record/photo/testing';
import { describe, expect, it } from 'vitest';
import { PERSONS } from '../../../../packages/paper/src/testing/persons.ts';
import { dryflat } from '../testing/dryflat.ts';
import { type FileName, garment, LINES, written } from './files-written.ts';

/** The quickest plan of a mat; the other was weighed as it dried. */
const RECORDS = { socks: garment('ferry-socks'), pullover: garment('hayloft-pullover') };
const recordOf = (file: FileName) => RECORDS[file === 'drying.ics' ? 'pullover' : 'socks'];
const FILES = Object.keys(LINES) as FileName[];

describe('what a command writes', () => {
  it.each(FILES)('C21: %s names nobody, and tells no place', async (file) => {
    const texts = await written(recordOf(file), file);
    expect(texts.filter((text) => PERSONS.test(text))).toEqual([]);
    expect(texts.filter((text) => text.includes(PLANTED))).toEqual([]);
  });

  // A plan of the mat takes seconds, and its page is named as the sheet is.
  const quick = FILES.filter((file) => !file.startsWith('mat'));
  it.each(quick)('C21: %s has the garment’s own name where its report says so', async (file) => {
    const record = recordOf(file);
    const open = { ...record, report: { ...record.report!, body: true } };
    const texts = await written(open, file);
    expect(texts.some((text) => text.includes('Ottilie'))).toBe(true);
    expect(texts.filter((text) => text.includes(PLANTED))).toEqual([]);
  });

  it('C21: --with-body says so for once; check tells of pictures that were cleaned', () => {
    const input = writeRecord(RECORDS.socks);
    expect(dryflat(['report', '-', '--with-body'], { input }).out).toContain('Ottilie');
    expect(dryflat(['report', '-'], { input }).out).not.toMatch(PERSONS);
    const { code, out } = dryflat(['check', '-'], { input });
    expect(code).toBe(0);
    expect(out).toContain(
      'standard input: Taken out of 5 pictures: what a camera or a program wrote',
    );
  });
});
