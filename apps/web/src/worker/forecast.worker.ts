import { forecast, forecastEach, gaugeSteps } from '@dryflat/engine/garment';
import { askEachSize, askForecast } from '@dryflat/record';
import { answerLatest } from './answer-latest.ts';
import { type Answer, type Ask, SEED } from './protocol.ts';

const answer = ({ turn, record }: Ask): Answer => {
  try {
    const asked = askForecast(record);
    const sizes = askEachSize(record);
    const [first] = sizes?.ok ? sizes.value : [];
    if (!asked.ok && sizes?.ok && first)
      return {
        kind: 'sizes',
        turn,
        each: forecastEach(sizes.value, { seed: SEED }),
        steps: gaugeSteps(first),
        faults: asked.faults,
      };
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
