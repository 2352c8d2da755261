import type { Spread } from '@dryflat/engine/stats';
import { formatYarnLength, metres } from '@dryflat/engine/units';

type Units = 'cm' | 'in';

const unitOf = (units: Units) => (units === 'cm' ? 'm' : 'yd');

/** `310–420 m`, or yards where inches are shown. */
export const yarnRange = ({ p5, p95 }: Spread, units: Units): string => {
  const unit = unitOf(units);
  const [low, high] = [p5, p95].map((value) => formatYarnLength(metres(value), { unit }));
  return low === high ? `${low}` : `${low?.replace(/\s.*$/, '')}–${high}`;
};

/** Sentences of the engine say yarn in metres: in yards where inches are shown. */
export const inYarnUnit = (sentence: string, units: Units): string =>
  sentence.replace(/(\d+) m of yarn/g, (_, value: string) => {
    const said = formatYarnLength(metres(Number(value)), { unit: unitOf(units) });
    return `${said} of yarn`;
  });
