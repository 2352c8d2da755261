import { useEffect } from 'react';
import { useGarment } from '../store/index.ts';

const typing = (target: EventTarget | null): boolean =>
  target instanceof Element && target.closest('input, textarea, select, [role="dialog"]') !== null;

/** Ctrl or ⌘ with Z undoes, with Shift or with Y redoes; while typing the keys are the field's own. */
export const useUndoKeys = (): void => {
  const { undo, redo } = useGarment();
  useEffect(() => {
    const press = (event: KeyboardEvent): void => {
      if (!(event.ctrlKey || event.metaKey) || event.altKey || typing(event.target)) return;
      const key = event.key.toLowerCase();
      if (key !== 'z' && key !== 'y') return;
      event.preventDefault();
      if (key === 'y' || event.shiftKey) redo();
      else undo();
    };
    addEventListener('keydown', press);
    return () => removeEventListener('keydown', press);
  }, [undo, redo]);
};
