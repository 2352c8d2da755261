import type { Lengths } from '../kit/index.ts';
import type { ForecastNow } from '../worker/index.ts';

/** The forecast in a few words, for the line that follows the knitter from place to place. */
export const forecastLine = (
  { forecast, faults, broken }: ForecastNow,
  lengths: Pick<Lengths, 'range'>,
): { readonly main: string; readonly more: string } => {
  if (broken !== null) return { main: 'No forecast', more: 'the calculation failed' };
  if (faults.length > 0)
    return { main: 'No forecast yet', more: `${faults.length} to mend or fill in` };
  if (forecast === null) return { main: 'Forecast', more: 'working it out' };
  const first = forecast.measurements[0];
  const size = first
    ? `${first.name} ${rangeOf(first.states[forecast.judgedAt], lengths)}`
    : 'nothing to measure yet';
  if (forecast.chanceAllFit === null) return { main: size, more: 'likely, once it is dry' };
  return { main: `Fits: ${outOf(forecast.chanceAllFit)}`, more: size };
};

const rangeOf = (
  { p05Mm, p95Mm }: { p05Mm: number; p95Mm: number },
  lengths: Pick<Lengths, 'range'>,
): string => lengths.range(p05Mm, p95Mm);

/** A chance as people count: `72 in 100`; never 0 or 100, which nobody knows. */
export const outOf = (chance: number): string => {
  if (chance < 0.01) return 'less than 1 in 100';
  if (chance > 0.99) return 'more than 99 in 100';
  return `${Math.round(chance * 100)} in 100`;
};
