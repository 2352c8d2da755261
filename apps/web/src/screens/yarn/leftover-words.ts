import type { Spread } from '@dryflat/engine/stats';
import { formatMass, formatYarnLength, metres } from '@dryflat/engine/units';

type Units = 'cm' | 'in';

/** `12 to 48 m`, as metres or yards go with the reader's units; ends below 0 are what is missing. */
const range = (print: (value: number) => string, { p5, p95 }: Spread): string => {
  const end = (value: number): string => print(Math.abs(value));
  if (p95 <= 0) return `${end(p95)} to ${end(p5)} are missing`;
  if (p5 < 0) return `between ${end(p5)} missing and ${end(p95)} left over`;
  return `${end(p5)} to ${end(p95)} left over`;
};

const between = (print: (value: number) => string, { p5, p95 }: Spread): string => {
  const [low, high] = [print(p5), print(p95)];
  return low === high ? low : `${low} to ${high}`;
};

/** `310 m to 420 m`, or yards where inches are shown. */
export const yarnLength = (spread: Spread, units: Units): string =>
  between(
    (value) => formatYarnLength(metres(value), { unit: units === 'cm' ? 'm' : 'yd' }),
    spread,
  );

/** The same as a mass. */
export const yarnMass = (spread: Spread, units: Units): string =>
  between((value) => formatMass(value, { unit: units === 'cm' ? 'g' : 'oz' }), spread);

/** What is left over when done, or missing, as a length of yarn. */
export const leftoverLength = (leftoverM: Spread, units: Units): string =>
  range(
    (value) => formatYarnLength(metres(value), { unit: units === 'cm' ? 'm' : 'yd' }),
    leftoverM,
  );

/** The same as a mass. */
export const leftoverMass = (leftoverG: Spread, units: Units): string =>
  range((value) => formatMass(value, { unit: units === 'cm' ? 'g' : 'oz' }), leftoverG);
