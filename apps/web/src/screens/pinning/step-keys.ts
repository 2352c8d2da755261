import { useEffect, useRef } from 'react';

/** What a key does; clickers send Page Down and Page Up. Null: nothing. */
export const stepOfKey = (key: string): 1 | -1 | null => {
  if ([' ', 'Enter', 'ArrowRight', 'PageDown'].includes(key)) return 1;
  return ['ArrowLeft', 'PageUp'].includes(key) ? -1 : null;
};

/** Space and Enter press what has the focus, and everything is typed where something is typed. */
const itsOwn = (key: string, target: EventTarget | null): boolean => {
  if (!(target instanceof Element)) return false;
  if (target.closest('input, textarea, select, [role="dialog"], [role="alertdialog"]')) return true;
  return (key === ' ' || key === 'Enter') && target.closest('a, button, summary') !== null;
};

/** Goes through the steps by key while `on` and no sheet is open. */
export const useStepKeys = (on: boolean, go: (step: 1 | -1) => void): void => {
  const latest = useRef(go);
  latest.current = go;
  useEffect(() => {
    if (!on) return;
    const press = (event: KeyboardEvent): void => {
      const step = stepOfKey(event.key);
      const held = event.repeat || event.ctrlKey || event.metaKey || event.altKey;
      if (step === null || held || itsOwn(event.key, event.target)) return;
      event.preventDefault();
      latest.current(step);
    };
    addEventListener('keydown', press);
    return () => removeEventListener('keydown', press);
  }, [on]);
};
