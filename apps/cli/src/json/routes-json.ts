import type { Range } from '@dryflat/engine/garment';
import type { Route, RouteFit, SizeAtNeedle } from '@dryflat/engine/routes';
import type { Spread } from '@dryflat/engine/stats';
import type { ToldRoutes } from '../commands/told-routes.ts';
import { inUnits, type Units } from '../faults.ts';
import { cite } from '../print/cite.ts';

/** Hundredths: of a millimetre, an hour, a metre. */
const fine = (value: number): number => Math.round(value * 100) / 100 + 0;
/** Chances to a hundredth of a percent, the finest that 10,000 draws can tell. */
const chance = (value: number): number => Math.round(value * 10_000) / 10_000 + 0;
const orNull = <T, U>(value: T | null, of: (value: T) => U): U | null =>
  value === null ? null : of(value);

const range = ({ p05Mm, p50Mm, p95Mm }: Range) => ({
  p05Mm: fine(p05Mm),
  p50Mm: fine(p50Mm),
  p95Mm: fine(p95Mm),
});
const spread = ({ p5, p50, p95 }: Spread) => ({ p05: fine(p5), p50: fine(p50), p95: fine(p95) });

const fit = (each: RouteFit) => ({
  landmark: each.landmark,
  measurement: each.measurement,
  wanted: { minMm: fine(each.wantedMm.min), maxMm: fine(each.wantedMm.max) },
  finishedMm: range(each.finishedMm),
  chance: chance(each.chance),
  tooSmall: chance(each.tooSmall),
  tooLarge: chance(each.tooLarge),
});

const measurement = ({ states, pinnedMm, ...rest }: Route['measurements'][number]) => ({
  id: rest.id,
  name: rest.name,
  landmark: rest.landmark,
  span: rest.span,
  pinnedMm: orNull(pinnedMm, fine),
  states: {
    asKnit: range(states.asKnit),
    dried: range(states.dried),
    worn: range(states.worn),
    rewashed: range(states.rewashed),
  },
});

const hoursBy = ({ knit, rip, sew, block, dry }: Route['hours']) => ({
  knit: spread(knit),
  rip: spread(rip),
  sew: spread(sew),
  block: spread(block),
  dry: spread(dry),
});

const routeOf = (route: Route, said: (text: string) => string) => ({
  id: route.id,
  kind: route.kind,
  name: said(route.name),
  recipient: route.recipient,
  planned: route.planned,
  chanceAllFit: orNull(route.chanceAllFit, chance),
  worst: orNull(route.worst, fit),
  hours: spread(route.hours.total),
  hoursBy: hoursBy(route.hours),
  yarnM: spread(route.yarnM.needed),
  yarnReturnedM: spread(route.yarnM.returned),
  yarnLeftM: orNull(route.yarnM.left, spread),
  yarnOverM: orNull(route.yarnM.over, spread),
  chanceOfYarn: orNull(route.chanceOfYarn, chance),
  chanceByDate: orNull(route.chanceByDate, chance),
  doneDay: route.doneDay,
  dominatedBy: route.dominatedBy,
  reasons: route.reasons.map(said),
  counts: route.counts,
  steps: route.steps.map(said),
  knitting: route.knitting,
  fit: route.fit.map(fit),
  measurements: route.measurements.map(measurement),
  worth: {
    fit: chance(route.worth.fit),
    time: chance(route.worth.time),
    yarn: chance(route.worth.yarn),
  },
  score: chance(route.score),
  measureFirst: route.measureFirst,
  dependsOn: route.dependsOn,
});

const sizeOf = (size: SizeAtNeedle) => ({
  needleMm: size.needleMm,
  gaugeFrom: size.gaugeFrom,
  stitchMm: fine(size.stitchMm),
  rowMm: fine(size.rowMm),
  size: size.size,
  lengthsOf: size.lengthsOf,
  chanceAllFit: orNull(size.chanceAllFit, chance),
  landmarks: size.landmarks.map((each) => ({
    landmark: each.landmark,
    finishedMm: range(each.finishedMm),
    wanted: orNull(each.wantedMm, ({ min, max }) => ({ minMm: fine(min), maxMm: fine(max) })),
    chance: orNull(each.chance, chance),
  })),
});

/**
 * The routes as one JSON object, keys always in this order, best first: lengths in millimetres, yarn in
 * metres and hours in hours to 0.01, chances from 0 to 1. Sentences speak `unit`.
 */
export const routesJson = (told: ToldRoutes, unit: Units): string => {
  const { record, question, result, sizes, notices } = told;
  const said = (text: string) => inUnits(text, unit);
  const answer = {
    name: record.name,
    from: question.from,
    by: question.by,
    judgedAt: result.judgedAt,
    weights: question.weights,
    seed: result.seed,
    draws: result.draws,
    sentence: said(result.sentence),
    routes: result.routes.map((route) => routeOf(route, said)),
    leftOut: result.leftOut.map(({ kind, name, why }) => ({
      kind,
      name: said(name),
      why: said(why),
    })),
    valueOfInformation: result.valueOfInformation.map((each) => ({
      id: each.id,
      name: said(each.name),
      gain: chance(each.gain),
      chanceOfChange: chance(each.chanceOfChange),
      explains: chance(each.explains),
    })),
    sizes: sizes.map(sizeOf),
    notices: [
      ...result.notices.map(({ code, text }) => ({ code, text: said(text) })),
      ...notices.map((text) => ({ code: 'file', text: said(text) })),
    ],
    evidence: result.bases.map(({ id, kind, text, source }) => ({
      id,
      kind,
      text: said(text),
      source: orNull(source, cite),
    })),
  };
  return `${JSON.stringify(answer, null, 2)}\n`;
};
