import type { Change, Kept } from '../fabric/index.ts';
import {
  type Affine,
  cholesky,
  jointOf,
  type NormalColumns,
  type Posterior,
  type RandomSource,
  randomSource,
  unitSampler,
} from '../stats/index.ts';
import type { SizeModel } from './size-model.ts';

/** Draws of everything that a forecast needs, column by column; index i is one imagined garment. */
export interface Draws {
  readonly n: number;
  /** Log length as knit of each measurement, and of the same begun afresh. */
  readonly asKnit: readonly Float64Array[];
  readonly afresh: readonly Float64Array[];
  readonly driedOverAsKnit: ByDirection;
  readonly wetOverDried: ByDirection;
  readonly rewashedOverDried: ByDirection;
  /** What the part of each measurement changes beside the fabric; empty where nothing has shown it. */
  readonly own: readonly Readonly<Partial<Record<Change, Float64Array>>>[];
  /** Share of a pinned stretch that stays, 0 to 1. */
  readonly kept: Float64Array;
  /** Standard normal that says how far this fabric gives more or less than its data row. */
  readonly give: Float64Array;
  /** The further forms that were asked for, in their order. */
  readonly further: readonly Float64Array[];
  /** Independent standard normals for the doubt about a body landmark; the same each time for a name. */
  body(name: string): Float64Array;
}

type ByDirection = Readonly<Record<'width' | 'length', Float64Array>>;

/** Forms drawn beside the usual ones, on normals of their own so that they change no other draw. */
export interface Further {
  readonly forms: readonly Affine[];
  readonly normals: NormalColumns;
}

/** Sample the joint posterior. Deterministic in `seed`; cost n·k² for k ≈ measurements + 8. */
export const drawAll = (
  model: SizeModel,
  post: Posterior,
  kept: Kept,
  options: { readonly n: number; readonly seed: number; readonly further?: Further },
): Draws => {
  const { fabric, measurements } = model;
  const forms: Affine[] = [];
  const index = (form: Affine): number => {
    const at = forms.indexOf(form);
    return at >= 0 ? at : forms.push(form) - 1;
  };
  const asKnit = measurements.map((m) => index(m.asKnit));
  const afresh = measurements.map((m) => index(m.afresh));
  const pair = (table: Readonly<Record<'width' | 'length', Affine>>) => ({
    width: index(table.width),
    length: index(table.length),
  });
  const growth = [fabric.driedOverAsKnit, fabric.wetOverDried, fabric.rewashedOverDried].map(pair);
  const own = measurements.map((m) =>
    Object.entries(m.own).map(([k, form]) => [k, index(form)] as const),
  );
  const source = randomSource(options.seed);
  const columns = sampleJoint(post, forms, options.n, source, options.further);
  const both = (at: { width: number; length: number } | undefined): ByDirection => ({
    width: columns[at!.width]!,
    length: columns[at!.length]!,
  });
  const share = unitSampler(kept.density);
  return {
    n: options.n,
    asKnit: asKnit.map((i) => columns[i]!),
    afresh: afresh.map((i) => columns[i]!),
    driedOverAsKnit: both(growth[0]),
    wetOverDried: both(growth[1]),
    rewashedOverDried: both(growth[2]),
    own: own.map((all) => Object.fromEntries(all.map(([k, at]) => [k, columns[at]!]))),
    kept: fill(options.n, () => share(source.uniform())),
    give: fill(options.n, source.normal),
    further: columns.slice(forms.length),
    body: bodyColumns(options.n, source),
  };
};

const bodyColumns = (n: number, source: RandomSource) => {
  const made = new Map<string, Float64Array>();
  return (name: string): Float64Array => {
    const column = made.get(name) ?? fill(n, source.normal);
    made.set(name, column);
    return column;
  };
};

const fill = (n: number, draw: () => number): Float64Array => {
  const out = new Float64Array(n);
  for (let i = 0; i < n; i++) out[i] = draw();
  return out;
};

const sampleJoint = (
  post: Posterior,
  forms: readonly Affine[],
  n: number,
  source: RandomSource,
  further?: Further,
): Float64Array[] => {
  const all = [...forms, ...(further?.forms ?? [])];
  const k = all.length;
  const { mean, covariance } = jointOf(post, all);
  const lower = cholesky(covariance, k);
  const columns = all.map(() => new Float64Array(n));
  const more = further?.forms.map((_, j) => further.normals.normal(`further:${j}`)) ?? [];
  const z = new Float64Array(k);
  for (let i = 0; i < n; i++) {
    for (let j = 0; j < forms.length; j++) z[j] = source.normal();
    for (let j = 0; j < more.length; j++) z[forms.length + j] = more[j]![i]!;
    for (let j = 0; j < k; j++) {
      let value = mean[j]!;
      for (let m = 0, at = j * k; m <= j; m++, at++) value += lower[at]! * z[m]!;
      columns[j]![i] = value;
    }
  }
  return columns;
};
