import { bodyFromTable } from '@dryflat/engine/garment';
import { emptyRecord } from '@dryflat/record';
import { expect, test } from 'vitest';
import { setBody, setWanted, startFromTable } from './change-wearer.ts';

const fresh = () => emptyRecord({ id: 'g', name: 'Garment', kind: 'pullover-set-in' });
const women = () => {
  const read = bodyFromTable('women', 'M');
  if (!read.ok) throw new Error('the table is gone');
  return read.value;
};

test('P1: a table never replaces what was measured on the body', () => {
  const draft = fresh();
  setBody(draft, 'chest', 934);
  const taken = startFromTable(draft, women(), { table: 'women', size: 'M' }, ['chest', 'hip']);
  expect(taken).toBe(1);
  expect(draft.wearer.body.find(({ landmark }) => landmark === 'chest')).toEqual({
    landmark: 'chest',
    mm: 934,
    from: { kind: 'measured' },
  });
  // Craft Yarn Council sizes, women M: hips 38 to 40 in, so the middle is 39 in.
  expect(draft.wearer.body.find(({ landmark }) => landmark === 'hip')).toMatchObject({
    mm: 39 * 25.4,
    from: { kind: 'table', table: 'women', size: 'M' },
  });
});

test('P1: another size replaces the start, and the own tape replaces both', () => {
  const draft = fresh();
  startFromTable(draft, women(), { table: 'women', size: 'M' }, ['hip']);
  startFromTable(draft, women(), { table: 'women', size: 'L' }, ['hip']);
  expect(draft.wearer.body).toHaveLength(1);
  setBody(draft, 'hip', 1001);
  expect(draft.wearer.body).toEqual([{ landmark: 'hip', mm: 1001, from: { kind: 'measured' } }]);
  setBody(draft, 'hip', null);
  expect(draft.wearer.body).toEqual([]);
});

test('P1: a landmark carries one wish', () => {
  const draft = fresh();
  setWanted(draft, 'chest', { kind: 'ease', landmark: 'chest', minMm: 0, maxMm: 50 });
  setWanted(draft, 'chest', { kind: 'finished', landmark: 'chest', minMm: 900, maxMm: 950 });
  expect(draft.wearer.wanted.map(({ kind }) => kind)).toEqual(['finished']);
  setWanted(draft, 'chest', null);
  expect(draft.wearer.wanted).toEqual([]);
});
