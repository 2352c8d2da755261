import { cholesky, solveLower, solveUpper } from './cholesky.ts';
import { addTo, backward, type Envelope, envelope, factorise, forward } from './envelope.ts';

/**
 * A linear Gaussian model built up piece by piece. Every unknown is a standard normal `z_i`; every
 * quantity of interest is an affine form `constant + Σ coef·z`; every observation is such a form
 * plus independent noise. The posterior is closed and does not depend on the order of evidence, and
 * an observation can only lower a variance.
 */
export interface Affine {
  readonly constant: number;
  /** Sparse terms as [index of the unknown, coefficient]. */
  readonly terms: readonly (readonly [number, number])[];
}

export interface Observation {
  /** What was observed, as a form in the unknowns. */
  readonly form: Affine;
  readonly value: number;
  /** Standard deviation of the noise; positive. */
  readonly sd: number;
}

export const constant = (value: number): Affine => ({ constant: value, terms: [] });

/** Sum of affine forms. Repeated unknowns are merged. */
export const add = (...forms: readonly Affine[]): Affine => {
  const merged = new Map<number, number>();
  let total = 0;
  for (const form of forms) {
    total += form.constant;
    for (const [index, coef] of form.terms) merged.set(index, (merged.get(index) ?? 0) + coef);
  }
  return { constant: total, terms: [...merged] };
};

export const scale = (form: Affine, factor: number): Affine => ({
  constant: form.constant * factor,
  terms: form.terms.map(([index, coef]) => [index, coef * factor] as const),
});

/** Hands out fresh unknowns; keeps only their number. */
export class Unknowns {
  #count = 0;

  get count(): number {
    return this.#count;
  }

