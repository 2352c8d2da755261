import fc from 'fast-check';
import { expect, test } from 'vitest';
import * as Y from 'yjs';
import { type JsonObject, sameJson } from './json.ts';
import { editMap } from './mirror.ts';

const mirrorOf = (value: JsonObject): Y.Map<unknown> => {
  const root = new Y.Doc().getMap('root');
  root.doc?.transact(() => editMap(root, {}, value));
  return root;
};

const edit = (root: Y.Map<unknown>, after: JsonObject): void =>
  root.doc?.transact(() => editMap(root, root.toJSON() as JsonObject, after));

const leaf = fc.oneof(fc.integer(), fc.string({ maxLength: 4 }), fc.boolean(), fc.constant(null));
const row = fc.record({ v: leaf, more: fc.array(leaf, { maxLength: 3 }) });
const rows = fc
  .uniqueArray(fc.constantFrom('a', 'b', 'c', 'd', 'e'))
  .chain((ids) =>
    fc.tuple(...ids.map((id) => row.map((each) => ({ id, ...each })))).map((list) => [...list]),
  );
const tree = fc.record({
  rows,
  plain: fc.array(fc.oneof(leaf, row), { maxLength: 5 }),
  inner: fc.dictionary(fc.constantFrom('x', 'y', 'z'), leaf),
});

test('V1: whatever the edit, the mirror ends up equal to what was wanted', () => {
  fc.assert(
    fc.property(tree, tree, (before, after) => {
      const root = mirrorOf(before as JsonObject);
      edit(root, after as JsonObject);
      expect(sameJson(root.toJSON(), after)).toBe(true);
    }),
  );
});

test('V2: a member that stays in order keeps its shared value', () => {
  const root = mirrorOf({ rows: ['a', 'b', 'c', 'd'].map((id) => ({ id, v: 1 })) });
  const list = root.get('rows') as Y.Array<Y.Map<unknown>>;
  const c = list.get(2);
  edit(root, { rows: ['b', 'c', 'new', 'd'].map((id) => ({ id, v: id === 'c' ? 2 : 1 })) });
  expect(list.get(1)).toBe(c);
  expect(c.get('v')).toBe(2);
});

test('V2: moving the first member to the end touches only that member', () => {
  const root = mirrorOf({ rows: ['a', 'b', 'c'].map((id) => ({ id })) });
  const list = root.get('rows') as Y.Array<Y.Map<unknown>>;
  const [, b, c] = list.toArray();
  edit(root, { rows: ['b', 'c', 'a'].map((id) => ({ id })) });
  expect(list.get(0)).toBe(b);
  expect(list.get(1)).toBe(c);
});

test('V3: edits of two devices to different fields of one row both survive a merge', () => {
  const here = mirrorOf({ rows: [{ id: 'a', v: 1, w: 1 }] });
  const there = new Y.Doc();
  Y.applyUpdate(there, Y.encodeStateAsUpdate(here.doc!));
  const away = there.getMap('root');
  edit(here, { rows: [{ id: 'a', v: 2, w: 1 }] });
  edit(away, { rows: [{ id: 'a', v: 1, w: 3 }] });
  Y.applyUpdate(here.doc!, Y.encodeStateAsUpdate(there));
  expect(here.toJSON()).toEqual({ rows: [{ id: 'a', v: 2, w: 3 }] });
});

test('V4: no difference, no edit', () => {
  const root = mirrorOf({ rows: [{ id: 'a', values: [1, null, 2] }] });
  let updates = 0;
  root.doc?.on('update', () => updates++);
  edit(root, { rows: [{ id: 'a', values: [1, null, 2] }] });
  expect(updates).toBe(0);
});
