import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { flat } from '../../units/index.ts';
import { GARMENT_KINDS, type GarmentKind } from '../kinds.ts';
import { findLandmark, LANDMARKS_OF } from '../landmarks.ts';
import { outlineOf, outlinePieces, outlineSizes } from './outline.ts';
import { boxOf, distance, flattenPath } from './path.ts';
import type { Outline, OutlinePiece, OutlineSizes, Point } from './types.ts';

/** Twice the signed area of the triangle p, q, r. */
const turn = (p: Point, q: Point, r: Point): number =>
  (q.x - p.x) * (r.y - p.y) - (q.y - p.y) * (r.x - p.x);

const cross = (a: Point, b: Point, c: Point, d: Point): boolean =>
  turn(a, b, c) * turn(a, b, d) < 0 && turn(c, d, a) * turn(c, d, b) < 0;

const crossings = (corners: readonly Point[]): number => {
  let found = 0;
  const at = (i: number) => corners[i % corners.length]!;
  for (let i = 0; i < corners.length; i++)
    for (let j = i + 2; j < corners.length; j++)
      if (cross(at(i), at(i + 1), at(j), at(j + 1))) found++;
  return found;
};

const area = (corners: readonly Point[]): number =>
  corners.reduce((sum, p, i) => {
    const q = corners[(i + 1) % corners.length]!;
    return sum + (p.x * q.y - q.x * p.y) / 2;
  }, 0);

const sizesFor = (kind: GarmentKind, value: fc.Arbitrary<number>): fc.Arbitrary<OutlineSizes> =>
  fc.record(
    Object.fromEntries([...LANDMARKS_OF[kind], 'hip'].map((id) => [id, value.map((v) => flat(v))])),
    { requiredKeys: [] },
  ) as fc.Arbitrary<OutlineSizes>;

/** Any length from a thumb to a blanket, unrelated to one another: mostly impossible garments. */
const anyLength = fc.double({ min: 5, max: 2500, noNaN: true });
const anyGarment = fc
  .constantFrom(...GARMENT_KINDS)
  .chain((kind) => fc.tuple(fc.constant(kind), sizesFor(kind, anyLength)));

/** Nothing given, then each landmark near its usual proportion: garments that could be knit. */
const nearUsual = fc.constantFrom(...GARMENT_KINDS).chain((kind) => {
  const usual = outlineOf(kind, {}).assumed.map((each) => [each.landmark, each.mm] as const);
  const wobble = fc.double({ min: 0.97, max: 1.03, noNaN: true });
  return fc.tuple(
    fc.constant(kind),
    fc.record(Object.fromEntries(usual.map(([id, mm]) => [id, wobble.map((w) => flat(mm * w))])), {
      requiredKeys: [],
    }) as fc.Arbitrary<OutlineSizes>,
  );
});

const pointsOf = (piece: OutlinePiece): Point[] =>
  piece.path.flatMap((s) => (s.kind === 'line' ? [s.from, s.to] : [s.from, s.c1, s.c2, s.to]));

const dimensionsOf = (outline: Outline) => outline.pieces.flatMap((piece) => piece.dimensions);

/** Lengths of up to 5 m with an unlucky division: rounding stays far below this. */
const ROUNDING = 1e-6;

