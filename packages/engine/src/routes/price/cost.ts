import {
  heldDraws,
  type YarnDrawer,
  type YarnQuestion,
  type YarnWork,
  yarnDrawer,
} from '../../fabric/index.ts';
import { logNormal, type NormalColumns, type Spread } from '../../stats/index.ts';
import { ok, type Result } from '../../units/index.ts';
import { type Course, runCourse, shareBy } from '../pace/course.ts';
import { DoneDays } from '../pace/done-days.ts';
import { handOf } from '../pace/hand.ts';
import { dayNumber } from '../pace/iso-day.ts';
import { courseOf, paceColumns } from '../pace/steps.ts';
import type { PaceQuestion, WorkKind } from '../pace/types.ts';
import { agendaOf } from '../pace/week.ts';
import type { RoutesQuestion } from '../types.ts';
import { stockNow } from '../yarn-question.ts';
import { type Fabric, type Mat, NO_WORK, type Work } from './work.ts';

/** What a route takes, draw by draw. */
export interface Cost {
  /** Hours of work by what they go into, and by the clock for drying. */
  readonly hours: Readonly<Record<'knit' | 'rip' | 'sew' | 'block' | 'dry', Float64Array>>;
  readonly work: Float64Array;
  readonly neededM: Float64Array;
  readonly returnedM: Float64Array;
  /** Metres at hand beyond what is knit; null where the stock is not known. */
  readonly leftM: Float64Array | null;
  /** 1 where the yarn lasts; null where the stock is not known. */
  readonly enough: Uint8Array | null;
  /** 1 where it is done by the date; null where there is none. */
  readonly inTime: Uint8Array | null;
  readonly chanceByDate: number | null;
  readonly done: DoneDays;
}

/** Yarn of the garment, and what of the stock is left, before any route is looked at. */
export interface Supply {
  readonly draw: YarnDrawer;
  readonly leftG: Float64Array | null;
  /** Log stitches a minute. */
  readonly paces: Readonly<Record<WorkKind, Float64Array>>;
}

/** Washing, pressing and laying out, and pinning as well, hours. Common practice, no source. */
export const MAT_HOURS = { lay: logNormal(0.3, 0.8), pin: logNormal(0.8, 3) } as const;
/** From towels to dry where nobody said more, hours: a day or two, three in damp air. Common practice, no source. */
export const DRYING: Spread = { p5: 18, p50: 34, p95: 72 };

const WORKED: ReadonlySet<string> = new Set(['cables', 'colourwork', 'lace']);

/** The work as yarn has it. */
export const yarnWork = ({ knit, rip, castOn, bindOff, seamsMm, stitch }: Work): YarnWork => ({
  parts: knit.map((each) => ({ ...each, stitch })),
  ripped: rip.map((each) => ({ ...each, stitch })),
  castOn,
  bindOff,
  seamsMm,
  joins: 0,
});

/** The work as a question of pace; yarn comes from the draws, not from here. */
export const paceQuestion = (question: RoutesQuestion, work: Work): PaceQuestion => ({
  parts: [
    ...work.rip.map(({ name, stitches }) => ({
      name: `${name}, taken back`,
      stitches,
      fabric: 'ripped' as const,
    })),
    ...work.knit.map(({ name, stitches }) => ({
      name,
      stitches,
      fabric: WORKED.has(work.stitch) ? ('worked' as const) : ('plain' as const),
    })),
  ],
  log: question.pace.log,
  hours: question.pace.hours,
  from: question.from,
  away: question.pace.away,
  finishing:
    work.seamsMm > 0 || work.ends > 0
      ? { seamsMm: work.seamsMm, ends: work.ends, when: 'after-drying' }
      : null,
  dryingHours: work.mat === 'none' ? null : (question.dryingHours ?? DRYING),
  yarn: null,
  by: question.by,
});

const matHours = (mat: Mat, normals: NormalColumns): Float64Array => {
  if (mat === 'none') return new Float64Array(normals.n);
  const { median, logSd } = MAT_HOURS[mat];
  return normals.normal('routes:mat').map((z) => median * Math.exp(logSd * z));
};

/** The mat's handling comes right before drying. */
const withMat = (course: Course, hours: Float64Array): Course => {
  const at = course.steps.findIndex(({ id }) => id === 'drying');
  if (at < 0) return course;
  const step = { id: 'mat', name: 'the mat', kind: 'work' as const, takesYarn: false, hours };
  return { ...course, steps: [...course.steps.slice(0, at), step, ...course.steps.slice(at)] };
};

