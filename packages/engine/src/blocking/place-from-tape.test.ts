import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { answerOf, inAsPlanned, planOf } from './check/mat.ts';
import { MAT, sweaterBack } from './check/pieces.ts';
import { placeFromTape, referencesOnMat } from './place-from-tape.ts';

const references = new Map([
  ['pin 1', { x: 0, y: 0 }],
  ['pin 2', { x: 500, y: 0 }],
]);
const step = (xMm: number, yMm: number) => ({
  xMm,
  yMm,
  from: [
    { name: 'pin 1', mm: Math.hypot(xMm, yMm) },
    { name: 'pin 2', mm: Math.hypot(xMm - 500, yMm) },
  ] as const,
});

describe('B19: where a step went by its two tapes', () => {
  it('a triangle of 300, 400 and 500', () => {
    const { x, y } = answerOf(placeFromTape(step(170, 250), references, [300, 400]));
    // By hand: 300²/500 along, 300·400/500 across.
    expect(x).toBeCloseTo(180, 9);
    expect(y).toBeCloseTo(240, 9);
  });

  it('is on the side where it was planned', () => {
    const { y } = answerOf(placeFromTape(step(170, -250), references, [300, 400]));
    expect(y).toBeCloseTo(-240, 9);
  });

  it('is any place whose distances were read, on its own side', () => {
    const place = fc.record({
      x: fc.double({ min: -400, max: 900, noNaN: true }),
      y: fc.double({ min: 20, max: 900, noNaN: true }),
    });
    fc.assert(
      fc.property(place, ({ x, y }) => {
        const tape = [Math.hypot(x, y), Math.hypot(x - 500, y)] as const;
        const found = answerOf(placeFromTape(step(250, 300), references, tape));
        // Rounding of squares of up to 1e6 mm², over 2 · 20 mm across.
        expect(found.x).toBeCloseTo(x, 6);
        expect(found.y).toBeCloseTo(y, 6);
      }),
    );
  });

  it('with one tape it lies in the planned direction, with none where it was planned', () => {
    expect(answerOf(placeFromTape(step(300, 400), references, [600, null]))).toEqual({
      x: 360,
      y: 480,
    });
    expect(answerOf(placeFromTape(step(300, 400), references, [null, null]))).toEqual({
      x: 300,
      y: 400,
    });
  });

  it('tapes that just miss each other meet between', () => {
    const { x, y } = answerOf(placeFromTape(step(200, 10), references, [199, 299]));
    // 2 mm too short: (500² + 199² − 299²) / 1000 along, on the line between.
    expect(x).toBeCloseTo(200.2, 9);
    expect(y).toBe(0);
  });

  it.each([
    [[100, 200], 'shorter than the {mm:500.0}'],
    [[900, 200], 'differ by more than the {mm:500.0}'],
  ] as const)('tapes of %j cannot meet: both are named, with what to do', (tape, why) => {
    const made = placeFromTape(step(200, 10), references, tape);
    if (made.ok) throw new Error('they met');
    const [{ given, problem, mend }] = made.faults as [(typeof made.faults)[number]];
    for (const mm of tape) {
      expect(given).toContain(String(mm));
      expect(problem).toContain(`{mm:${mm}.0}`);
    }
    expect(problem).toContain(why);
    expect(mend).toContain('pin 1');
    expect(mend).toContain('pin 2');
  });

  it.each([
    [[-1, 400], 'block-tape'],
    [[Number.NaN, null], 'block-tape'],
  ] as const)('%j is no tape', (tape, code) => {
    const made = placeFromTape(step(200, 10), references, tape);
    expect(made.ok ? '' : made.faults[0]!.code).toBe(code);
  });

  it('a reference that is not on the mat is named', () => {
    const made = placeFromTape(step(200, 10), new Map(), [300, 400]);
    expect(made.ok ? '' : made.faults[0]!.given).toBe('pin 1');
  });

  it('every step of a plan is found where it was planned, by what is in before it', () => {
    const { pins } = planOf(sweaterBack());
    const all = inAsPlanned(pins);
    pins.forEach((pin, k) => {
      const known = referencesOnMat(all.slice(0, k), MAT);
      const [a, b] = pin.from;
      const { x, y } = answerOf(placeFromTape(pin, known, [a.mm, b.mm]));
      expect(x).toBeCloseTo(pin.xMm, 6);
      expect(y).toBeCloseTo(pin.yMm, 6);
    });
  });
});
