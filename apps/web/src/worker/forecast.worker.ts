/// <reference lib="webworker" />
import { forecast, gaugeSteps } from '@dryflat/engine/garment';
import { askForecast } from '@dryflat/record';
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

let latest: Ask | null = null;

/** Questions that arrive while one is worked on wait; only the last of them is worked on next. */
const work = (): void => {
  if (latest === null) return;
  const asked = latest;
  latest = null;
  postMessage(answer(asked));
};

addEventListener('message', (event: MessageEvent<Ask>) => {
  const idle = latest === null;
  latest = event.data;
  if (idle) setTimeout(work, 0);
});