type Yarned = Pick<Cost, 'neededM' | 'returnedM' | 'leftM' | 'enough'> & {
  readonly share: Float64Array | null;
};

const yarned = (work: Work, supply: Supply): Result<Yarned> => {
  const drawn = supply.draw(yarnWork(work));
  if (!drawn.ok) return drawn;
  const { neededM, returnedM, neededG, returnedG, metresPer100g } = drawn.value;
  const { leftG } = supply;
  if (leftG === null) return ok({ neededM, returnedM, leftM: null, enough: null, share: null });
  const { n } = drawn.value;
  const leftM = new Float64Array(n);
  const enough = new Uint8Array(n);
  const share = new Float64Array(n);
  for (let i = 0; i < n; i++) {
    leftM[i] = (leftG[i]! * metresPer100g[i]!) / 100;
    const held = leftG[i]! + returnedG[i]!;
    enough[i] = neededG[i]! > held ? 0 : 1;
    share[i] = neededG[i]! > 0 ? held / neededG[i]! : Number.POSITIVE_INFINITY;
  }
  return ok({ neededM, returnedM, leftM, enough, share });
};

/** Hours of the steps of one kind together. */
const sumOf = ({ n, steps }: Course, of: (id: string, name: string) => boolean): Float64Array => {
  const out = new Float64Array(n);
  for (const { id, name, hours } of steps)
    if (of(id, name)) for (let i = 0; i < n; i++) out[i]! += hours[i]!;
  return out;
};

const hoursBy = (course: Course, ripped: number): Cost['hours'] => {
  const part = (id: string): number => (id.startsWith('part:') ? Number(id.slice(5)) : -1);
  return {
    rip: sumOf(course, (id) => part(id) >= 0 && part(id) < ripped),
    knit: sumOf(course, (id) => part(id) >= ripped),
    sew: sumOf(course, (id) => id === 'finishing'),
    block: sumOf(course, (id) => id === 'mat'),
    dry: sumOf(course, (id) => id === 'drying'),
  };
};

/** A skein is asked for at once where one is to be had; else what runs out is never done. */
const gated = (course: Course, share: Float64Array | null, shopDays: number | null): Course =>
  share === null
    ? course
    : {
        ...course,
        gate: {
          share,
          shopDays: new Float64Array(course.n).fill(shopDays ?? Number.POSITIVE_INFINITY),
          order: 'at-once',
        },
      };

/** Hours, yarn and days of some work over the draws of `normals`. Faults of the question pass through. */
export const costOf = (
  question: RoutesQuestion,
  work: Work,
  supply: Supply,
  normals: NormalColumns,
): Result<Cost> => {
  const yarn = yarned(work, supply);
  if (!yarn.ok) return yarn;
  const { share, ...metres } = yarn.value;
  const pace = paceQuestion(question, work);
  const plain = courseOf(pace, handOf(pace.log), normals, supply.paces);
  const course = gated(withMat(plain, matHours(work.mat, normals)), share, question.pace.shopDays);
  const { done } = runCourse(course, agendaOf(pace));
  const first = dayNumber(question.from) ?? 0;
  const last = question.by === null ? null : (dayNumber(question.by) ?? 0) - first;
  return ok({
    ...metres,
    hours: hoursBy(course, work.rip.length),
    work: sumOf(course, (id) => id !== 'drying'),
    inTime: last === null ? null : Uint8Array.from(done, (day) => (day <= last ? 1 : 0)),
    chanceByDate: last === null ? null : shareBy(done, last),
    done: new DoneDays(done, first),
  });
};

/** Grams left in each draw: by the scale, or what was bought less what is knit. */
export const supplyOf = (
  question: RoutesQuestion,
  yarn: YarnQuestion,
  knit: readonly Fabric[],
  normals: NormalColumns,
): Result<Supply> => {
  const { pace } = question;
  const stock = stockNow(question);
  const drawer = yarnDrawer(yarn, normals);
  if (!drawer.ok) return drawer;
  const base = { draw: drawer.value, paces: paceColumns(handOf(pace.log), normals) };
  if (stock === null) return ok({ ...base, leftG: null });
  const held = heldDraws(yarn, stock, normals);
  if (!held.ok) return held;
  if (stock.leftG !== null) return ok({ ...base, leftG: held.value });
  const used = drawer.value(yarnWork({ ...NO_WORK, knit, stitch: question.forecast.stitch }));
  if (!used.ok) return used;
  const { neededG } = used.value;
  // What is knit was there: where more seems used up than was bought, nothing is left.
  return ok({ ...base, leftG: held.value.map((grams, i) => Math.max(0, grams - neededG[i]!)) });
};
