import fc from 'fast-check';
import { expect, test } from 'vitest';
import * as Y from 'yjs';
import { stateWithoutGaps } from './gaps.ts';

/** Updates of a document in which each of the edits was made, one each. */
const updatesOf = (...edits: readonly ((doc: Y.Doc) => void)[]): Uint8Array[] => {
  const doc = new Y.Doc();
  const updates: Uint8Array[] = [];
  doc.on('update', (update: Uint8Array) => updates.push(update));
  for (const edit of edits) edit(doc);
  return updates;
};
const set = (key: string, value: string) => (doc: Y.Doc) =>
  void doc.getMap('record').set(key, value);

const readFrom = (updates: readonly Uint8Array[]): Y.Doc => {
  const doc = new Y.Doc();
  for (const update of updates) Y.applyUpdate(doc, update);
  return doc;
};

test('V21: what was typed after a lost update is there, but for the very field that was lost', () => {
  const updates = updatesOf(
    set('name', 'Vest'),
    set('needle', '4'),
    set('name', 'Vest for Ada'),
    set('needle', '4.5'),
    set('mass', '300'),
    set('mass', '310'),
  );
  const doc = readFrom(updates.toSpliced(2, 1));
  // The old needle is taken out, the new one waits.
  expect(doc.getMap('record').toJSON()).toEqual({ name: 'Vest' });
  const mended = readFrom([stateWithoutGaps(doc)]);
  expect(mended.getMap('record').toJSON()).toEqual({ name: 'Vest', needle: '4.5', mass: '310' });
  expect(mended.store.pendingStructs).toBe(null);
});

test('V21: edits that stand on those of another writer come in too', () => {
  const one = new Y.Doc();
  one.getMap('record').set('name', 'Vest');
  const list = new Y.Array<string>();
  one.getMap('record').set('notes', list);
  list.push(['lost']);
  const known = Y.encodeStateAsUpdate(one);
  const other = readFrom([known]);
  const later: Uint8Array[] = [];
  other.on('update', (update: Uint8Array) => later.push(update));
  (other.getMap('record').get('notes') as Y.Array<string>).push(['after']);
  other.getMap('record').set('mass', '300');
  const doc = readFrom([stateWithoutGaps(readFrom(later))]);
  expect(doc.getMap('record').toJSON()).toEqual({ mass: '300' });
});

test('V21: whichever updates are lost, nothing waits any more and nothing that was there goes', () => {
  const key = fc.constantFrom('a', 'b', 'c', 'd');
  fc.assert(
    fc.property(
      fc.array(fc.tuple(key, fc.string({ maxLength: 3 }), fc.boolean()), { maxLength: 30 }),
      (edits) => {
        const updates = updatesOf(...edits.map(([at, value]) => set(at, value)));
        const doc = readFrom(updates.filter((_, i) => edits[i]?.[2]));
        const before = doc.getMap('record').toJSON();
        const mended = readFrom([stateWithoutGaps(doc)]);
        expect(mended.store.pendingStructs).toBe(null);
        expect(Object.keys(mended.getMap('record').toJSON())).toEqual(
          expect.arrayContaining(Object.keys(before)),
        );
      },
    ),
  );
});
