import { type RefObject, useEffect, useState } from 'react';

export interface Sheet {
  /** px */
  readonly width: number;
  /** Root font size, px: grows with the reader's text size. */
  readonly rem: number;
}

/** What a phone gives, used until the page has been measured. */
const UNTIL_MEASURED: Sheet = { width: 358, rem: 16 };

const measure = (element: HTMLElement): Sheet => ({
  width: element.clientWidth,
  rem: Number.parseFloat(getComputedStyle(document.documentElement).fontSize) || 16,
});

/** Width of an element and the root font size, kept up to date. */
export const useSheet = (ref: RefObject<HTMLElement | null>): Sheet => {
  const [sheet, setSheet] = useState(UNTIL_MEASURED);
  useEffect(() => {
    const element = ref.current;
    if (element === null) return;
    const update = () =>
      setSheet((old) => {
        const now = measure(element);
        return now.width === old.width && now.rem === old.rem ? old : now;
      });
    const observer = new ResizeObserver(update);
    observer.observe(element);
    observer.observe(document.documentElement);
    update();
    return () => observer.disconnect();
  }, [ref]);
  return sheet;
};
