import { PAPERS } from '@dryflat/paper/paper-size';
import { type ReactNode, useCallback, useState } from 'react';
import { Button, Card, Notice } from '../../kit/index.ts';
import { useSaveFile, useTellHalfTyped } from '../../shell/save-file.ts';
import type { PaperPage } from '../../worker/paper/index.ts';
import { PagePicture } from './page-picture.tsx';
import { PrintPages } from './print-pages.tsx';

/** The pages to look at, and the ways out: a PDF, one page as SVG, the printer. */
export const PagesCard = ({
  title,
  pages,
  paper,
  fileName,
  pending,
  writing,
  onPdf,
  toScale,
  more,
}: {
  title: string;
  pages: readonly PaperPage[];
  paper: keyof typeof PAPERS;
  /** Of the files to save, without an ending. */
  fileName: string;
  /** Newer pages are on their way. */
  pending: boolean;
  writing: boolean;
  onPdf: () => void;
  /** True: they are of no use unless they are printed at their own size. */
  toScale: boolean;
  /** Other ways out, beside the PDF. */
  more?: ReactNode;
}) => {
  const [printing, setPrinting] = useState(false);
  const saveFile = useSaveFile();
  const tellHalfTyped = useTellHalfTyped();
  const printed = useCallback(() => setPrinting(false), []);
  return (
    <Card title={`${title}: ${pages.length} page${pages.length === 1 ? '' : 's'}`}>
      {toScale && (
        <Notice tone="unsure">
          Print at 100 %, without fitting to the page. Print one sheet first, and check both lines
          on it with a ruler: 100 mm and 4 in.
        </Notice>
      )}
      <div className="df-row">
        <Button look="main" icon="fetch" onPress={onPdf} isDisabled={writing || pending}>
          {writing ? 'Writing the PDF…' : 'Save as PDF'}
        </Button>
        <Button
          onPress={() => {
            setPrinting(true);
            tellHalfTyped();
          }}
          isDisabled={pending}
        >
          Print
        </Button>
        {more}
      </div>
      <ol className="pa-pages" aria-busy={pending}>
        {pages.map((page, at) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: pages have no other name and are replaced whole
          <li key={at}>
            <PagePicture page={page} />
            <Button
              look="quiet"
              icon="fetch"
              isDisabled={pending}
              onPress={() => saveFile(`${fileName}-${at + 1}.svg`, page.svg, 'image/svg+xml')}
            >
              Page {at + 1} as SVG
            </Button>
          </li>
        ))}
      </ol>
      {printing && (
        <PrintPages title={fileName} pages={pages} {...PAPERS[paper]} onDone={printed} />
      )}
    </Card>
  );
};
