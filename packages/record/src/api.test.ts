import { describe, expect, it } from 'vitest';
import {
  askForecast,
  emptyRecord,
  faultsOf,
  questionsOf,
  readRecord,
  writeRecord,
} from './index.ts';

describe('the record room as a whole', () => {
  it('R1: an empty record is written and read back, is free of faults and asks for what is missing', () => {
    const record = emptyRecord({ id: 'r1', name: 'First', kind: 'vest' });
    const read = readRecord(writeRecord(record));
    expect(read.ok && read.value.record).toEqual(record);
    expect(faultsOf(record)).toEqual([]);
    expect(questionsOf(record)).toEqual([]);
    const asked = askForecast(record);
    expect(asked.ok ? [] : asked.faults.map(({ code }) => code)).toEqual([
      'no-sizes',
      'no-measurements',
    ]);
  });
});
