import { describe, expect, test } from 'vitest';
import type { Fibre } from '../textile/index.ts';
import { mm } from '../units/index.ts';
import { PULLOVER } from './check/questions.ts';
import { forecast } from './forecast.ts';
import type { ForecastQuestion, MeasuredOnGarment } from './forecast-types.ts';

const codes = (change: Partial<ForecastQuestion>): string[] =>
  forecast({ ...PULLOVER, ...change }, { draws: 200 }).notices.map((n) => n.code);

const beside = (change: Partial<ForecastQuestion>): string[] =>
  codes(change).filter((code) => !code.startsWith('caution-'));

const tape = (id: string, flatMm: number): MeasuredOnGarment => ({
  id,
  measurement: 'chest',
  state: 'asKnit',
  value: mm(flatMm),
  span: 'flat',
});

test('F21: what is not known is said: no gauge, nothing measured, never washed, mass guessed', () => {
  expect(beside({})).toEqual(['nothing-measured']);
  expect(codes({ patternGauge: null })).toContain('no-pattern-gauge');
  expect(beside({ measured: [tape('a', 520)] })).toEqual(['never-washed']);
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

describe('cautions stand where the work can hurt, and look at the fiber', () => {
  const cautions = (change: Partial<ForecastQuestion>): string[] =>
    codes(change).flatMap((code) => (code.startsWith('caution-') ? [code.slice(8)] : []));
  const of = (...names: readonly Fibre[]) => ({
    fibres: names.map((fibre) => ({ fibre, share: 1 / names.length })),
  });

  test.each([
    ['wool', of('wool'), ['felting', 'sun', 'moths']],
    ['machine-washable wool', { treatment: 'superwash' as const }, ['sun', 'moths']],
    ['cotton, washed warm', { ...of('cotton'), washing: 'machine-warm' as const }, ['sun', 'mold']],
    ['viscose', of('viscose'), ['weak-wet', 'sun', 'mold']],
    ['silk and alpaca', of('silk', 'alpaca'), ['felting', 'weak-wet', 'sun', 'moths']],
    ['acrylic', of('acrylic'), ['heat', 'sun']],
    ['several colors', { ...of('cotton'), yarns: 3 }, ['bleeding', 'sun', 'mold']],
    ['pins', { ...of('acrylic'), drying: 'pin' as const }, ['pins', 'heat', 'sun']],
  ])('F24: %s', (_, change, said) => {
    expect(cautions(change)).toEqual(said);
  });

  test('F24: only what is in the yarn is named', () => {
    const texts = forecast({ ...PULLOVER, ...of('silk', 'cotton') }, { draws: 200 }).notices;
    const felting = texts.filter(({ text }) => /felt/.test(text));
    expect(felting).toEqual([]);
    expect(texts.find(({ code }) => code === 'caution-moths')?.text).toContain('eat silk:');
  });
});