describe('outlines of every kind, whatever the numbers', () => {
  it('G-O1: every outline is finite and closed, each segment starting where the last ended', () => {
    fc.assert(
      fc.property(anyGarment, ([kind, sizes]) => {
        for (const piece of outlinePieces(kind, sizes)) {
          for (const p of pointsOf(piece)) expect(Number.isFinite(p.x + p.y)).toBe(true);
          piece.path.forEach((s, i) => {
            expect(s.from).toEqual(piece.path.at(i - 1)!.to);
          });
        }
      }),
      { numRuns: 300 },
    );
  });

  it('G-O2: no outline crosses itself, and all run the same way round', () => {
    fc.assert(
      fc.property(anyGarment, ([kind, sizes]) => {
        for (const piece of outlinePieces(kind, sizes)) {
          const corners = flattenPath(piece.path, 1);
          expect(crossings(corners), piece.name).toBe(0);
          expect(area(corners), piece.name).toBeGreaterThan(0);
        }
      }),
      { numRuns: 300 },
    );
  });

  it('G-O3: an outline called symmetric is its own mirror image', () => {
    fc.assert(
      fc.property(anyGarment, ([kind, sizes]) => {
        for (const piece of outlinePieces(kind, sizes).filter((each) => each.symmetric)) {
          const key = (p: Point) => `${p.x.toFixed(6)} ${p.y.toFixed(6)}`;
          const corners = pointsOf(piece);
          const mirrored = corners.map((p) => ({ x: 0 - p.x, y: p.y }));
          expect(new Set(mirrored.map(key))).toEqual(new Set(corners.map(key)));
        }
      }),
    );
  });

  it('G-O4: scaling every size scales every point', () => {
    fc.assert(
      fc.property(anyGarment, fc.double({ min: 0.1, max: 10, noNaN: true }), ([kind, sizes], k) => {
        fc.pre(Object.keys(sizes).length > 0);
        const known = LANDMARKS_OF[kind].some((id) => id in sizes && !OPTIONAL.has(id));
        fc.pre(known);
        const scaled = Object.fromEntries(
          Object.entries(sizes).map(([id, mm]) => [id, flat(mm * k)]),
        );
        const large = outlinePieces(kind, scaled).flatMap(pointsOf);
        const small = outlinePieces(kind, sizes).flatMap(pointsOf);
        expect(large).toHaveLength(small.length);
        // Curve lengths are summed by chords to 1e-5 of themselves, so a cap's height may move so much.
        const near = 1e-4 * k * Math.max(...small.map((p) => Math.hypot(p.x, p.y)));
        large.forEach((p, i) => {
          const q = small[i]!;
          expect(distance(p, { x: q.x * k, y: q.y * k })).toBeLessThan(near);
        });
      }),
    );
  });

  it('G-O5: each dimension spans its own number, or what the notice says was drawn', () => {
    fc.assert(
      fc.property(anyGarment, ([kind, sizes]) => {
        const outline = outlineOf(kind, sizes);
        for (const d of dimensionsOf(outline)) {
          const notice = outline.notices.findLast((each) => each.landmark === d.landmark);
          expect(distance(d.from, d.to), d.landmark).toBeCloseTo(notice?.drawnMm ?? d.mm, 5);
          expect(d.mm).toBe(sizes[d.landmark] ?? d.mm);
          expect(d.assumed).toBe(!(d.landmark in sizes));
        }
      }),
      { numRuns: 300 },
    );
  });

  it('G-O6: the box of an upper body is as wide as its widest number and as long as its length', () => {
    fc.assert(
      fc.property(anyGarment, ([kind, sizes]) => {
        const outline = outlineOf(kind, sizes);
        const body = outline.pieces.find((each) => each.name === 'back');
        fc.pre(body !== undefined);
        const box = boxOf(flattenPath(body!.path));
        const spans = Object.fromEntries(
          body!.dimensions.map((d) => [d.landmark, distance(d.from, d.to)]),
        );
        const widest = Math.max(...['chest', 'waist', 'hip', 'hem'].map((id) => spans[id] ?? 0));
        expect(Math.abs(box.right - box.left - widest)).toBeLessThan(ROUNDING);
        expect(Math.abs(box.bottom - box.top - spans['body-length']!)).toBeLessThan(ROUNDING);
      }),
    );
  });

  it('G-O7: garments near their usual proportions are drawn as given, without a notice', () => {
    fc.assert(
      fc.property(nearUsual, ([kind, sizes]) => {
        const lengths = ['body-length', 'underarm-length', 'armhole-depth', 'yoke-depth'];
        const { notices } = outlineOf(kind, sizes);
        expect(notices.filter((each) => !lengths.includes(each.landmark))).toEqual([]);
      }),
    );
  });

  it('G-O8: every landmark of a kind that was given has a dimension on a piece that is drawn', () => {
    for (const kind of GARMENT_KINDS) {
      const all = LANDMARKS_OF[kind];
      const sizes = Object.fromEntries(all.map((id, i) => [id, flat(100 + 7 * i)]));
      const shown = outlinePieces(kind, sizes).filter((each) => each.shownOn === null);
      const drawn = shown
        .flatMap((each) => each.dimensions.filter((d) => !d.assumed))
        .map((d) => d.landmark);
      expect([...drawn].sort(), kind).toEqual([...all].sort());
    }
  });

  it('G-O9: a fill names its landmark and its reason, and is never one that was given', () => {
    fc.assert(
      fc.property(anyGarment, ([kind, sizes]) => {
        for (const each of outlineOf(kind, sizes).assumed) {
          expect(findLandmark(each.landmark)?.id).toBe(each.landmark);
          expect(each.why).not.toBe('');
          expect(each.mm).toBeGreaterThan(0);
          expect(each.landmark in sizes).toBe(false);
        }
      }),
    );
  });
});

/** Drawn only where given, and never used to guess another size. */
const OPTIONAL = new Set(['waist', 'hip', 'rib-depth']);

