import type { GarmentRecord } from '@dryflat/record';
import { CURRENT_VERSION } from '@dryflat/record/version';
import { expect, test, vi } from 'vitest';
import * as Y from 'yjs';
import { garmentStore } from './garment-store.ts';

const record = (over: Partial<Record<keyof GarmentRecord, unknown>> = {}): GarmentRecord =>
  ({
    format: 'dryflat-garment',
    version: CURRENT_VERSION,
    id: 'g1',
    name: 'Test vest',
    kind: 'vest',
    stitch: 'stockinette',
    wearer: { name: '', group: 'woman', body: [], wanted: [] },
    pattern: { name: '', sizes: ['S', 'M'], measurements: [] },
    yarns: [],
    evidence: [],
    pieces: [],
    plan: { drying: 'lay', pinTo: [], judgeAt: 'dried' },
    forecasts: [],
    outcomes: [],
    notes: [],
    ...over,
  }) as GarmentRecord;

const opened = (over: Partial<Record<keyof GarmentRecord, unknown>> = {}) => {
  const store = garmentStore(new Y.Doc());
  store.put(record(over));
  return store;
};

test('V7: an empty document has no record', () => {
  expect(garmentStore(new Y.Doc()).snapshot().record).toBeNull();
});

test('V8: undo takes back a change and redo brings it again', () => {
  const store = opened();
  expect(store.snapshot().canUndo).toBe(false);
  store.change((draft) => {
    draft.name = 'Renamed';
  });
  expect(store.snapshot()).toMatchObject({ record: { name: 'Renamed' }, canUndo: true });
  store.undo();
  expect(store.snapshot()).toMatchObject({ record: { name: 'Test vest' }, canRedo: true });
  store.redo();
  expect(store.snapshot().record?.name).toBe('Renamed');
});

test('V8: what is done apart is taken back apart, however soon more follows', () => {
  const store = opened();
  const named = (name: string, apart?: 'apart') =>
    store.change((draft) => {
      draft.name = name;
    }, apart);
  named('before');
  named('begun', 'apart');
  named('after');
  named('at once after');
  const names: (string | undefined)[] = [];
  while (store.snapshot().canUndo) {
    store.undo();
    names.push(store.snapshot().record?.name);
  }
  expect(names).toEqual(['begun', 'before', 'Test vest']);
});

test('V8: undo leaves alone what another device did', () => {
  const doc = new Y.Doc();
  const store = garmentStore(doc);
  store.put(record());
  const away = new Y.Doc();
  Y.applyUpdate(away, Y.encodeStateAsUpdate(doc));
  const other = garmentStore(away);
  store.change((draft) => {
    draft.name = 'Here';
  });
  other.change((draft) => {
    draft.needleMm = 4;
  });
  Y.applyUpdate(doc, Y.encodeStateAsUpdate(away), 'sync');
  store.undo();
  expect(store.snapshot().record).toMatchObject({ name: 'Test vest', needleMm: 4 });
});

test('V9: a record of a newer version is shown and cannot be changed', () => {
  const store = opened({ version: 99 });
  store.change((draft) => {
    draft.name = 'No';
  });
  expect(store.snapshot()).toMatchObject({ readOnly: true, record: { name: 'Test vest' } });
});

test('V10: a draft is kept as typed, outside undo, until it is taken away', () => {
  const store = opened();
  const told = vi.fn();
  store.subscribe(told);
  store.setDraft('needleMm', '13 3/');
  expect(store.snapshot().drafts).toEqual({ needleMm: '13 3/' });
  expect(store.snapshot().canUndo).toBe(false);
  expect(told).toHaveBeenCalled();
  store.setDraft('needleMm', null);
  expect(store.snapshot().drafts).toEqual({});
});

test('V11: a field set to undefined is left out of the record', () => {
  const store = opened({ needleMm: 4 });
  store.change((draft) => {
    (draft as { needleMm?: number | undefined }).needleMm = undefined;
  });
  expect(Object.keys(store.snapshot().record ?? {})).not.toContain('needleMm');
});

test('V9: the file of a newer version is kept as it was, and locks the record until it is gone', () => {
  const store = garmentStore(new Y.Doc());
  store.put(record(), '{ "version": 99 }');
  expect(store.snapshot().readOnly).toBe(true);
  expect(store.original()).toBe('{ "version": 99 }');
  store.put(record());
  expect(store.snapshot().readOnly).toBe(false);
  expect(store.original()).toBeNull();
});

test('V20: drafts and a kept file that are no texts are none', () => {
  const doc = new Y.Doc();
  doc.getMap('drafts').set('yarns/1/name', 7);
  doc.getMap('drafts').set('massG', '13 3/');
  doc.getMap('file').set('newer', { version: 99 });
  const store = garmentStore(doc);
  expect(store.snapshot().drafts).toEqual({ massG: '13 3/' });
  expect(store.original()).toBe(null);
  expect(store.snapshot().readOnly).toBe(false);
});
