import { EVENING, HORIZON_DAYS } from './assumptions.ts';
import { type Agenda, dayOfHour } from './week.ts';

/** One thing after another; `work` uses hours of the agenda, `clock` goes on by itself from the evening. */
export interface Step {
  readonly id: string;
  readonly name: string;
  readonly kind: 'work' | 'clock';
  /** Whether it takes yarn. */
  readonly takesYarn: boolean;
  /** One for each draw, 0 or more. */
  readonly hours: Float64Array;
}

/** Where yarn runs out, as a share of the hours that take yarn, and how long a new skein takes, days. */
export interface Gate {
  readonly share: Float64Array;
  readonly shopDays: Float64Array;
  readonly order: 'at-once' | 'when-short';
}

export interface Course {
  readonly n: number;
  readonly steps: readonly Step[];
  readonly gate: Gate | null;
  /** Hours of the agenda for one hour of work: above 1 where less is had than was meant. */
  readonly stretch: Float64Array;
}

/** What is taken to need no time: a step by its id, or `yarn`. */
export type Without = string | null;

/** Days counted from the first, Infinity beyond the horizon. */
export interface Run {
  readonly done: Float64Array;
  /** Day on which the yarn ran out; Infinity where it did not. */
  readonly ranOut: Float64Array;
  /** Day on which each step ended, step by step. */
  readonly ends: readonly Float64Array[];
}

const NEVER = Number.POSITIVE_INFINITY;

/** Where one draw stands: hours of the agenda used, and the day before which nothing goes on. */
interface Place {
  hour: number;
  day: number;
}

const reached = (agenda: Agenda, place: Place): number =>
  Math.max(place.day, dayOfHour(agenda, place.hour));

/** Nothing goes on before that day; the hours of the agenda until then are gone. */
const waitUntil = (agenda: Agenda, place: Place, day: number): void => {
  place.day = Math.max(place.day, day);
  if (day > HORIZON_DAYS) place.hour = NEVER;
  else place.hour = Math.max(place.hour, agenda.until[day]!);
};

/** The day on which it ends, begun on the evening of `day`. */
const clockEnd = (day: number, hours: number): number => day + Math.floor((EVENING + hours) / 24);

/** Hours by the clock: the rest of the day that it begins on is no longer for work. */
const pass = (agenda: Agenda, place: Place, hours: number): void => {
  const day = reached(agenda, place);
  if (day < HORIZON_DAYS) place.hour = Math.max(place.hour, agenda.until[day + 1]!);
  waitUntil(agenda, place, clockEnd(day, hours));
};

const yarnHours = ({ steps }: Course, i: number, without: Without): number => {
  let sum = 0;
  for (const { takesYarn, id, hours } of steps) if (takesYarn && id !== without) sum += hours[i]!;
  return sum;
};

/** Days on which a skein that is asked for comes. */
const arrival = (gate: Gate, agenda: Agenda, ranOut: number, i: number): number =>
  (gate.order === 'at-once' ? agenda.start : ranOut) + Math.ceil(gate.shopDays[i]!);

/** One draw on its way: where it stands, and the hours that its yarn still lasts. */
interface Walk {
  readonly i: number;
  readonly place: Place;
  yarnLeft: number;
  ranOut: number;
}

const begin = (course: Course, agenda: Agenda, i: number, without: Without): Walk => {
  const share = course.gate?.share[i] ?? NEVER;
  return {
    i,
    place: { hour: 0, day: agenda.start },
    yarnLeft: share < 1 ? share * yarnHours(course, i, without) : NEVER,
    ranOut: NEVER,
  };
};

/** Work that the yarn lasts for. */
const work = ({ stretch }: Course, walk: Walk, hours: number, takesYarn: boolean): void => {
  walk.place.hour += hours * stretch[walk.i]!;
  if (takesYarn) walk.yarnLeft -= hours;
};

/** Work until the yarn runs out, the wait, and the rest of the work. */
const workAndWait = (
  { course, agenda, without }: Asked,
  walk: Walk,
  gate: Gate,
  hours: number,
): void => {
  const rest = hours - walk.yarnLeft;
  work(course, walk, walk.yarnLeft, true);
  walk.ranOut = reached(agenda, walk.place);
  if (without !== 'yarn') waitUntil(agenda, walk.place, arrival(gate, agenda, walk.ranOut, walk.i));
  walk.yarnLeft = NEVER;
  work(course, walk, rest, true);
};

interface Asked {
  readonly course: Course;
  readonly agenda: Agenda;
  readonly without: Without;
}

const take = (asked: Asked, walk: Walk, { id, kind, takesYarn, hours: all }: Step): void => {
  const { course, agenda, without } = asked;
  const hours = id === without ? 0 : all[walk.i]!;
  if (kind === 'clock') {
    if (hours > 0) pass(agenda, walk.place, hours);
  } else if (course.gate !== null && takesYarn && hours > walk.yarnLeft)
    workAndWait(asked, walk, course.gate, hours);
  else work(course, walk, hours, takesYarn);
};

/**
 * Follows each draw through its steps. A step that waits for yarn goes on on the day that it comes;
 * drying begins on the evening of the day that the work before it ends on. Linear in draws and steps.
 */
export const runCourse = (course: Course, agenda: Agenda, without: Without = null): Run => {
  const { n, steps } = course;
  const column = () => new Float64Array(n).fill(NEVER);
  const run = { done: column(), ranOut: column(), ends: steps.map(column) };
  for (let i = 0; i < n; i++) {
    const walk = begin(course, agenda, i, without);
    for (let s = 0; s < steps.length; s++) {
      take({ course, agenda, without }, walk, steps[s]!);
      run.ends[s]![i] = reached(agenda, walk.place);
    }
    run.done[i] = reached(agenda, walk.place);
    run.ranOut[i] = walk.ranOut;
  }
  return run;
};

/** Share of the draws that are done by that day, the day included. */
export const shareBy = (days: Float64Array, day: number): number => {
  let done = 0;
  for (let i = 0; i < days.length; i++) if (days[i]! <= day) done++;
  return done / days.length;
};
