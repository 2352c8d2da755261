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

/** The morning after the evening on which it began plus its hours, or the same evening. */
const clockEnd = (day: number, hours: number): number => day + Math.floor((EVENING + hours) / 24);

const yarnHours = ({ steps }: Course, i: number, without: Without): number => {
  let sum = 0;
  for (const { takesYarn, id, hours } of steps) if (takesYarn && id !== without) sum += hours[i]!;
  return sum;
};

const arrival = (gate: Gate, agenda: Agenda, ranOut: number, i: number): number =>
  (gate.order === 'at-once' ? agenda.start : ranOut) + Math.ceil(gate.shopDays[i]!);

/**
 * Follows each draw through its steps. A step that waits for yarn goes on on the day that it comes;
 * drying begins on the evening of the day that the work before it ends on. Linear in draws and steps.
 */
export const runCourse = (course: Course, agenda: Agenda, without: Without = null): Run => {
  const { n, steps, gate, stretch } = course;
  const column = () => new Float64Array(n).fill(NEVER);
  const run = { done: column(), ranOut: column(), ends: steps.map(column) };
  for (let i = 0; i < n; i++) {
    const place: Place = { hour: 0, day: agenda.start };
    let left = gate === null ? NEVER : gate.share[i]! * yarnHours(course, i, without);
    if (gate !== null && gate.share[i]! >= 1) left = NEVER;
    steps.forEach((step, s) => {
      const hours = step.id === without ? 0 : step.hours[i]!;
      if (step.kind === 'clock') {
        if (hours > 0) waitUntil(agenda, place, clockEnd(reached(agenda, place), hours));
      } else if (gate !== null && step.takesYarn && hours > left) {
        place.hour += left * stretch[i]!;
        run.ranOut[i] = reached(agenda, place);
        if (without !== 'yarn') waitUntil(agenda, place, arrival(gate, agenda, run.ranOut[i]!, i));
        place.hour += (hours - left) * stretch[i]!;
        left = NEVER;
      } else {
        place.hour += hours * stretch[i]!;
        if (step.takesYarn) left -= hours;
      }
      run.ends[s]![i] = reached(agenda, place);
    });
    run.done[i] = reached(agenda, place);
  }
  return run;
};

/** Share of the draws that are done by that day, the day included. */
export const shareBy = (days: Float64Array, day: number): number => {
  let done = 0;
  for (let i = 0; i < days.length; i++) if (days[i]! <= day) done++;
  return done / days.length;
};
