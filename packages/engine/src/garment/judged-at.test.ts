import { describe, expect, it } from 'vitest';
import { mm } from '../units/index.ts';
import { PULLOVER } from './check/questions.ts';
import { forecast } from './forecast.ts';
import type { ForecastQuestion, MeasuredOnGarment } from './forecast-types.ts';

const tape = (state: MeasuredOnGarment['state'], value: number): MeasuredOnGarment => ({
  id: state,
  measurement: 'body-length',
  state,
  value: mm(value),
  span: 'flat',
});

/** Between 560 and 600 mm are wanted. */
const told = (judgeAt: ForecastQuestion['judgeAt'], measured: readonly MeasuredOnGarment[]) => {
  const length = PULLOVER.wanted.find(({ landmark }) => landmark === 'body-length')!;
  const wanted = [{ ...length, min: mm(560), max: mm(600) }];
  return forecast({ ...PULLOVER, judgeAt, wanted, measured }, { draws: 1000 });
};

describe('the state in which fit is judged', () => {
  it('F29: is the latest that was measured: the fuller record has no worse advice', () => {
    const now = told('dried', [tape('rewashed', 630)]);
    const fuller = told('dried', [tape('dried', 580), tape('rewashed', 630)]);
    for (const { judgedAt, fit } of [now, fuller]) {
      expect(judgedAt).toBe('rewashed');
      // 630 give or take the tape, and at most 600 are wanted.
      expect(fit[0]!.chance).toBeLessThan(0.01);
      expect(fit[0]!.miss.side).toBe('large');
    }
  });

  it('F29: what was dry before and is longer since is no disagreement of tapes', () => {
    const { notices } = told('dried', [tape('dried', 580), tape('rewashed', 630)]);
    expect(notices.map(({ code }) => code)).not.toContain('evidence-disagrees');
    for (const { text } of notices) expect(text).not.toMatch(/measure it again/i);
  });

  it.each([
    ['worn', [tape('dried', 580)], 'worn'],
    ['dried', [tape('worn', 590)], 'worn'],
    ['rewashed', [tape('dried', 580)], 'rewashed'],
    ['dried', [tape('asKnit', 580), tape('pinned', 600)], 'dried'],
    ['dried', [], 'dried'],
  ] as const)('F29: planned %s and measured so, it is judged there', (planned, measured, at) => {
    expect(told(planned, measured).judgedAt).toBe(at);
  });
});
