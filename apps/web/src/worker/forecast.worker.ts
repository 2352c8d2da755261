import { forecast, gaugeSteps } from '@dryflat/engine/garment';
import { askForecast } from '@dryflat/record';
import { answerLatest } from './answer-latest.ts';
import { type Answer, type Ask, SEED } from './protocol.ts';

const answer = ({ turn, record }: Ask): Answer => {
  try {
    const asked = askForecast(record);
    if (!asked.ok) return { kind: 'faults', turn, faults: asked.faults };
    return {
      kind: 'forecast',
      turn,
      forecast: forecast(asked.value, { seed: SEED }),
      steps: gaugeSteps(asked.value),
    };
  } catch (error) {
    return { kind: 'broken', turn, message: error instanceof Error ? error.message : `${error}` };
  }
};

answerLatest(answer);
