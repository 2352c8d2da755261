import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { calendarId } from './calendar-id.ts';

test('DR8: any id of a drying becomes one that a calendar can carry', () => {
  expect(calendarId('drying', 'd1')).toBe('drying-d1');
  fc.assert(
    fc.property(fc.string({ minLength: 1 }), (id) => {
      expect(calendarId('drying', id)).toMatch(/^[A-Za-z0-9-]+$/);
    }),
  );
});

test('DR8: ids that differ in their marks stay apart', () => {
  expect(new Set(['a b', 'a_b', 'a-b', 'ab'].map((id) => calendarId('drying', id))).size).toBe(4);
});
