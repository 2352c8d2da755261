import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { draws } from '../../../../../scripts/lib/draws.mjs';
import { once } from '../../../../../scripts/lib/once.mjs';
import { flat, mm, type Result } from '../../units/index.ts';
import { GARMENT_KINDS, type GarmentKind } from '../kinds.ts';
import { outlinePieces } from '../outline/index.ts';
import { outlineFromCounts } from './draw-steps.ts';
import { countsFromOutline, countsOfPiece } from './piece-counts.ts';
import { pieceStitches } from './piece-stitches.ts';
import { readCounts } from './read-counts.ts';
import { sockCounts } from './sock-counts.ts';
import { stitchesIn, tidySteps } from './tidy.ts';
import type { Pitch } from './types.ts';
import { writeCounts } from './write-counts.ts';

const got = <T>(result: Result<T>): T => {
  if (!result.ok) throw new Error(JSON.stringify(result.faults));
  return result.value;
};
const gauge = (stitch: number, row: number): Pitch => ({
  stitch: mm(stitch),
  row: mm(row),
  state: 'dried',
});
const SIZES = { chest: flat(520), 'rib-depth': flat(60) };
const FLAT = GARMENT_KINDS.filter((kind) => kind !== 'sock');

const anyPiece = fc
  .record({
    kind: fc.constantFrom<GarmentKind>(...FLAT),
    chest: fc.integer({ min: 280, max: 640 }),
    stitch: fc.double({ min: 2.8, max: 7, noNaN: true }),
    ratio: fc.double({ min: 0.62, max: 0.85, noNaN: true }),
    rib: fc.boolean(),
    pick: fc.nat({ max: 5 }),
  })
  .map(({ kind, chest, stitch, ratio, rib, pick }) => {
    const pieces = outlinePieces(kind, {
      chest: flat(chest),
      ...(rib ? { 'rib-depth': flat(50) } : {}),
    });
    return { piece: pieces[pick % pieces.length]!, pitch: gauge(stitch, stitch * ratio) };
  });

/** Pieces of all kinds with their counts, which take long: every law is held against the same. */
const counted = once(() =>
  fc.sample(anyPiece, draws(30, 1000)).map(({ piece, pitch }) => ({
    piece,
    pitch,
    found: got(countsOfPiece(piece, { pitch })),
    asked: JSON.stringify({ piece, pitch }),
  })),
);

