import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anyRecord } from '../arbitrary/index.ts';
import { emptyRecord } from '../make/empty-record.ts';
import { readRecord } from '../read/read-record.ts';
import type { GarmentRecord } from '../schema/index.ts';
import { writeRecord } from './write-record.ts';

/** The same value with the keys of every object turned around. */
const turned = (value: unknown): unknown => {
  if (Array.isArray(value)) return value.map(turned);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value)
      .reverse()
      .map(([key, each]) => [key, turned(each)]),
  );
};

describe('writeRecord', () => {
  it('R10: write, read, write gives the same bytes, and reading gives the same record', () => {
    fc.assert(
      fc.property(anyRecord, (record) => {
        const text = writeRecord(record);
        const read = readRecord(text);
        expect(read.ok ? [] : read.faults).toEqual([]);
        if (!read.ok) return;
        expect(writeRecord(read.value.record)).toBe(text);
        expect(read.value.record).toEqual(record);
        expect(read.value.original).toBe(text);
      }),
    );
  });

  it('R11: the order in which keys were set leaves no trace', () => {
    fc.assert(
      fc.property(anyRecord, (record) => {
        expect(writeRecord(turned(record) as GarmentRecord)).toBe(writeRecord(record));
      }),
    );
  });

  it('R11: two spaces, format and version first, a newline at the end', () => {
    const text = writeRecord(emptyRecord({ id: 'x', name: 'Ä “x”', kind: 'hat' }));
    expect(text.split('\n').slice(0, 5)).toEqual([
      '{',
      '  "format": "dryflat-garment",',
      '  "version": 4,',
      '  "id": "x",',
      '  "name": "Ä “x”",',
    ]);
    expect(text.endsWith('}\n')).toBe(true);
  });

  it('R11: minus zero, which JSON has no word of its own for, is written as zero', () => {
    const record = emptyRecord({ id: 'x', name: 'x', kind: 'hat' });
    record.wearer.wanted = [{ kind: 'ease', landmark: 'brim', minMm: -0, maxMm: 0 }];
    expect(writeRecord(record)).toContain('"minMm": 0,');
  });

  it('R12: a field set to undefined is left out; a key that the schema does not know is kept, last', () => {
    const record = emptyRecord({ id: 'x', name: 'x', kind: 'hat' });
    const odd = { zebra: 1, ...record, massG: undefined, apple: 2 } as unknown as GarmentRecord;
    const keys = Object.keys(JSON.parse(writeRecord(odd)));
    expect(keys).not.toContain('massG');
    expect(keys.slice(-3)).toEqual(['notes', 'apple', 'zebra']);
  });
});
