/// <reference lib="webworker" />
import type { RoutesAnswer, RoutesAsk } from './protocol.ts';

const tell = (answer: RoutesAnswer): void => postMessage(answer);

addEventListener('message', ({ data: { turn } }: MessageEvent<RoutesAsk>) => {
  tell({ kind: 'broken', turn, message: 'this is being built' });
});
