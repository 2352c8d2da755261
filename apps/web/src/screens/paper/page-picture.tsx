import { useEffect, useRef } from 'react';
import type { PaperPage } from '../../worker/paper/index.ts';

/** A page as it will be printed: its own SVG, in the letters of the app. */
export const PagePicture = ({ page }: { page: PaperPage }) => {
  const box = useRef<HTMLDivElement>(null);
  useEffect(() => {
    const { documentElement } = new DOMParser().parseFromString(page.svg, 'image/svg+xml');
    box.current?.replaceChildren(document.importNode(documentElement, true));
  }, [page.svg]);
  return <div className="pa-picture" ref={box} role="img" aria-label={page.title} />;
};
