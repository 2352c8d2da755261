import fc from 'fast-check';
import { expect, test } from 'vitest';
import * as Y from 'yjs';
import { type Entry, isUpdate, sift } from './updates.ts';

/** A map of its own for each entry, so that none stands on another. */
const entryOf = (key: number): Entry => {
  const doc = new Y.Doc();
  doc.getMap('record').set(`field ${key}`, 'typed');
  return { key, value: Y.encodeStateAsUpdate(doc) };
};

const STRAY: readonly (readonly [string, unknown])[] = [
  ['three stray bytes', new Uint8Array([1, 2, 3])],
  ['no bytes at all', new Uint8Array()],
  ['a text', 'record'],
  ['an object', { record: { name: 'Vest' } }],
  ['nothing', null],
  ['what a browser cannot read', undefined],
  ['a list of numbers', [0, 0]],
  ['an update cut short', (entryOf(0).value as Uint8Array).slice(0, -3)],
];

test.each(STRAY)('V20: %s is set aside, and the rest is read', (_, value) => {
  const stray = { key: 2, value };
  const { doc, aside } = sift([entryOf(1), stray, entryOf(3)]);
  expect(aside).toEqual([stray]);
  expect(doc.getMap('record').toJSON()).toEqual({ 'field 1': 'typed', 'field 3': 'typed' });
});

test('V20: whatever bytes lie between them, what was written is read', () => {
  const whole = entryOf(9).value as Uint8Array;
  const bytes = fc.oneof(
    fc.uint8Array({ maxLength: 40 }),
    fc.nat({ max: whole.length - 1 }).map((length) => whole.slice(0, length)),
    fc
      .tuple(fc.nat({ max: whole.length - 1 }), fc.nat({ max: 255 }))
      .map(([at, to]) => whole.with(at, to)),
  );
  fc.assert(
    fc.property(fc.array(bytes, { maxLength: 4 }), (strays) => {
      const strayEntries = strays.map((value, i) => ({ key: i + 10, value }));
      const { doc, aside } = sift([...strayEntries, entryOf(1), entryOf(2)]);
      expect(doc.getMap('record').toJSON()).toMatchObject({
        'field 1': 'typed',
        'field 2': 'typed',
      });
      for (const each of aside) expect(strayEntries).toContain(each);
      // What came of it is sound: it is written and read again.
      expect(isUpdate(Y.encodeStateAsUpdate(doc))).toBe(true);
    }),
    { numRuns: 2000 },
  );
});

test('V20: an update that decodes and cannot be taken in is set aside too', () => {
  const doc = new Y.Doc();
  doc.clientID = 5;
  doc.getMap('record').set('a', 'x');
  doc.getMap('record').set('a', 'y');
  const update = Y.encodeStateAsUpdate(doc);
  // The replaced value comes first, its field, then how much was deleted of it: here nothing.
  const length = update.indexOf('a'.charCodeAt(0)) + 1;
  const stray = { key: 1, value: update.with(length, 0) };
  expect(isUpdate(stray.value)).toBe(true);
  expect(() => Y.applyUpdate(new Y.Doc(), stray.value)).toThrow();
  const { doc: read, aside } = sift([stray, entryOf(2)]);
  expect(aside).toEqual([stray]);
  expect(read.getMap('record').toJSON()).toEqual({ 'field 2': 'typed' });
});
