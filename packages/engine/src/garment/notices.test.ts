import { expect, test } from 'vitest';
import { mm } from '../units/index.ts';
import { PULLOVER } from './check/questions.ts';
import { forecast } from './forecast.ts';
import type { ForecastQuestion, MeasuredOnGarment } from './forecast-types.ts';

const codes = (change: Partial<ForecastQuestion>): string[] =>
  forecast({ ...PULLOVER, ...change }, { draws: 200 }).notices.map((n) => n.code);

const tape = (id: string, flatMm: number): MeasuredOnGarment => ({
  id,
  measurement: 'chest',
  state: 'asKnit',
  value: mm(flatMm),
  span: 'flat',
});

test('F21: what is not known is said: no gauge, nothing measured, never washed, mass guessed', () => {
  expect(codes({})).toEqual(['nothing-measured']);
  expect(codes({ patternGauge: null })).toContain('no-pattern-gauge');
  expect(codes({ measured: [tape('a', 520)] })).toEqual(['never-washed']);
  expect(codes({ mass: null })).toContain('mass-guessed');
});

test('F22: evidence that contradicts the rest is named, and agreeing evidence is not', () => {
  expect(codes({ measured: [tape('a', 520), tape('b', 522)] })).not.toContain('evidence-disagrees');
  // 520 and 600 flat of one chest: 14 % apart by a tape that errs by 1 %.
  expect(codes({ measured: [tape('a', 520), tape('b', 600)] })).toContain('evidence-disagrees');
});

test('F23: pinning warns that it is not for good, and where it asks for more than the fabric gives', () => {
  const pin = { drying: 'pin' as const };
  expect(codes(pin)).toContain('block-not-permanent');
  expect(codes(pin)).not.toContain('pinned-beyond-give');
  const far = [{ measurement: 'chest', value: mm(2000) }];
  expect(codes({ ...pin, pinTo: far })).toContain('pinned-beyond-give');
  const near = [{ measurement: 'chest', value: mm(700) }];
  expect(codes({ ...pin, pinTo: near })).toContain('wet-larger-than-pinned');
  expect(codes(pin)).not.toContain('wet-larger-than-pinned');
});

test('F24: cautions stand where the work can hurt', () => {
  expect(codes({ drying: 'pin' })).toContain('caution-pins');
  expect(codes({ washing: 'machine-warm' })).toContain('caution-felting');
  expect(codes({ fibres: [{ fibre: 'acrylic', share: 1 }] })).toContain('caution-heat');
});
