import { describe, expect, it } from 'vitest';
import { mm } from '../units/index.ts';
import { PULLOVER } from './check/questions.ts';
import { forecast } from './forecast.ts';
import type { ForecastQuestion, MeasuredOnGarment } from './forecast-types.ts';

const tape = (
  measurement: string,
  state: MeasuredOnGarment['state'],
  value: number,
): MeasuredOnGarment => ({
  id: `${measurement} ${state} ${value}`,
  measurement,
  state,
  value: mm(value),
  span: 'flat',
});

const told = (measured: readonly MeasuredOnGarment[], change: Partial<ForecastQuestion> = {}) => {
  const made = forecast({ ...PULLOVER, ...change, measured }, { draws: 1000 });
  return {
    of: (id: string) => made.measurements.find((each) => each.id === id)!.states,
    codes: made.notices.flatMap(({ code }) => (code.startsWith('caution-') ? [] : [code])),
    chance: made.fit.find(({ landmark }) => landmark === 'body-length')?.chance ?? null,
  };
};

/** A tape on a garment errs by about 5 mm (SD); a number that keeps to it lies within one of them. */
const TAPE_MM = 5;

describe('what is measured in a state is that state’s number', () => {
  it('F25: a length knit shorter than the pattern wants it is as short as the tape says', () => {
    // 596 mm are wanted: 56 mm less, and nobody is told to measure again.
    const { of, codes } = told([tape('body-length', 'asKnit', 540)]);
    expect(Math.abs(of('body-length').asKnit.p50Mm - 540)).toBeLessThan(TAPE_MM);
    expect(codes).not.toContain('evidence-disagrees');
    expect(codes).not.toContain('tape-against-counts');
  });

  it('F25: of a counted width likewise, and that it is not what the counts give is said', () => {
    const sure = told([tape('armhole-depth', 'asKnit', 204)]);
    expect(sure.codes).not.toContain('tape-against-counts');
    const { of, codes } = told([tape('armhole-depth', 'asKnit', 300)]);
    expect(Math.abs(of('armhole-depth').asKnit.p50Mm - 300)).toBeLessThan(TAPE_MM);
    expect(codes).toContain('tape-against-counts');
  });

  it('F25: a length that grew more than is usual has grown, in each state that was measured', () => {
    const measured = [tape('body-length', 'dried', 580), tape('body-length', 'rewashed', 630)];
    const { of, codes, chance } = told(measured, { judgeAt: 'rewashed' });
    expect(Math.abs(of('body-length').dried.p50Mm - 580)).toBeLessThan(TAPE_MM);
    expect(Math.abs(of('body-length').rewashed.p50Mm - 630)).toBeLessThan(TAPE_MM);
    expect(codes).toContain('tape-against-growth');
    expect(codes).not.toContain('evidence-disagrees');
    // 570 to 630 are wanted, and 630 is what it is.
    expect(chance).toBeGreaterThan(0.35);
    expect(chance).toBeLessThan(0.65);
  });

  it('F25: a tape that agrees overrules nothing, and narrows', () => {
    const before = told([]).of('body-length').asKnit;
    const { of, codes } = told([tape('body-length', 'asKnit', 600)]);
    const after = of('body-length').asKnit;
    expect(after.p95Mm / after.p05Mm).toBeLessThan(before.p95Mm / before.p05Mm);
    expect(codes).toEqual(['never-washed']);
  });

  it('F25: one length that is off is no gauge: the others stay what they were', () => {
    const { of } = told([tape('armhole-depth', 'asKnit', 300)]);
    const plain = told([]);
    for (const id of ['sleeve-length', 'body-length'])
      expect(Math.abs(of(id).dried.p50Mm - plain.of(id).dried.p50Mm)).toBeLessThan(1.5);
  });

  it('F25: what one part grew by is no fabric: the other grows as is usual, until it has grown too', () => {
    const body = [tape('body-length', 'dried', 580), tape('body-length', 'rewashed', 630)];
    const grew = (id: string, measured: readonly MeasuredOnGarment[]) => {
      const { dried, rewashed } = told(measured).of(id);
      return rewashed.p50Mm / dried.p50Mm;
    };
    expect(grew('sleeve-length', body)).toBeCloseTo(grew('sleeve-length', []), 2);
    // 580 to 630 is 1.086, of all that is measured on the body.
    expect(grew('armhole-depth', body)).toBeGreaterThan(1.07);
    const sleeve = [tape('sleeve-length', 'dried', 440), tape('sleeve-length', 'rewashed', 478)];
    expect(grew('sleeve-length', [...body, ...sleeve])).toBeGreaterThan(1.05);
    expect(told(body).codes).toContain('tape-against-growth');
  });
});
