import { useEffect, useEffectEvent, useState } from 'react';

const hasFile = (event: DragEvent): boolean => event.dataTransfer?.types.includes('Files') ?? false;

const inField = (target: EventTarget | null): boolean =>
  target instanceof Element && target.closest('input, textarea, [role="dialog"]') !== null;

/**
 * Takes a file dropped anywhere on the page, or a garment pasted outside a field, as text. True
 * while a file hovers.
 */
export const useDroppedFiles = (onText: (text: string) => void): boolean => {
  const [hovering, setHovering] = useState(false);
  const take = useEffectEvent(onText);
  useEffect(() => {
    const over = (event: DragEvent): void => {
      if (!hasFile(event)) return;
      event.preventDefault();
      setHovering(true);
    };
    const leave = (event: DragEvent): void => {
      if (event.relatedTarget === null) setHovering(false);
    };
    const drop = (event: DragEvent): void => {
      if (!hasFile(event)) return;
      event.preventDefault();
      setHovering(false);
      void event.dataTransfer?.files[0]?.text().then(take);
    };
    const paste = (event: ClipboardEvent): void => {
      const text = event.clipboardData?.getData('text/plain') ?? '';
      if (!inField(event.target) && text.trimStart().startsWith('{')) take(text);
    };
    addEventListener('dragover', over);
    addEventListener('dragleave', leave);
    addEventListener('drop', drop);
    addEventListener('paste', paste);
    return () => {
      removeEventListener('dragover', over);
      removeEventListener('dragleave', leave);
      removeEventListener('drop', drop);
      removeEventListener('paste', paste);
    };
  }, []);
  return hovering;
};
