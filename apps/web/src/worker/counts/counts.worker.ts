import { answerLatest } from '../answer-latest.ts';
import { answerCounts } from './answer-counts.ts';
import type { CountsAnswer, CountsAsk } from './protocol.ts';

const answer = (asked: CountsAsk): CountsAnswer => {
  try {
    return answerCounts(asked);
  } catch (error) {
    const message = error instanceof Error ? error.message : `${error}`;
    return { kind: 'broken', turn: asked.turn, message };
  }
};

answerLatest(answer);
