import { type ForecastQuestion, forecast } from '../../garment/index.ts';
import type { Route, RouteMeasurement, RoutesQuestion, RoutesResult } from '../types.ts';
import { followed, type KnitPitch } from './followed.ts';

/** Rounding of sums and logarithms, as a share of a length. */
const ROUNDING = 1e-6;

/** A size of the pattern begun afresh: by its counts, or by its lengths, those that are counted at this gauge. */
const afresh = (
  { measurements, patternGauge }: ForecastQuestion,
  pitch: KnitPitch,
  sizeOf: (direction: 'width' | 'length') => number,
): ReadonlyMap<string, number> =>
  new Map(
    measurements.flatMap(({ landmark, direction, worked, values, counts }) => {
      const at = sizeOf(direction);
      const [value, count] = [values[at] ?? null, counts[at] ?? null];
      const [own, printed] =
        direction === 'width'
          ? [pitch.stitch, patternGauge?.stitch]
          : [pitch.row, patternGauge?.row];
      if (worked === 'to-length') return value === null ? [] : [[landmark, Number(value)] as const];
      if (count !== null) return [[landmark, count * own] as const];
      if (value === null || printed == null) return [];
      return [[landmark, (value * own) / printed] as const];
    }),
  );

const SLEEVE: ReadonlySet<string> = new Set(['upper-arm', 'cuff', 'sleeve-length']);

/** What a route starts from, as knit: the garment as planned, or those parts of it that are begun again. */
const startOf = (
  { id, kind }: Route,
  { forecast: asked }: RoutesQuestion,
  planned: readonly RouteMeasurement[],
  pitch: KnitPitch,
): ReadonlyMap<string, number> => {
  const sizeNamed = (name: string | undefined): number => asked.sizes.indexOf(name ?? '');
  const [, first, second] = id.split(':');
  const there = new Map(planned.map((each) => [each.landmark, each.states.asKnit.p50Mm]));
  if (kind === 'size') return afresh(asked, pitch, () => sizeNamed(first));
  if (kind === 'blend') {
    const wide = first === 'own' ? asked.chosen : sizeNamed(first);
    const long = first === 'own' || second === 'own' ? wide : sizeNamed(second);
    return afresh(asked, pitch, (direction) => (direction === 'width' ? wide : long));
  }
  if (kind !== 're-knit') return there;
  const again = afresh(asked, pitch, () => asked.chosen);
  return new Map(
    [...there].map(([landmark, mm]) => [
      landmark,
      SLEEVE.has(landmark) === (first === 'sleeve') ? (again.get(landmark) ?? mm) : mm,
    ]),
  );
};

const KNIT: ReadonlySet<string> = new Set([
  'rip-length',
  'rip-width',
  're-knit',
  'add',
  'take-away',
  'size',
  'blend',
]);

/** What a route that rips, adds or begins again promises and does not give when it is carried out; a line each. */
export const promisesBroken = (question: RoutesQuestion, result: RoutesResult): string[] => {
  const { gauge } = forecast(question.forecast, { draws: 100 });
  const pitch = { stitch: gauge.stitch.asKnit.p50Mm, row: gauge.row.asKnit.p50Mm };
  const planned = result.routes.find(({ kind }) => kind === 'lay')?.measurements ?? [];
  return result.routes
    .filter(({ kind, recipient }) => KNIT.has(kind) && recipient === null)
    .flatMap((route) => routeBroken(route, question, planned, pitch));
};

const routeBroken = (
  route: Route,
  question: RoutesQuestion,
  planned: readonly RouteMeasurement[],
  pitch: KnitPitch,
): string[] => {
  const start = startOf(route, question, planned, pitch);
  const { lengths, broken } = followed(route, start, pitch);
  const lines = broken.map((each) => `${route.id}: ${each}`);
  for (const promised of route.measurements) {
    const got = lengths.get(promised.landmark);
    if (got === undefined) continue;
    const { asKnit, rewashed } = promised.states;
    if (Math.abs(asKnit.p50Mm / got - 1) > ROUNDING)
      lines.push(`${route.id}: ${promised.landmark} ${asKnit.p50Mm} as knit, done ${got}`);
    // The same fabric goes through the same states.
    const was = planned.find(({ id }) => id === promised.id)!.states;
    const grown = (got * was.rewashed.p50Mm) / was.asKnit.p50Mm;
    if (Math.abs(rewashed.p50Mm / grown - 1) > ROUNDING)
      lines.push(`${route.id}: ${promised.landmark} ${rewashed.p50Mm} rewashed, done ${grown}`);
  }
  return lines;
};
