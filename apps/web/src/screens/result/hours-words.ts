import type { Spread } from '@dryflat/engine/stats';

const one = (hours: number): string =>
  hours < 9.5
    ? `${Math.round(2 * hours) / 2}`.replace('.5', '½').replace(/^0½/, '½')
    : `${Math.round(hours)}`;

/** `12–19 h`, `½–1 h`, `none`: halves below ten, whole hours above. The unit stays beside its number. */
export const hoursRange = ({ p5, p95 }: Spread): string => {
  const [low, high] = [one(p5), one(p95)];
  if (high === '0') return p95 > 0 ? 'under ½\u00a0h' : 'none';
  return low === high ? `${low}\u00a0h` : `${low}–${high}\u00a0h`;
};
