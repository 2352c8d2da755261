/// <reference lib="webworker" />

import type { Result } from '@dryflat/engine/units';
import { type Sheet, toPdf, toSvg } from '@dryflat/paper';
import { loadFaces } from './load-faces.ts';
import type { PaperAnswer, PaperAsk, PaperQuestion } from './protocol.ts';
import { sheetsOf } from './sheets-of.ts';

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
let kept: { readonly key: string; readonly sheets: Result<readonly Sheet[]> } | null = null;

const sheetsFor = async (question: PaperQuestion, turn: number) => {
  const faces = await loadFaces();
  const key = JSON.stringify(question);
  if (kept?.key !== key) kept = { key, sheets: sheetsOf(question, faces, teller(turn)) };
  return { sheets: kept.sheets, faces };
};

const answer = async ({ turn, question, pdf }: PaperAsk): Promise<PaperAnswer> => {
  try {
    const { sheets, faces } = await sheetsFor(question, turn);
    if (!sheets.ok) return { kind: 'faults', turn, faults: sheets.faults };
    if (pdf === null) {
      const pages = sheets.value.map((sheet) => ({ title: sheet.title, svg: toSvg(sheet) }));
      return { kind: 'pages', turn, pages };
    }
    const about = { title: question.record.name, made: new Date(pdf), faces };
    return { kind: 'pdf', turn, bytes: await toPdf(sheets.value, about) };
  } catch (error) {
    return { kind: 'broken', turn, message: error instanceof Error ? error.message : `${error}` };
  }
};

addEventListener('message', async ({ data }: MessageEvent<PaperAsk>) => say(await answer(data)));
