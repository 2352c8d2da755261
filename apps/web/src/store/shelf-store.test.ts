import { expect, test } from 'vitest';
import * as Y from 'yjs';
import { type ShelfEntry, shelfStore } from './shelf-store.ts';

const entry = (id: string, since: string): ShelfEntry => ({
  id,
  name: id,
  kind: 'vest',
  wearer: '',
  since,
});

test('V12: the newest garment comes first, and an entry is changed in place', () => {
  const shelf = shelfStore(new Y.Doc());
  shelf.put(entry('old', '2024-01-01T00:00:00Z'));
  shelf.put(entry('new', '2024-02-01T00:00:00Z'));
  shelf.put({ ...entry('old', '2024-01-01T00:00:00Z'), name: 'Renamed' });
  expect(shelf.entries().map((each) => each.name)).toEqual(['new', 'Renamed']);
});

test('V13: taking a garment out of the trash leaves no trace of the trash', () => {
  const shelf = shelfStore(new Y.Doc());
  shelf.put({ ...entry('a', '2024-01-01T00:00:00Z'), trashed: '2024-03-01T00:00:00Z' });
  shelf.put(entry('a', '2024-01-01T00:00:00Z'));
  expect(shelf.entries()[0]).not.toHaveProperty('trashed');
  shelf.remove('a');
  expect(shelf.entries()).toEqual([]);
});

test('V14: listeners hear of settings, and an unchanged list stays the same object', () => {
  const shelf = shelfStore(new Y.Doc());
  shelf.put(entry('a', '2024-01-01T00:00:00Z'));
  const before = shelf.entries();
  let heard = 0;
  shelf.subscribe(() => heard++);
  shelf.setSetting('units', 'in');
  expect(heard).toBe(1);
  expect(shelf.settings()).toEqual({ units: 'in' });
  expect(shelf.entries()).toBe(before);
});

test('V22: whatever stands on the shelf, each garment is listed under its id, and put in order by its record', () => {
  const doc = new Y.Doc();
  const garments = doc.getMap('garments');
  garments.set('number', 7);
  garments.set('empty', new Y.Map());
  garments.set('list', new Y.Array());
  garments.set(
    'odd',
    new Y.Map<unknown>([
      ['name', {}],
      ['kind', 3],
      ['since', null],
      ['trashed', 5],
    ]),
  );
  const shelf = shelfStore(doc);
  shelf.put(entry('sound', '2024-01-01T00:00:00Z'));
  const nameless = { name: '', kind: 'other', wearer: '', since: '' };
  expect(shelf.entries()).toEqual([
    entry('sound', '2024-01-01T00:00:00Z'),
    ...['empty', 'list', 'number', 'odd'].map((id) => ({ id, ...nameless })),
  ]);
  shelf.put(entry('number', '2024-02-01T00:00:00Z'));
  shelf.put(entry('odd', '2024-02-01T00:00:00Z'));
  expect(shelf.entries().map(({ name }) => name)).toEqual(['number', 'odd', 'sound', '', '']);
});
