import type { Evidence, Kept } from '../fabric/index.ts';
import { meanOf, type Posterior, unitMean, unitSd } from '../stats/index.ts';
import type { ForecastQuestion } from './forecast-types.ts';
import { logIn, type SizedMeasurement, type SizeModel, tapeEvidence } from './size-model.ts';
import type { Passage } from './state-lengths.ts';

/**
 * Tape readings whose state is not a rest: dried after pinning, or worn. They are turned back into
 * readings of the rest length, with the doubt about what stayed and how far it hung added to the
 * tape's. The change is taken at the posterior mean of the evidence at rest (one linearisation).
 */
export const plannedEvidence = (
  question: ForecastQuestion,
  model: SizeModel,
  passages: readonly Passage[],
  kept: Kept,
  rest: Posterior,
): Evidence[] =>
  model.measurements.flatMap((m, k) => {
    const passage = passages[k]!;
    const set = setShift(model, m, passage, kept, rest);
    const form = logIn(model.fabric, m.asKnit, m, 'dried');
    return m.measured.flatMap((measured) => {
      if (measured.state === 'dried' && question.drying === 'pin')
        return [tapeEvidence(m, measured, form, set.mean, set.sd)];
      if (measured.state !== 'worn') return [];
      const hang = Math.log1p(passage.hang);
      const hangSd = Math.hypot(Math.abs(hang) * passage.hangLogSd, WORN_SD);
      return [tapeEvidence(m, measured, form, set.mean + hang, Math.hypot(set.sd, hangSd))];
    });
  });

/** Measured on a body or a hanger, not laid flat. Common practice, no source. */
const WORN_SD = 0.01;

const setShift = (
  model: SizeModel,
  m: SizedMeasurement,
  passage: Passage,
  kept: Kept,
  rest: Posterior,
): { mean: number; sd: number } => {
  if (passage.pinnedTo === null) return { mean: 0, sd: 0 };
  const wet = Math.exp(meanOf(rest, logIn(model.fabric, m.asKnit, m, 'wet')));
  const stretch = Math.min(Math.max(passage.pinnedTo / wet - 1, 0), passage.pinLimit);
  const share = unitMean(kept.density);
  return {
    mean: Math.log1p(share * stretch),
    sd: (unitSd(kept.density) * stretch) / (1 + share * stretch),
  };
};
