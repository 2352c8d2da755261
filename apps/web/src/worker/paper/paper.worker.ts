/// <reference lib="webworker" />

import type { Result } from '@dryflat/engine/units';
import { toPdf, toSvg } from '@dryflat/paper';
import { loadFaces } from './load-faces.ts';
import type { PaperAnswer, PaperAsk, PaperQuestion } from './protocol.ts';
import { type Made, sheetsOf } from './sheets-of.ts';

const say = (told: PaperAnswer): void => postMessage(told);

/** Progress is told no more often than it can be seen, ms. */
const PROGRESS_EVERY = 100;

const teller = (turn: number): ((done: number) => void) => {
  let told = 0;
  return (done) => {
    if (performance.now() - told <= PROGRESS_EVERY) return;
    told = performance.now();
    say({ kind: 'progress', turn, done });
  };
};

/** The last sheets: those that are looked at are those that are saved. */
let kept: { readonly key: string; readonly made: Result<Made> } | null = null;

const sheetsFor = async (question: PaperQuestion, turn: number) => {
  const faces = await loadFaces();
  const key = JSON.stringify(question);
  if (kept?.key !== key) kept = { key, made: sheetsOf(question, faces, teller(turn)) };
  return { made: kept.made, faces };
};

const answer = async ({ turn, question, pdf }: PaperAsk): Promise<PaperAnswer> => {
  try {
    const { made, faces } = await sheetsFor(question, turn);
    if (!made.ok) return { kind: 'faults', turn, faults: made.faults };
    const { sheets, title, report } = made.value;
    if (pdf === null) {
      const pages = sheets.map((sheet) => ({ title: sheet.title, svg: toSvg(sheet) }));
      return { kind: 'pages', turn, pages, report };
    }
    const about = { title, made: new Date(pdf), faces };
    return { kind: 'pdf', turn, bytes: await toPdf(sheets, about) };
  } catch (error) {
    return { kind: 'broken', turn, message: error instanceof Error ? error.message : `${error}` };
  }
};

addEventListener('message', async ({ data }: MessageEvent<PaperAsk>) => say(await answer(data)));
