import { useEffect } from 'react';
import { createPortal } from 'react-dom';
import type { PaperPage } from '../../worker/paper/index.ts';
import { PagePicture } from './page-picture.tsx';

/**
 * Pages alone on paper of their size, for as long as the print window is open. Browsers print the title
 * of the page in its margin and name a PDF after it: meanwhile it is `title`.
 */
export const PrintPages = ({
  title,
  pages,
  widthMm,
  heightMm,
  onDone,
}: {
  title: string;
  pages: readonly PaperPage[];
  widthMm: number;
  heightMm: number;
  onDone: () => void;
}) => {
  useEffect(() => {
    const was = document.title;
    document.title = title;
    return () => {
      document.title = was;
    };
  }, [title]);
  useEffect(() => {
    addEventListener('afterprint', onDone, { once: true });
    // One turn later, when the pages are in place.
    const timer = setTimeout(() => window.print(), 0);
    return () => {
      clearTimeout(timer);
      removeEventListener('afterprint', onDone);
    };
  }, [onDone]);
  return createPortal(
    <div className="pa-print" aria-hidden="true">
      <style>{`@page { size: ${widthMm}mm ${heightMm}mm; margin: 0 }`}</style>
      {pages.map((page, at) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: pages have no other name and are replaced whole
        <PagePicture key={at} page={page} />
      ))}
    </div>,
    document.body,
  );
};
