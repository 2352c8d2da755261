import { type Forecast, type LandmarkFit, type SizeFit, sizeWords } from '@dryflat/engine/garment';
import { formatLength, formatRange, formatSigned, mm, unbroken } from '@dryflat/engine/units';
import type { Units } from '../faults.ts';
import { chanceText } from './chance.ts';
import { hanging, padStart } from './text.ts';
import { landmarkName, STATE_WORDS, type Words } from './words.ts';

const wanted = (fit: LandmarkFit, unit: Units): string => {
  const { min, max, kind } = fit.wantedMm;
  if (kind === 'finished') return `wanted ${formatRange(min, max, unit)}`;
  const body =
    fit.bodyMm === null ? '' : ` over a body of ${formatLength(mm(fit.bodyMm), { unit })}`;
  return `wanted ${formatRange(min, max, unit, { signed: true })} of ease${body}`;
};

const expected = (fit: LandmarkFit, unit: Units): string => {
  const finished = formatLength(mm(fit.finishedMm.p50Mm), { unit, bare: true });
  const [low, high] = [fit.finishedMm.p05Mm, fit.finishedMm.p95Mm];
  const ease = fit.easeMm === null ? null : unbroken(formatSigned(mm(fit.easeMm.p50Mm), { unit }));
  return `expected ${formatRange(low, high, unit)}, likeliest ${finished}${ease === null ? '' : `, ease ${ease}`}`;
};

/** The side that it misses on, where that is worth saying. */
const misses = ({ chance, tooSmall, tooLarge, miss: { side } }: LandmarkFit): string => {
  if (chance > 0.99) return '';
  const part = Math.max(tooSmall, tooLarge) / (tooSmall + tooLarge);
  return part > 0.8
    ? `; when it misses, it is too ${side}`
    : `; too small ${chanceText(tooSmall)}, too large ${chanceText(tooLarge)}`;
};

/** One paragraph for each wanted landmark, its chance in front. */
export const fitLines = (forecast: Forecast, unit: Units, words: Words): string[] => {
  if (forecast.fit.length === 0)
    return [
      'Nothing is wanted of the fit yet: give a body measurement and the ease you want (wearer.wanted).',
    ].flatMap((line) => hanging('', line));
  const all =
    forecast.chanceAllFit === null
      ? ''
      : `, ${chanceText(forecast.chanceAllFit)} for all of it at once`;
  return [
    `Fit ${STATE_WORDS[forecast.judgedAt]}: chance of lying in the wanted range${all}`,
    ...forecast.fit.flatMap((fit) =>
      hanging(
        `${padStart(chanceText(fit.chance), 9)}  `,
        `${landmarkName(fit.landmark, words)}: ${wanted(fit, unit)}; ${expected(fit, unit)}${misses(fit)}`,
      ),
    ),
  ];
};

/** Sizes with a chance worth a line, the likeliest first; nothing for a pattern of one size. */
export const sizeLines = (forecast: Forecast): string[] => {
  if (forecast.sizes.length < 2 || forecast.fit.length === 0) return [];
  const isShown = ({ size, chanceAll }: SizeFit) =>
    size === forecast.chosenSize || chanceAll >= 0.005;
  const shown = forecast.sizes
    .filter(isShown)
    .sort((one, other) => other.chanceAll - one.chanceAll)
    .map(({ size, chanceAll }) => {
      const mark = size === forecast.chosenSize ? ', being knit' : '';
      return `${padStart(chanceText(chanceAll), 9)}  ${sizeWords(size)}${mark}`;
    });
  const others = forecast.sizes.length - shown.length;
  const rest = others === 0 ? [] : [`${padStart(chanceText(0), 9)}  each of the other ${others}`];
  return ['Knit from the start: chance of all of it in each size', ...shown, ...rest];
};