const set = (sizes: Record<string, number>): OutlineSizes => sizes as OutlineSizes;
const codes = (outline: Outline) => outline.notices.map((n) => [n.code, n.landmark]);

describe('sizes that cannot be drawn as given', () => {
  it('G-O10: a neck wider than the shoulders is drawn narrower and says so', () => {
    const outline = outlineOf(
      'pullover-set-in',
      set({ chest: 500, 'cross-back': 380, 'neck-width': 450 }),
    );
    expect(codes(outline)).toEqual([['size-clamped', 'neck-width']]);
    expect(outline.notices[0]!.text).toBe(
      'The neck cannot be wider than the shoulders: given {mm:450.0}, drawn {mm:342.0}.',
    );
  });

  it('G-O11: a sleeve too wide for its armhole says that no cap fits', () => {
    const outline = outlineOf(
      'cardigan-set-in',
      set({ chest: 500, 'armhole-depth': 150, 'upper-arm': 300 }),
    );
    expect(codes(outline)).toEqual([['cap-impossible', 'upper-arm']]);
  });

  it('G-O12: lengths that do not add up keep the whole and say what gave way', () => {
    const lengths = { 'body-length': 600, 'underarm-length': 420, 'armhole-depth': 220 };
    const outline = outlineOf('vest', set({ chest: 500, ...lengths }));
    expect(outline.notices.map((n) => [n.landmark, n.givenMm, n.drawnMm])).toEqual([
      ['armhole-depth', 220, 180],
    ]);
  });

  it('G-O13: a number that is no length counts as missing and says so', () => {
    for (const bad of [0, -10, Number.NaN, Number.POSITIVE_INFINITY]) {
      const outline = outlineOf('hat', set({ brim: bad, 'hat-height': 215 }));
      expect(codes(outline)).toEqual([['size-unusable', 'brim']]);
      expect(outline.assumed.map((each) => each.landmark)).toEqual(['brim']);
    }
  });

  it('G-O14: a straight back neck and no ribbing are sizes, not faults', () => {
    const outline = outlineOf('vest', set({ chest: 480, 'back-neck-depth': 0, 'rib-depth': 0 }));
    expect(outline.notices).toEqual([]);
    expect(outline.pieces[0]!.details.map((d) => d.kind)).toEqual(['back-neckline']);
  });
});

describe('what shapes say of the garment', () => {
  it('G-O15: a cardigan opens at the centre into two mirrored fronts, half a chest wide each', () => {
    const pieces = outlinePieces('cardigan-set-in', set({ chest: 500, hem: 480 }));
    const front = pieces.find((each) => each.name === 'front')!;
    const box = boxOf(flattenPath(front.path));
    expect([front.copies, box.left, box.right]).toEqual([2, 0, 250]);
    expect(front.path.at(-1)).toMatchObject({ edge: 'selvedge', to: { x: 0 } });
  });

  it('G-O16: a cap edge is as long as the armhole that it is sewn into', () => {
    const sizes = set({ chest: 500, 'cross-back': 370, 'armhole-depth': 200, 'upper-arm': 165 });
    const pieces = outlinePieces('pullover-set-in', sizes);
    const seamed = (name: string, from: number, to: number) => {
      const path = pieces.find((each) => each.name === name)!.path;
      const corners = flattenPath(path.slice(from, to), 0.001);
      return corners.slice(1).reduce((l, p, i) => l + distance(corners[i]!, p), 0);
    };
    // Front: neckline, shoulder, then the armhole's straight and its curve. 0.05 mm: chords at 1e-4.
    expect(Math.abs(seamed('sleeve', 0, 1) - seamed('front', 2, 4))).toBeLessThan(0.05);
  });

  it('G-O17: girths taken around are halved, lengths and flat widths stay', () => {
    const sizes = outlineSizes([
      { landmark: 'chest', span: 'around', mm: 960 },
      { landmark: 'hem', span: 'flat', mm: 470 },
      { landmark: 'body-length', span: 'flat', mm: 600 },
      { landmark: 'cuff', span: 'around', mm: null },
    ]);
    expect(sizes).toEqual({ chest: 480, hem: 470, 'body-length': 600 });
  });

  it('G-O18: a top has sleeves only where it has a sleeve number', () => {
    const names = (sizes: Record<string, number>) =>
      outlinePieces('top', set(sizes)).map((each) => each.name);
    expect(names({ chest: 480 })).toEqual(['front', 'back']);
    expect(names({ chest: 480, 'upper-arm': 170 })).toEqual(['front', 'back', 'sleeve']);
  });
});
