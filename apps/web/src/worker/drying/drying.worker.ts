import { type DryingQuestion, forecastDrying, type Spread } from '@dryflat/engine/drying';
import { askDrying } from '@dryflat/record/dry';
import { answerLatest } from '../answer-latest.ts';
import { SEED } from '../protocol.ts';
import type { Doubt, DryingAnswer, DryingAsk, Otherwise } from './protocol.ts';

const hoursAt = (question: DryingQuestion, humidityPercent: number): Spread | null => {
  const told = forecastDrying(
    { ...question, air: { ...question.air, humidityPercent } },
    { seed: SEED },
  );
  return told.ok ? told.value.dryHours : null;
};

/** Weighings tell the rate whatever the air, so the doubt is of the time before the first. */
const otherwiseOf = (question: DryingQuestion, doubt: Doubt | null): Otherwise | null => {
  if (doubt === null || question.weighings.length > 0) return null;
  const [drier, damper] = [hoursAt(question, doubt.low), hoursAt(question, doubt.high)];
  return drier && damper && { drier, damper };
};

const answer = ({ turn, record, id, humidity }: DryingAsk): DryingAnswer => {
  try {
    const asked = askDrying(record, id);
    if (!asked.ok) return { kind: 'faults', turn, faults: asked.faults };
    const told = forecastDrying(asked.value, { seed: SEED });
    if (!told.ok) return { kind: 'faults', turn, faults: told.faults };
    const otherwise = otherwiseOf(asked.value, humidity);
    return { kind: 'drying', turn, id, forecast: told.value, otherwise };
  } catch (error) {
    return { kind: 'broken', turn, message: error instanceof Error ? error.message : `${error}` };
  }
};

answerLatest(answer);
