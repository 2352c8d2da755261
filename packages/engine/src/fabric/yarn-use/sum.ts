import { type Affine, jointOf, type LogNormal, type Posterior } from '../../stats/index.ts';

/**
 * The log-normal with the mean and variance of a sum of jointly log-normal summands (Fenton 1960,
 * IRE Trans. Commun. Syst. 8, 57, from memory): exact for one summand, and close for doubts below
 * half a natural log unit. Null for no summand.
 */
export const sumOf = (post: Posterior, forms: readonly Affine[]): LogNormal | null => {
  if (forms.length === 0) return null;
  const k = forms.length;
  const { mean, covariance } = jointOf(post, forms);
  const means = mean.map((mu, i) => Math.exp(mu + covariance[i * k + i]! / 2));
  const total = means.reduce((sum, each) => sum + each, 0);
  let variance = 0;
  for (let i = 0; i < k; i++)
    for (let j = 0; j < k; j++)
      variance += means[i]! * means[j]! * Math.expm1(covariance[i * k + j]!);
  const logVariance = Math.log1p(Math.max(variance, 0) / total ** 2);
  return { median: total * Math.exp(-logVariance / 2), logSd: Math.sqrt(logVariance) };
};
