import { useEffect, useRef } from 'react';

let first = true;

/**
 * For the heading of a place: names the page, and takes the focus when the place is come to from
 * another, so that a keyboard or a screen reader goes on from there.
 */
export const useArrival = <E extends HTMLElement>(title: string, place: string) => {
  const heading = useRef<E>(null);
  useEffect(() => {
    document.title = `${title} · Dryflat`;
  }, [title]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: a new place is what is arrived at
  useEffect(() => {
    if (!first) {
      scrollTo(0, 0);
      heading.current?.focus({ preventScroll: true });
    }
    first = false;
  }, [place]);
  return heading;
};
