import type { GarmentRecord } from '@dryflat/record';
import {
  createContext,
  type ReactNode,
  use,
  useCallback,
  useContext,
  useEffect,
  useMemo,
  useSyncExternalStore,
} from 'react';
import { openGarment } from './device.ts';
import type { GarmentSnapshot, GarmentStore } from './garment-store.ts';
import { noteOnShelf } from './shelf-actions.ts';
import { useOpening } from './use-shelf.ts';

const Opened = createContext<GarmentStore | null>(null);

/** Opens the garment for everything inside; suspends while it is read from the device. */
export const GarmentProvider = ({
  id,
  missing,
  unopened,
  children,
}: {
  id: string;
  /** Shown where the device keeps no garment of that id. */
  missing: ReactNode;
  /** Shown where it may keep one, but does not get at it. */
  unopened: ReactNode;
  children: ReactNode;
}) => {
  const store = use(openGarment(id));
  const opening = useOpening(id);
  const { record } = useSyncExternalStore(store.subscribe, store.snapshot);
  const label = record === null ? '' : `${record.name}\n${record.kind}\n${record.wearer?.name}`;
  useEffect(() => {
    if (label !== '') void noteOnShelf(id);
  }, [id, label]);
  if (record === null) return opening === 'open' ? missing : unopened;
  return <Opened value={store}>{children}</Opened>;
};

const useStore = (): GarmentStore => {
  const store = useContext(Opened);
  if (store === null) throw new Error('useGarment is only for use inside a GarmentProvider');
  return store;
};

export interface Garment extends Pick<GarmentSnapshot, 'readOnly' | 'canUndo' | 'canRedo'> {
  readonly record: GarmentRecord;
  readonly change: GarmentStore['change'];
  readonly undo: () => void;
  readonly redo: () => void;
}

/** The garment that is open, and the ways to change it. */
export const useGarment = (): Garment => {
  const store = useStore();
  const { record, readOnly, canUndo, canRedo } = useSyncExternalStore(
    store.subscribe,
    store.snapshot,
  );
  return useMemo(
    () => ({
      record: record as GarmentRecord,
      readOnly,
      canUndo,
      canRedo,
      change: store.change,
      undo: store.undo,
      redo: store.redo,
    }),
    [record, readOnly, canUndo, canRedo, store],
  );
};

/**
 * Text typed into a field that could not be used yet, exactly as typed; null when there is none.
 * It is written to the device at every keystroke and outlives the tab. `path` names the field by
 * ids, not places: `evidence/<id>/readings/<id>/overMm`.
 */
export const useDraftText = (path: string): [string | null, (text: string | null) => void] => {
  const store = useStore();
  const text = useSyncExternalStore(store.subscribe, () => store.snapshot().drafts[path] ?? null);
  const set = useCallback((next: string | null) => store.setDraft(path, next), [store, path]);
  return [text, set];
};

/** Paths of all fields whose text could not be used yet. */
export const useDrafts = (): Readonly<Record<string, string>> => {
  const store = useStore();
  return useSyncExternalStore(store.subscribe, () => store.snapshot().drafts);
};
