import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anyRecord } from '../arbitrary/index.ts';
import { garmentRecord } from '../schema/index.ts';
import { duplicateRecord } from './duplicate-record.ts';
import { emptyRecord } from './empty-record.ts';
import { spareId } from './spare-id.ts';

describe('making records', () => {
  it('R13: an empty record has the right shape and guesses nothing', () => {
    const record = emptyRecord({ id: 'x', name: 'Hat', kind: 'hat' });
    expect(garmentRecord.safeParse(record).success).toBe(true);
    expect(record.plan.washing).toBe('not-said');
    expect(record.wearer.group).toBe('not-said');
    expect(record.pattern.chosen).toBeUndefined();
  });

  it('R14: a duplicate differs in id and name only, and shares nothing with its original', () => {
    fc.assert(
      fc.property(anyRecord, (record) => {
        const before = structuredClone(record);
        const copy = duplicateRecord(record, { id: 'new', name: 'New' });
        expect(copy).toEqual({ ...record, id: 'new', name: 'New' });
        copy.wearer.name = `${copy.wearer.name}!`;
        copy.notes.push({ id: 'n', text: '' });
        expect(record).toEqual(before);
      }),
    );
  });

  it('R15: a spare id is never taken, even from a random source that is stuck', () => {
    const stuck = () => 0;
    const first = spareId(stuck, { prefix: 'm-' });
    const second = spareId(stuck, { prefix: 'm-', taken: [first] });
    const third = spareId(stuck, { prefix: 'm-', taken: [first, second] });
    expect(first).toBe('m-2222222222');
    expect(new Set([first, second, third]).size).toBe(3);
  });

  it('R15: all signs can come up and none outside of them', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1, maxExcluded: true, noNaN: true }), (at) => {
        expect(spareId(() => at)).toMatch(/^[2-9a-hjkmnp-z]{10}$/);
      }),
    );
  });
});
