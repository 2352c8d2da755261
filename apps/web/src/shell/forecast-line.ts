import { type EachSize, sizeWords } from '@dryflat/engine/garment';
import type { Lengths } from '../kit/index.ts';
import { chanceWords } from '../screens/result/chance-words.ts';
import type { ForecastNow } from '../worker/index.ts';

/** The forecast in a few words, for the line that follows the knitter from place to place. */
export const forecastLine = (
  { forecast, sizes, faults, broken }: ForecastNow,
  lengths: Pick<Lengths, 'range'>,
): { readonly main: string; readonly more: string } => {
  if (broken !== null) return { main: 'No forecast', more: 'the calculation failed' };
  if (sizes !== null) return sizesLine(sizes);
  if (faults.length > 0)
    return { main: 'No forecast yet', more: `${faults.length} to mend or fill in` };
  if (forecast === null) return { main: 'Forecast', more: 'working it out' };
  const first = forecast.measurements[0];
  const size = first
    ? `${first.name} ${rangeOf(first.states[forecast.judgedAt], lengths)}`
    : 'nothing to measure yet';
  if (forecast.chanceAllFit === null) return { main: size, more: 'likely, once it is dry' };
  return { main: `Fits: ${chanceWords(forecast.chanceAllFit)}`, more: size };
};

const rangeOf = (
  { p05Mm, p95Mm }: { p05Mm: number; p95Mm: number },
  lengths: Pick<Lengths, 'range'>,
): string => lengths.range(p05Mm, p95Mm);

const sizesLine = ({ sizes, best }: EachSize): { readonly main: string; readonly more: string } => {
  const chance = sizes.find(({ chosenSize }) => chosenSize === best)?.chanceAllFit ?? null;
  return {
    main: 'Which size?',
    more:
      best === null || chance === null
        ? `${sizes.length} to choose from`
        : `${sizeWords(best)} fits best: ${chanceWords(chance)}`,
  };
};
