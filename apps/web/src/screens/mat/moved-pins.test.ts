import type { PinPlaced } from '@dryflat/engine/blocking';
import { describe, expect, it } from 'vitest';
import type { Cloth, Planned } from '../../worker/mat/index.ts';
import { asPlanned, type MovedPin, movedFrom, pinsAround, pinsAt, placesOf } from './moved-pins.ts';

/** Three things on the edge of a piece that lies 300 right and 200 down of its own corner. */
const pinned = (kinds: readonly PinPlaced['kind'][]) => {
  const pins = kinds.map((kind, k) => ({
    kind,
    order: k + 1,
    xMm: 300 + 100 * k,
    yMm: 200,
    along: kind === 'comb' ? { lengthMm: 80, dx: 1, dy: 0 } : null,
  }));
  const planned = { plan: { name: 'back', pins } } as unknown as Planned;
  const cloth = {
    frame: { turned: false, dx: 300, dy: 200 },
    pinRing: [0, 1, 2],
    ringRest: Float32Array.of(0, 0, 90, 0, 180, 0),
  } as unknown as Cloth;
  return { planned, cloth };
};
const { planned, cloth } = pinned(['straight', 'straight', 'comb']);
const moved = asPlanned(planned).map(([x, y], k) => (k === 1 ? [x + 7.25, y - 3] : [x, y])) as [
  number,
  number,
][];
const other: MovedPin = {
  piece: 'front',
  at: { xMm: 0, yMm: 0 },
  to: { xMm: -5, yMm: 0 },
  around: false,
};

describe('moved pins', () => {
  it('M12: are kept by where they go through the fabric and where they stand in the piece', () => {
    expect(pinsAt(planned, cloth, moved, [other])).toEqual([
      other,
      {
        piece: 'back',
        at: { xMm: 90, yMm: 0 },
        to: { xMm: 107.25, yMm: -3 },
        around: false,
      },
    ]);
  });

  it('M12: are found again where they were left, wherever on the mat the piece lies', () => {
    const pins = pinsAt(planned, cloth, moved, []);
    expect(placesOf(planned, cloth, pins)).toEqual({ places: moved, lost: [] });
    const aside = { ...cloth, frame: { turned: false, dx: 340, dy: 200 } };
    expect(placesOf(planned, aside, pins).places[1]).toEqual([447.25, 197]);
  });

  it('M12: keeping them again changes nothing; none are kept where all stand as planned', () => {
    const pins = pinsAt(planned, cloth, moved, [other]);
    expect(pinsAt(planned, cloth, placesOf(planned, cloth, pins).places, pins)).toEqual(pins);
    expect(pinsAt(planned, cloth, asPlanned(planned), pins)).toEqual([other]);
    expect([...movedFrom(planned, moved)]).toEqual([1]);
  });

  it('M12: one that the plan has no pin for is told and not forgotten', () => {
    const far = { ...other, piece: 'back', at: { xMm: 40, yMm: 0 } };
    expect(placesOf(planned, cloth, [far])).toEqual({ places: asPlanned(planned), lost: [far] });
    expect(pinsAt(planned, cloth, asPlanned(planned), [far])).toEqual([far]);
  });

  it('M13: the plan goes around single pins; moved again, a pin takes the place of its older self', () => {
    const all = moved.map(([x, y], k) => (k === 2 ? [x, y + 4] : [x, y])) as [number, number][];
    const once = pinsAround(planned, cloth, all, [other]);
    expect(once.map(({ piece, around }) => [piece, around])).toEqual([
      ['front', false],
      ['back', true],
      ['back', false],
    ]);
    const further = moved.map(([x, y], k) => (k === 1 ? [x + 5, y] : [x, y])) as [number, number][];
    const twice = pinsAround(planned, cloth, further, once);
    expect(twice.filter(({ around }) => around).map(({ to }) => to.xMm)).toEqual([112.25]);
  });
});
