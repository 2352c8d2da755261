/**
 * Air changes: after the last weighing the same drying may go faster or slower than it was seen to.
 * Hours of the model and hours by the clock are the same until then.
 */
export interface Paced {
  readonly steadyHours: number;
  /** Above 0; more than 1 is slower. */
  readonly pace: number;
}

/** When the clock shows what the model has after `hours`. */
export const toClock = ({ steadyHours, pace }: Paced, hours: number): number =>
  hours <= steadyHours ? hours : steadyHours + pace * (hours - steadyHours);

/** The inverse. */
export const toModel = ({ steadyHours, pace }: Paced, hours: number): number =>
  hours <= steadyHours ? hours : steadyHours + (hours - steadyHours) / pace;
