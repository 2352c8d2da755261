import type { Basis, Evidence } from '../fabric/index.ts';
import { type Affine, priorCovariance } from '../stats/index.ts';

/**
 * Which evidence a quantity stands on, strongest first: each observation is weighed by the share of
 * the prior variance that it alone would take away. Shares under `FLOOR` are left out.
 */
export const standsOn = (form: Affine, evidence: readonly Evidence[]): string[] => {
  const variance = priorCovariance(form, form);
  if (variance === 0) return [];
  const weights = new Map<string, number>();
  for (const each of evidence) {
    const shared = priorCovariance(form, each.form);
    const share = shared ** 2 / (priorCovariance(each.form, each.form) + each.sd ** 2) / variance;
    weights.set(each.basis.id, (weights.get(each.basis.id) ?? 0) + share);
  }
  return [...weights]
    .filter(([, share]) => share > FLOOR)
    .sort((a, b) => b[1] - a[1] || (a[0] < b[0] ? -1 : 1))
    .map(([id]) => id);
};

const FLOOR = 0.001;

/** One entry per basis, in the order of first use. */
export const distinct = (bases: readonly Basis[]): Basis[] => {
  const seen = new Map<string, Basis>();
  for (const basis of bases) if (!seen.has(basis.id)) seen.set(basis.id, basis);
  return [...seen.values()];
};
