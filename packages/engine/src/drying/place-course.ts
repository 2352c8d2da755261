/**
 * How one place dries. `excess` is water above the room's regain, over dry mass. While it is more
 * than `critical` the place loses `rate` per hour; below, the rate falls with the share that is left,
 * to the power `bend`: 1 is Steele 1958, in proportion to the water; less than 1 keeps up longer,
 * the curves convex upward of "Drying processes of fabrics" (Japan).
 */
export interface PlaceCourse {
  /** At the start, over dry mass; 0 or more. */
  readonly excess: number;
  /** Above 0. */
  readonly critical: number;
  /** Loss while wet, per hour, over dry mass; above 0. */
  readonly rate: number;
  /** Above 0, at most 1. */
  readonly bend: number;
}

/** Nearer to 1 than this the two closed forms agree to rounding. */
const STRAIGHT = 1e-6;

/** Excess water after `hours`, over dry mass, 0 or more. Closed form. */
export const excessAfter = (place: PlaceCourse, hours: number): number => {
  const { excess, critical, rate, bend } = place;
  const wetHours = Math.max(0, (excess - critical) / rate);
  if (hours <= wetHours) return excess - rate * hours;
  const start = Math.min(excess, critical) / critical;
  const tau = ((hours - wetHours) * rate) / critical;
  const power = 1 - bend;
  if (power < STRAIGHT) return critical * start * Math.exp(-tau);
  return critical * Math.max(0, start ** power - power * tau) ** (1 / power);
};

/** Hours until the excess is `left` (above 0): 0 where it already is. Closed form. */
export const hoursUntil = (place: PlaceCourse, left: number): number => {
  const { excess, critical, rate, bend } = place;
  if (excess <= left) return 0;
  if (left >= critical) return (excess - left) / rate;
  const wetHours = Math.max(0, (excess - critical) / rate);
  const start = Math.min(excess, critical) / critical;
  const end = left / critical;
  const power = 1 - bend;
  const tau = power < STRAIGHT ? Math.log(start / end) : (start ** power - end ** power) / power;
  return wetHours + (tau * critical) / rate;
};
