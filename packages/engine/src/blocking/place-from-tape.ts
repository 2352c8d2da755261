import { TAPE_SD_MM } from '../fabric/index.ts';
import type { Point } from '../garment/index.ts';
import { type Fault, fail, ok, type Result } from '../units/index.ts';
import type { InMat, PlaceFromTape, ReferencesOnMat } from './mat-types.ts';
import { matReferences, type Reference } from './on-mat.ts';
import { between, distance } from './plane.ts';

/** Two tapes that miss each other by up to this still meet, mm: what a tape on fabric may be off. */
const MISS = TAPE_SD_MM;

const mm = (value: number): string => `{mm:${value.toFixed(1)}}`;

export const orderIn = ({ order }: InMat, index: number): number => order ?? index + 1;

/** Pins that are in, as references for what comes after them. */
export const pinsIn = (inMat: readonly InMat[]): Reference[] =>
  inMat.flatMap((thing, k) =>
    thing.along === null ? [{ name: `pin ${orderIn(thing, k)}`, at: thing.to }] : [],
  );

export const referencesOnMat: ReferencesOnMat = (inMat, mat) =>
  new Map([...matReferences(mat), ...pinsIn(inMat)].map(({ name, at }) => [name, at]));

/** Where circles about a and b meet, on the side of `near`; their nearest places where they just miss. */
const meeting = (a: Point, ra: number, b: Point, rb: number, near: Point): Point => {
  const d = distance(a, b);
  const along = (d * d + ra * ra - rb * rb) / (2 * d);
  const off = Math.sqrt(Math.max(0, ra * ra - along * along));
  const foot = between(a, b, along / d);
  const [nx, ny] = [-(b.y - a.y) / d, (b.x - a.x) / d];
  const side = nx * (near.x - a.x) + ny * (near.y - a.y) < 0 ? -1 : 1;
  return { x: foot.x + side * off * nx, y: foot.y + side * off * ny };
};

/** On the way from a reference to where it was planned, as far out as the tape says. */
const alongTape = (from: Point, length: number, planned: Point): Point => {
  const way = distance(from, planned);
  return way > 0 ? between(from, planned, length / way) : { x: from.x + length, y: from.y };
};

const noMeeting = (
  names: readonly [string, string],
  tape: readonly [number, number],
  apart: number,
): Fault => {
  const short = tape[0] + tape[1] < apart;
  const found = `${mm(tape[0])} from ${names[0]} and ${mm(tape[1])} from ${names[1]}`;
  const why = short
    ? `together they are shorter than the ${mm(apart)} between the two`
    : `they differ by more than the ${mm(apart)} between the two`;
  return {
    code: 'block-tape-apart',
    field: 'tape',
    given: `${tape[0]} mm, ${tape[1]} mm`,
    problem: `No place is ${found}: ${why}`,
    mend: `Measure again from ${names[0]} and ${names[1]}, or give one of the two.`,
  };
};

const fault = (code: string, field: string, given: unknown, problem: string, mend: string) =>
  fail({ code: `block-${code}`, field, given: String(given), problem, mend });

/**
 * Where a step went in truth, on the mat, mm: where its two tapes meet, on the side where it was planned.
 * With one tape it lies in the planned direction, with none where it was planned. Tapes that miss each
 * other by less than a tape may be off count as met. A fault names a reference that is not on the mat, a
 * length that is none, and two tapes that cannot meet.
 */
export const placeFromTape: PlaceFromTape = (
  { xMm, yMm, from },
  references,
  tape,
): Result<Point> => {
  const planned = { x: xMm, y: yMm };
  const wrong = tape.findIndex((r) => r !== null && !(r >= 0 && Number.isFinite(r)));
  if (wrong >= 0)
    return fault(
      'tape',
      `tape[${wrong}]`,
      tape[wrong],
      'This is no length on a tape',
      'Give a length from 0 up.',
    );
  const unknown = from.find(({ name }, k) => tape[k] !== null && !references.has(name));
  if (unknown !== undefined)
    return fault(
      'reference',
      'from',
      unknown.name,
      'This is not on the mat',
      'Measure from something that is in.',
    );
  const [a, b] = from.map(({ name }) => references.get(name) ?? planned) as [Point, Point];
  const [ra, rb] = tape;
  if (ra === null) return ok(rb === null ? planned : alongTape(b, rb, planned));
  if (rb === null) return ok(alongTape(a, ra, planned));
  const apart = distance(a, b);
  const misses = Math.max(apart - ra - rb, Math.abs(ra - rb) - apart);
  if (misses > MISS || apart === 0)
    return fail(noMeeting([from[0].name, from[1].name], [ra, rb], apart));
  return ok(meeting(a, ra, b, rb, planned));
};
