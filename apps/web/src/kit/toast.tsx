import { useSyncExternalStore } from 'react';
import { Button, IconButton } from './button.tsx';
import './toast.css';

interface Toast {
  readonly id: number;
  readonly text: string;
  readonly undo: (() => void) | null;
}

/** How long a toast stays, in milliseconds: long enough to read and reach. Chosen, no source. */
const STAYS = 12_000;

let toasts: readonly Toast[] = [];
let last = 0;
const listeners = new Set<() => void>();

const set = (next: readonly Toast[]): void => {
  toasts = next;
  for (const listener of listeners) listener();
};
const drop = (id: number): void => set(toasts.filter((each) => each.id !== id));

/** Says briefly what was done, and offers to take it back. */
export const toast = (text: string, undo: (() => void) | null = null): void => {
  last += 1;
  const id = last;
  set([...toasts.slice(-2), { id, text, undo }]);
  setTimeout(drop, STAYS, id);
};

const subscribe = (listener: () => void): (() => void) => {
  listeners.add(listener);
  return () => listeners.delete(listener);
};

/** Where toasts appear; once per page. */
export const Toasts = () => {
  const all = useSyncExternalStore(subscribe, () => toasts);
  return (
    <div className="df-toasts" role="status" aria-live="polite">
      {all.map(({ id, text, undo }) => (
        <div key={id} className="df-toast">
          <span>{text}</span>
          {undo && (
            <Button
              onPress={() => {
                drop(id);
                undo();
              }}
            >
              Undo
            </Button>
          )}
          <IconButton icon="close" label="Dismiss" onPress={() => drop(id)} />
        </div>
      ))}
    </div>
  );
};