describe('counts of a piece', () => {
  it('CN10: a front edge stays straight up to its neck, which takes most stitches first', () => {
    const pieces = outlinePieces('cardigan-raglan', { chest: flat(360), 'rib-depth': flat(40) });
    const front = pieces.find(({ name }) => name === 'front')!;
    const { steps } = got(countsOfPiece(front, { pitch: gauge(4.88, 3.53) }));
    const neck = steps.flatMap((step) =>
      step.kind === 'shape' && step.edge === 'neck' ? [step] : [],
    );
    expect(neck[0]).toMatchObject({ by: 'bind-off' });
    const stitches = neck.map((each) => each.stitches);
    expect(stitches).toEqual(stitches.toSorted((a, b) => b - a));
  });

  it('CN10: a round yoke says that it is knit in one, and no other garment does', () => {
    for (const kind of FLAT) {
      const told = outlinePieces(kind, SIZES).filter((piece) =>
        got(countsOfPiece(piece, { pitch: gauge(5, 3.6) })).notices.some(
          ({ code }) => code === 'yoke-in-one',
        ),
      );
      const names = told.map(({ name }) => name);
      expect([kind, names]).toEqual([
        kind,
        kind.endsWith('-yoke') ? expect.arrayContaining(['front', 'back']) : [],
      ]);
    }
  });

  it('CN10: a rectangle is cast on, worked and bound off', () => {
    const [piece] = outlinePieces('blanket', { width: flat(500), length: flat(800) });
    const found = got(
      countsOfPiece(piece!, { pitch: gauge(5, 4), repeat: { stitches: 8, plus: 3 } }),
    );
    expect(writeCounts(found.steps, { words: 'uk' })).toEqual([
      'Cast on 99 stitches.',
      'Work 200 rows straight.',
      'Cast off the remaining stitches.',
    ]);
    expect(found.measures).toMatchObject([
      { landmark: 'width', count: 99, errorMm: -5 },
      { landmark: 'length', count: 200, errorMm: 0 },
    ]);
    expect(found.stitches).toBe(99 * 200);
  });

  it('CN10: every garment keeps within one step of its outline, and six tenths on the whole', () => {
    for (const { piece, pitch, found, asked } of counted()) {
      // One step of shaping, which is four stitches of half a round on a hat and two on a mitten, or a
      // fiftieth of all that an edge travels: 65 stitches for the longest side of a garment here, 1.1
      // times half the span for a shawl (half the span there, and the rounding of its point).
      const step = piece.name === 'hat' ? 4 : piece.name === 'mitten' ? 2 : 1;
      const travel = piece.name === 'shawl' ? (1.1 * 750) / pitch.stitch : 65 * step;
      const bound = Math.max(step, travel / 50);
      expect(found.fit.worst, asked).toBeLessThanOrEqual(bound);
      // Twenty rows beyond 0.6 of it cost more than the two lines that would mend it.
      expect(found.fit.rms, asked).toBeLessThanOrEqual(0.6 * bound);
    }
  });

  it('CN10: stitches worked are the area of the outline, within what rounding of rows and stitches allows', () => {
    // A mitten’s thumb is counted apart.
    for (const { piece, pitch, found, asked } of counted())
      if (piece.name !== 'mitten') {
        expect(got(stitchesIn(found.steps, pitch)), asked).toBe(found.stitches);
        // Half a stitch at each of two edges of 40 or more, eight at a crown, a row at each of two ends.
        const wanted = pieceStitches(piece, pitch);
        expect(Math.abs(found.stitches / wanted - 1), asked).toBeLessThan(0.1);
      }
  });

  it('CN10: lengths are within three rows and widths within three stitches, but where a repeat or sections of a round ask for more', () => {
    for (const { piece, pitch, found, asked } of counted()) {
      const round = piece.name === 'hat' || piece.name === 'mitten';
      // Heights are even numbers of rows: one row off at each of two ends, and one more where two heights
      // are so near to each other that both cannot have even rows of their own.
      const rows = 3 * pitch.row + 1e-9;
      // Half a step of shaping at each edge and as much for the bound: 8 places of a tube are 2 flat stitches.
      const stitches = (round ? 4 : 3) * pitch.stitch + 1e-9;
      for (const { direction, errorMm } of found.measures)
        expect(Math.abs(errorMm), asked).toBeLessThanOrEqual(
          direction === 'length' ? rows : stitches,
        );
    }
  });

  it('CN8: what is counted is read back from its outline and from its words', () => {
    for (const [k, { pitch, found, asked }] of counted().entries()) {
      const { steps } = found;
      const words = k % 2 === 0 ? 'us' : 'uk';
      expect(got(tidySteps(steps, pitch)), asked).toEqual(steps);
      const drawn = got(outlineFromCounts(steps, pitch));
      expect(got(countsFromOutline(drawn, { pitch })), asked).toEqual(steps);
      expect(got(readCounts(writeCounts(steps, { words, pitch }).join('\n'))), asked).toEqual(
        steps,
      );
    }
  });

  it('CN10: gauge and lengths scaled alike give the same counts', () => {
    for (const kind of ['pullover-set-in', 'pullover-raglan', 'hat'] as const) {
      const pieces = (by: number) =>
        outlinePieces(kind, {
          chest: flat(520 * by),
          brim: flat(250 * by),
          'rib-depth': flat(50 * by),
        });
      pieces(1).forEach((piece, i) => {
        const one = got(countsOfPiece(piece, { pitch: gauge(5, 3.6) }));
        const two = got(countsOfPiece(pieces(2)[i]!, { pitch: gauge(10, 7.2) }));
        expect(two.steps).toEqual(one.steps);
      });
    }
  });

  it('CN10: raglans whose neck and sides meet near the top keep a stitch between them', () => {
    const asked = [
      ['front', 4.5, 0.65],
      ['back', 6.5, 0.75],
    ] as const;
    for (const [name, stitch, ratio] of asked) {
      const pieces = outlinePieces('pullover-raglan', { chest: flat(300) });
      const piece = pieces.find((each) => each.name === name)!;
      const { steps } = got(countsOfPiece(piece, { pitch: gauge(stitch, stitch * ratio) }));
      expect(steps.some((step) => step.kind === 'divide')).toBe(true);
      expect(steps.filter((step) => step.kind === 'shape' && step.by === 'increase')).toEqual([]);
    }
  });

  it('CN10: a set-in back has its parts in their order', () => {
    const back = outlinePieces('pullover-set-in', SIZES).find((each) => each.name === 'back')!;
    const { steps, notices } = got(countsOfPiece(back, { pitch: gauge(5, 3.6) }));
    const said = steps.map((step) =>
      step.kind === 'shape' ? `${step.by} ${step.edge}` : step.kind,
    );
    const order = [
      'cast-on',
      'work',
      'bind-off each',
      'decrease each',
      'divide',
      'finish',
      'reverse',
    ];
    expect(order.map((part) => said.indexOf(part))).toEqual(
      [...order.map((part) => said.indexOf(part))].sort((a, b) => a - b),
    );
    expect(order.every((part) => said.includes(part))).toBe(true);
    expect(notices.map((notice) => notice.code)).toContain('rib-at-main-gauge');
  });

  it('CN10: a sock has a leg, a heel over half its stitches, and a foot that is drawn up', () => {
    const [sock] = outlinePieces('sock', {
      foot: flat(105),
      leg: flat(105),
      'leg-length': flat(160),
      'foot-length': flat(240),
      'rib-depth': flat(40),
    });
    const { leg, heel, foot } = got(sockCounts(sock!, { pitch: gauge(3.3, 2.4) }));
    expect(leg.steps.at(-1)).toEqual({ kind: 'finish', by: 'hold' });
    expect(foot.steps.at(-1)).toEqual({ kind: 'finish', by: 'gather' });
    expect(foot.steps[0]).toMatchObject({ stitches: 64, round: true });
    expect(heel.stitches).toBe(32);
    expect(2 * heel.turns.reduce((a, b) => a + b, 0) + heel.flat).toBe(32);
    expect(countsOfPiece(sock!, { pitch: gauge(3.3, 2.4) })).toMatchObject({
      faults: [{ code: 'piece-in-parts' }],
    });
  });

  it('CN12: gauges that are none, and pieces too small for a stitch, are faults', () => {
    const [piece] = outlinePieces('other', { width: flat(300), length: flat(200) });
    expect(countsOfPiece(piece!, { pitch: gauge(0, 4) })).toMatchObject({
      faults: [{ field: 'pitch.stitch' }],
    });
    expect(countsOfPiece(piece!, { pitch: gauge(5, Number.NaN) })).toMatchObject({
      faults: [{ field: 'pitch.row' }],
    });
    expect(
      countsOfPiece(piece!, { pitch: gauge(5, 4), repeat: { stitches: 0, plus: 0 } }),
    ).toMatchObject({
      faults: [{ field: 'repeat.stitches' }],
    });
    expect(sockCounts(piece!, { pitch: gauge(5, 4) })).toMatchObject({
      faults: [{ code: 'piece-no-sock' }],
    });
  });
});
