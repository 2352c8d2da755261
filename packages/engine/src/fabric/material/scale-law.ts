import type { StretchLaw } from '../stretch/law.ts';

/** The same law ending at so many times its limit, as stiff at rest. */
export const reachingLaw = <L extends StretchLaw>(law: L, times: number): L => ({
  ...law,
  limit: law.limit * times,
});

/** The law of a fabric that gives so many times as far under every load; its limit moves along. */
export const givingLaw = <L extends StretchLaw>(law: L, times: number): L => ({
  ...law,
  slope: law.slope / times,
  limit: law.limit * times,
});

/** The law of a fabric that carries so many times the load at every strain; its limit stays. */
export const carryingLaw = <L extends StretchLaw>(law: L, times: number): L => ({
  ...law,
  slope: law.slope * times,
  stiffening: law.stiffening * times,
});

/** Between two laws: logs of all constants, `share` of the way from `a` (0) to `b` (1). */
export const lawBetween = (a: StretchLaw, b: StretchLaw, share: number): StretchLaw => {
  const mix = (key: 'slope' | 'stiffening' | 'limit') => a[key] ** (1 - share) * b[key] ** share;
  return { slope: mix('slope'), stiffening: mix('stiffening'), limit: mix('limit') };
};
