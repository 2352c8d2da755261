import type { Point } from '@dryflat/engine/garment';
import type { GarmentRecord } from '@dryflat/record';
import {
  type Cloth,
  inPiece,
  type Places,
  type Planned,
  placeOnMat,
} from '../../worker/mat/index.ts';

export type MovedPin = NonNullable<GarmentRecord['plan']['pins']>[number];

/** A pin of a new plan this near in the fabric is the one that was moved, mm: what a pin asked for may miss its edge by. */
const SAME = 10;
/** Less is no move, mm: places are kept to a hundredth. */
const MOVED = 0.01;

export const asPlanned = ({ plan }: Pick<Planned, 'plan'>): Places =>
  plan.pins.map(({ xMm, yMm }) => [xMm, yMm]);

/** Indices of pins that are not where the plan has them. */
export const movedFrom = (planned: Pick<Planned, 'plan'>, places: Places): ReadonlySet<number> =>
  new Set(
    asPlanned(planned).flatMap(([x, y], k) => {
      const [nowX, nowY] = places[k] ?? [x, y];
      return Math.hypot(nowX - x, nowY - y) > MOVED ? [k] : [];
    }),
  );

/** True where no pin of one list is off its place in the other by more than they are kept to. */
export const samePlaces = (a: Places, b: Places): boolean =>
  a.length === b.length && a.every(([x, y], k) => Math.hypot(x - b[k]![0], y - b[k]![1]) <= MOVED);

/** Rest place in the outline of the piece that a pin goes through. */
const restOf = ({ pinRing, ringRest }: Cloth, pin: number): Point => {
  const ring = pinRing[pin]!;
  return { x: ringRest[2 * ring]!, y: ringRest[2 * ring + 1]! };
};

/** Which pin of the plan each is, by where it goes through the fabric; null where the plan has none there. */
const found = ({ plan }: Planned, cloth: Cloth, pins: readonly MovedPin[]): (number | null)[] => {
  const free = new Set([...plan.pins.keys()].filter((k) => plan.pins[k]!.kind !== 'wire'));
  return pins.map(({ at }) => {
    let [best, off]: [number | null, number] = [null, SAME];
    for (const k of free) {
      const { x, y } = restOf(cloth, k);
      const d = Math.hypot(x - at.xMm, y - at.yMm);
      if (d <= off) [best, off] = [k, d];
    }
    if (best !== null) free.delete(best);
    return best;
  });
};

const ofPiece = ({ plan }: Planned, pins: readonly MovedPin[], around: boolean): MovedPin[] =>
  pins.filter((pin) => pin.piece === plan.name && pin.around === around);

/** Where pins stand with the moved ones as they were left, and those that this plan has no pin for. */
export const placesOf = (planned: Planned, cloth: Cloth, pins: readonly MovedPin[]) => {
  const moved = ofPiece(planned, pins, false);
  const places = [...asPlanned(planned)];
  const lost: MovedPin[] = [];
  found(planned, cloth, moved).forEach((k, i) => {
    const pin = moved[i]!;
    // In the piece y runs up, in its outline down.
    const { x, y } = placeOnMat(cloth.frame, { x: pin.to.xMm, y: -pin.to.yMm });
    if (k === null) lost.push(pin);
    else places[k] = [x, y];
  });
  return { places, lost };
};

/** To a hundredth of a millimetre, and without a negative zero. */
const kept = (mm: number): number => Math.round(mm * 100) / 100 + 0;
const keptPlace = ({ x, y }: Point) => ({ xMm: kept(x), yMm: kept(y) });

const pinOf = (planned: Planned, cloth: Cloth, places: Places, k: number): MovedPin => {
  const [px, py] = places[k]!;
  const { x, y } = inPiece(cloth.frame, { x: px, y: py });
  return {
    piece: planned.plan.name,
    at: keptPlace(restOf(cloth, k)),
    to: keptPlace({ x, y: -y }),
    around: false,
  };
};

/** All moved pins of the garment, once those of this piece stand at `places`. */
export const pinsAt = (
  planned: Planned,
  cloth: Cloth,
  places: Places,
  before: readonly MovedPin[],
): MovedPin[] => [
  ...before.filter((pin) => pin.piece !== planned.plan.name || pin.around),
  ...placesOf(planned, cloth, before).lost,
  ...[...movedFrom(planned, places)].map((k) => pinOf(planned, cloth, places, k)),
];

/**
 * The same, with the plan to be made around those of this piece. One that was moved again takes the place
 * of its older self; a comb stays as moved, as a plan cannot be asked for one.
 */
export const pinsAround = (
  planned: Planned,
  cloth: Cloth,
  places: Places,
  before: readonly MovedPin[],
): MovedPin[] => {
  const moved = movedFrom(planned, places);
  const older = ofPiece(planned, before, true);
  const at = found(planned, cloth, older);
  const again = new Set(older.filter((_, i) => moved.has(at[i] ?? -1)));
  const combs = [...moved]
    .filter((k) => planned.plan.pins[k]!.along !== null)
    .map((k) => JSON.stringify(pinOf(planned, cloth, places, k)));
  return pinsAt(planned, cloth, places, before)
    .filter((pin) => !again.has(pin))
    .map((pin) =>
      pin.piece === planned.plan.name && !combs.includes(JSON.stringify(pin))
        ? { ...pin, around: true }
        : pin,
    );
};
