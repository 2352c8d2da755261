import type { Fault } from '@dryflat/engine/units';
import { useCallback, useEffect, useRef, useState } from 'react';
import { type Asker, asker } from '../../worker/asker.ts';
import {
  makePaperWorker,
  type PaperAnswer,
  type PaperAsk,
  type PaperPage,
  type PaperQuestion,
  type ReportTexts,
} from '../../worker/paper/index.ts';

export interface PaperNow {
  /** The newest pages; none while others of another kind are made. */
  readonly pages: readonly PaperPage[] | null;
  /** With pages of a report. */
  readonly report: ReportTexts | null;
  /** Share of the plan of the mat that is done, 0 to 1; null while none is made. */
  readonly done: number | null;
  readonly faults: readonly Fault[];
  readonly broken: string | null;
  /** Newer pages are being made. */
  readonly pending: boolean;
  /** A PDF is being written. */
  readonly writing: boolean;
}

const START: PaperNow = {
  pages: null,
  report: null,
  done: null,
  faults: [],
  broken: null,
  pending: true,
  writing: false,
};

export const afterPaper = (was: PaperNow, answer: PaperAnswer): PaperNow => {
  if (answer.kind === 'progress') return { ...was, done: answer.done };
  if (answer.kind === 'pages')
    return { ...START, pages: answer.pages, report: answer.report, pending: false };
  if (answer.kind === 'pdf') return { ...was, done: null, writing: false };
  if (answer.kind === 'faults') return { ...START, faults: answer.faults, pending: false };
  return { ...START, broken: answer.message, pending: false };
};

/** Choices pause this long before pages are made of them, ms. */
const PAUSE = 150;

/** Makes the pages that are asked for, in a worker. */
export const usePaper = (
  question: PaperQuestion,
  onPdf: (bytes: Uint8Array) => void,
): PaperNow & { readonly writePdf: () => void } => {
  const [now, setNow] = useState(START);
  const asks = useRef<Asker<PaperAsk> | null>(null);
  const shown = useRef(question.what);
  const take = useRef(onPdf);
  take.current = onPdf;
  useEffect(() => {
    asks.current = asker(
      makePaperWorker,
      (told) => {
        if (told.kind === 'pdf') take.current(told.bytes);
        setNow((was) => afterPaper(was, told));
      },
      'the pages',
    );
    return () => asks.current?.stop();
  }, []);
  useEffect(() => {
    const same = shown.current === question.what;
    shown.current = question.what;
    setNow((was) => ({ ...START, ...(same && { pages: was.pages, report: was.report }) }));
    const timer = setTimeout(() => {
      asks.current?.ask({ question, pdf: null });
    }, PAUSE);
    return () => clearTimeout(timer);
  }, [question]);
  const writePdf = useCallback((): void => {
    setNow((was) => ({ ...was, writing: true }));
    asks.current?.ask({ question, pdf: new Date().toISOString() });
  }, [question]);
  return { ...now, writePdf };
};
