import { beforeAll, describe, expect, it } from 'vitest';
import { inAsPlanned, planOf } from './check/mat.ts';
import { MAT, rectangle } from './check/pieces.ts';
import { mirroredInMat, mirroredPins, mirroredPlan } from './mirror.ts';
import { referencesOnMat } from './place-from-tape.ts';
import { stockWithout } from './stock-left.ts';
import type { MatSpec, PiecePlan, PieceToBlock, PinPlaced } from './types.ts';

/** A front with one slanted side. */
const FRONT: PieceToBlock = (() => {
  const box = rectangle([300, 400], [320, 410]);
  const slanted = (points: readonly { x: number; y: number }[]) =>
    points.map((p, k) => (k === 1 ? { x: p.x - 60, y: p.y } : p));
  return { ...box, outline: slanted(box.outline), wanted: slanted(box.wanted!) };
})();

const tapesHold = (pins: readonly PinPlaced[], mat: MatSpec): void => {
  pins.forEach((pin, k) => {
    const places = referencesOnMat(inAsPlanned(pins.slice(0, k)), mat);
    for (const { name, mm } of pin.from) {
      const at = places.get(name);
      if (at === undefined) throw new Error(`pin ${pin.order}: ${name}`);
      expect(Math.hypot(pin.xMm - at.x, pin.yMm - at.y)).toBeCloseTo(mm, 9);
    }
  });
};

describe('B20: left and right exchanged', () => {
  let front: PiecePlan;
  beforeAll(() => {
    front = planOf(FRONT, {}, 200);
  });

  it('twice is the same plan', () => {
    const twice = mirroredPlan(mirroredPlan(front, MAT), MAT);
    // W − (W − x) leaves rounding.
    twice.pins.forEach((pin, k) => {
      const was = front.pins[k]!;
      expect(pin.xMm).toBeCloseTo(was.xMm, 9);
      expect({ ...pin, xMm: 0 }).toEqual({ ...was, xMm: 0 });
    });
    expect(twice.stretchUse.field.triangles).toEqual(front.stretchUse.field.triangles);
    const all = inAsPlanned(front.pins);
    mirroredInMat(mirroredInMat(all, MAT), MAT).forEach(({ to, along }, k) => {
      expect(to.x).toBeCloseTo(all[k]!.to.x, 9);
      expect(along).toEqual(all[k]!.along);
    });
  });

  it.each([
    ['whole tiles', MAT],
    ['tiles that end short of the right edge', { ...MAT, widthMm: 1000 }],
    ['no tiles', { ...MAT, tileMm: 0 }],
  ])('on a mat of %s, both tapes of each step hold', (_, mat) => {
    const plan = planOf(FRONT, { mat }, 200);
    const pins = mirroredPins(plan.pins, mat);
    tapesHold(pins, mat);
    pins.forEach(({ xMm, yMm, on, order }, k) => {
      const was = plan.pins[k]!;
      expect([xMm, yMm]).toEqual([mat.widthMm - was.xMm, was.yMm]);
      expect([on, order]).toEqual([was.on, was.order]);
    });
  });

  it('triangles still run as they did, and measurements stay', () => {
    const other = mirroredPlan(front, MAT);
    const turn = ({ points, triangles }: typeof front.stretchUse.field): number => {
      const [a, b, c] = triangles.slice(0, 3).map((k) => [points[2 * k]!, points[2 * k + 1]!]);
      return Math.sign(
        (b![0]! - a![0]!) * (c![1]! - a![1]!) - (b![1]! - a![1]!) * (c![0]! - a![0]!),
      );
    };
    expect(turn(other.stretchUse.field)).toBe(turn(front.stretchUse.field));
    expect(other.measurements).toEqual(front.measurements);
  });
});

describe('B21: stock', () => {
  const stock = {
    straight: 5,
    tPins: 4,
    combs: [
      { lengthMm: 60, count: 2 },
      { lengthMm: 90, count: 1 },
    ],
    wires: [{ lengthMm: 600, count: 1 }],
  };

  it('what is in is gone, kind by kind and length by length', () => {
    const along = (lengthMm: number) => ({ lengthMm, dx: 1, dy: 0 });
    const taken = [
      { kind: 'straight', along: null },
      { kind: 't-pin', along: null },
      { kind: 'comb', along: along(60) },
      { kind: 'wire', along: along(600) },
    ] as const;
    expect(stockWithout(stock, taken, 6)).toEqual({
      straight: 0,
      // One is in, and two hold a wire as straight ones ran out.
      tPins: 1,
      combs: [
        { lengthMm: 60, count: 1 },
        { lengthMm: 90, count: 1 },
      ],
      wires: [{ lengthMm: 600, count: 0 }],
    });
    expect(stockWithout(stock, [])).toEqual(stock);
  });
});
