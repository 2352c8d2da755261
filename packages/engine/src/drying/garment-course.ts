import { fallingRoot, type Solved, sure } from './falling-root.ts';
import { excessAfter, hoursUntil, type PlaceCourse } from './place-course.ts';

/** One imagined drying, in closed form: places that do not share water, each with its own course. */
export interface GarmentCourse {
  /** Dry fibre, g. */
  readonly fibreG: number;
  /** Mass when dry in this room, g. */
  readonly dryMassG: number;
  /** Shares of the dry fibre add up to 1. */
  readonly places: readonly { readonly share: number; readonly course: PlaceCourse }[];
}

/** Excess water of the whole over its dry fibre after `hours`. */
export const wholeExcess = ({ places }: GarmentCourse, hours: number): number =>
  places.reduce((sum, { share, course }) => sum + share * excessAfter(course, hours), 0);

/** What a scale would show, g. */
export const massAfter = (garment: GarmentCourse, hours: number): number =>
  garment.dryMassG + garment.fibreG * wholeExcess(garment, hours);

/**
 * Hours until the excess of the whole is `left`, above 0. It lies between the first and the last of
 * the places; solved there to a millionth of the later. The residual is a share of the dry fibre.
 */
export const wholeHours = (garment: GarmentCourse, left: number): Solved => {
  const ends = garment.places.map(({ course }) => hoursUntil(course, left));
  const [low, high] = [Math.min(...ends), Math.max(...ends)];
  if (high - low <= 1e-6 * high)
    return { value: high, iterations: 0, residual: 0, converged: true };
  return fallingRoot((hours) => wholeExcess(garment, hours) - left, {
    low,
    high,
    tolerance: 1e-6 * high,
  });
};

/** Dry is when the whole is, and the last place is. */
export const dryAfter = (
  garment: GarmentCourse,
  tolerance: { readonly whole: number; readonly place: number },
): number =>
  Math.max(
    sure(wholeHours(garment, tolerance.whole)),
    ...garment.places.map(({ course }) => hoursUntil(course, tolerance.place)),
  );