  /** A fresh normal quantity with this mean and standard deviation, independent of all before. */
  fresh(mean: number, sd: number): Affine {
    if (!(sd >= 0) || !Number.isFinite(mean)) throw new RangeError(`fresh(${mean}, ${sd})`);
    return { constant: mean, terms: [[this.#count++, sd]] };
  }

  /** Two fresh quantities with equal SDs and this correlation (0 to 1) between them. */
  freshPair(means: readonly [number, number], sds: readonly [number, number], correlation: number) {
    const shared = this.fresh(0, 1);
    const one = (k: 0 | 1): Affine =>
      add(
        scale(shared, sds[k] * Math.sqrt(correlation)),
        this.fresh(means[k], sds[k] * Math.sqrt(1 - correlation)),
      );
    return [one(0), one(1)] as const;
  }
}

/**
 * Posterior of the unknowns: mean, and the Cholesky factor of the precision I + Σ hhᵀ/sd². The factor
 * has the unknowns in the reverse of their order: those made for one specimen or one piece alone come
 * after what they share, and are so eliminated before it, at a cost linear in their number.
 */
export interface Posterior {
  readonly n: number;
  readonly mean: Float64Array;
  readonly precisionFactor: Envelope;
}

/** Closed-form posterior of `n` standard normals given the observations. */
export const posterior = (n: number, observations: readonly Observation[]): Posterior => {
  const row = (unknown: number): number => n - 1 - unknown;
  const first = Int32Array.from({ length: n }, (_, i) => i);
  for (const { form } of observations) {
    const least = form.terms.reduce((min, [i]) => Math.min(min, row(i)), n);
    for (const [i] of form.terms) first[row(i)] = Math.min(first[row(i)]!, least);
  }
  const precision = envelope(first);
  const rhs = new Float64Array(n);
  for (let i = 0; i < n; i++) addTo(precision, i, i, 1);
  for (const { form, value, sd } of observations) {
    const weight = 1 / (sd * sd);
    for (const [i, a] of form.terms) {
      rhs[row(i)]! += a * weight * (value - form.constant);
      for (const [j, b] of form.terms)
        if (row(j) <= row(i)) addTo(precision, row(i), row(j), a * b * weight);
    }
  }
  const factor = factorise(precision);
  return { n, mean: backward(factor, forward(factor, rhs)).reverse(), precisionFactor: factor };
};

/** Mean of an affine form. */
export const meanOf = (post: Posterior, form: Affine): number =>
  form.terms.reduce((sum, [i, a]) => sum + a * post.mean[i]!, form.constant);

/** Row L⁻¹h: inner products of such rows are posterior covariances. */
const whiten = (post: Posterior, form: Affine): Float64Array => {
  const row = new Float64Array(post.n);
  for (const [i, a] of form.terms) row[post.n - 1 - i]! += a;
  return forward(post.precisionFactor, row);
};

/** Standard deviation of an affine form. */
export const sdOf = (post: Posterior, form: Affine): number => {
  const row = whiten(post, form);
  return Math.sqrt(row.reduce((sum, v) => sum + v * v, 0));
};

/** Observations against what the rest of the evidence says of them. */
export interface Against {
  /** How far each lies from what the rest foretells (k). */
  readonly miss: Float64Array;
  /** Covariance of these misses (k × k, row-major). */
  readonly covariance: Float64Array;
}

/**
 * What learning again without some of the observations in a posterior would foretell of them, at no such
 * cost: with the posterior covariance V of their forms, the noise S and the residuals r, the rest alone
 * would have left the misses S·(S − V)⁻¹·r with covariance S·(S − V)⁻¹·S. Grows with k³.
 */
export const againstTheRest = (post: Posterior, observations: readonly Observation[]): Against => {
  const k = observations.length;
  const { mean, covariance: v } = jointOf(
    post,
    observations.map(({ form }) => form),
  );
  const noise = observations.map(({ sd }) => sd * sd);
  const left = new Float64Array(k * k);
  for (let i = 0; i < k; i++)
    for (let j = 0; j < k; j++) left[i * k + j] = (i === j ? noise[i]! : 0) - v[i * k + j]!;
  const factor = cholesky(left, k);
  const solved = (b: Float64Array): Float64Array => solveUpper(factor, k, solveLower(factor, k, b));
  const miss = solved(Float64Array.from(observations, ({ value }, i) => value - mean[i]!)).map(
    (x, i) => noise[i]! * x,
  );
  const covariance = new Float64Array(k * k);
  for (let j = 0; j < k; j++) {
    const column = solved(Float64Array.from({ length: k }, (_, i) => (i === j ? noise[j]! : 0)));
    for (let i = 0; i < k; i++) covariance[i * k + j] = noise[i]! * column[i]!;
  }
  return { miss, covariance };
};

/** Square of the distance of some of the misses from none, in their own spread: χ² of as many degrees. */
export const squaredDistance = (
  { miss, covariance }: Against,
  which: readonly number[],
): number => {
  const n = which.length;
  const k = miss.length;
  const part = new Float64Array(n * n);
  for (let i = 0; i < n; i++)
    for (let j = 0; j < n; j++) part[i * n + j] = covariance[which[i]! * k + which[j]!]!;
  const row = solveLower(
    cholesky(part, n),
    n,
    Float64Array.from(which, (i) => miss[i]!),
  );
  return row.reduce((sum, x) => sum + x * x, 0);
};

const dot = (a: Float64Array, b: Float64Array): number => {
  let sum = 0;
  for (let m = 0; m < a.length; m++) sum += a[m]! * b[m]!;
  return sum;
};

/** Reads the covariances of any form with each of some (k), at one solution for each form. */
export const covariancesWith = (
  post: Posterior,
  forms: readonly Affine[],
): ((form: Affine) => Float64Array) => {
  const rows = forms.map((form) => whiten(post, form));
  return (form) => {
    const own = whiten(post, form);
    return Float64Array.from(rows, (row) => dot(row, own));
  };
};

/** Rows without the places where all of them are 0: what was made for other specimens has no part in them. */
const withoutZeros = (rows: readonly Float64Array[]): readonly Float64Array[] => {
  const used: number[] = [];
  for (let m = 0; m < (rows[0]?.length ?? 0); m++)
    if (rows.some((row) => row[m] !== 0)) used.push(m);
  return rows.map((row) => Float64Array.from(used, (m) => row[m]!));
};

/** Joint mean (k) and covariance (k × k, row-major) of several forms. */
export const jointOf = (post: Posterior, forms: readonly Affine[]) => {
  const rows = withoutZeros(forms.map((form) => whiten(post, form)));
  const k = forms.length;
  const covariance = new Float64Array(k * k);
  for (let i = 0; i < k; i++)
    for (let j = 0; j <= i; j++) {
      covariance[i * k + j] = dot(rows[i]!, rows[j]!);
      covariance[j * k + i] = covariance[i * k + j]!;
    }
  return { mean: Float64Array.from(forms, (form) => meanOf(post, form)), covariance };
};

/** Prior covariance of two forms: what one alone tells about the other before any evidence. */
export const priorCovariance = (a: Affine, b: Affine): number => {
  const other = new Map(b.terms);
  return a.terms.reduce((sum, [i, coef]) => sum + coef * (other.get(i) ?? 0), 0);
};
