import type { Point } from '../garment/index.ts';
import type { InMat } from './mat-types.ts';
import { matReferences, type Reference } from './on-mat.ts';
import { pinsIn } from './place-from-tape.ts';
import { distance } from './plane.ts';
import { mirrored } from './symmetry.ts';
import { tapeDistances } from './tape.ts';
import type { MatSpec, PiecePlan, PinPlaced, TapeDistance } from './types.ts';

/** Places that differ by less are one, mm: rounding. */
const SAME = 1e-6;

type Along = PinPlaced['along'];

const along = (way: Along): Along => (way === null ? null : { ...way, dx: 0 - way.dx });

/** What each thing on the mat itself is called on the other side; null where nothing is there. */
const otherNames = (mat: MatSpec): Map<string, string | null> => {
  const all = matReferences(mat);
  const other = (at: Point) => mirrored(at, mat.widthMm / 2);
  return new Map(
    all.map(({ name, at }) => [
      name,
      all.find((r) => distance(r.at, other(at)) <= SAME)?.name ?? null,
    ]),
  );
};

/**
 * Steps with left and right exchanged about the middle of the mat: the same distances from what stands on
 * the other side. Where no tile ends there, both distances are from other things. Twice gives the same
 * steps again, on a mat of whole tiles. What the steps hold of the outline stays: it is the same piece,
 * other face up. `before`: what was in before the first of them, in the places it has after.
 */
export const mirroredPins = (
  pins: readonly PinPlaced[],
  mat: MatSpec,
  before: readonly Reference[] = [],
): PinPlaced[] => {
  const names = otherNames(mat);
  const fixed = matReferences(mat);
  const placed = [...before];
  return pins.map((pin): PinPlaced => {
    const at = mirrored({ x: pin.xMm, y: pin.yMm }, mat.widthMm / 2);
    const known = pin.from.map(({ name, mm }) => {
      const other = names.has(name) ? names.get(name)! : name;
      return other === null ? null : { name: other, mm };
    });
    const from = known.includes(null)
      ? tapeDistances(at, placed, fixed)
      : (known as [TapeDistance, TapeDistance]);
    if (pin.along === null) placed.push({ name: `pin ${pin.order}`, at });
    return { ...pin, xMm: at.x, yMm: at.y, from, along: along(pin.along) };
  });
};

/** What is in the mat with left and right exchanged. */
export const mirroredInMat = (inMat: readonly InMat[], { widthMm }: MatSpec): InMat[] =>
  inMat.map((thing) => ({
    ...thing,
    to: mirrored(thing.to, widthMm / 2),
    along: along(thing.along),
  }));

/**
 * A whole plan with left and right exchanged: for the second front, or the piece laid other face up.
 * `inMat`: what is in before its steps, in the places it has on that side.
 */
export const mirroredPlan = (
  plan: PiecePlan,
  mat: MatSpec,
  inMat: readonly InMat[] = [],
): PiecePlan => {
  const flip = (p: Point) => mirrored(p, mat.widthMm / 2);
  const { outlines, stretchUse } = plan;
  const { points, triangles, overWet } = stretchUse.field;
  return {
    ...plan,
    pins: mirroredPins(plan.pins, mat, pinsIn(inMat)),
    outlines: {
      rest: outlines.rest.map(flip),
      wanted: outlines.wanted.map(flip),
      pinned: outlines.pinned.map(flip),
    },
    stretchUse: {
      ...stretchUse,
      where: flip(stretchUse.where),
      field: {
        points: points.map((v, k) => (k % 2 === 0 ? mat.widthMm - v : v)),
        // Turned the other way round, so that each still runs as it did.
        triangles: triangles.map(
          (_, k) => triangles[k % 3 === 0 ? k : k % 3 === 1 ? k + 1 : k - 1]!,
        ),
        overWet,
      },
    },
  };
};
