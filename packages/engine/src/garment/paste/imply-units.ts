import type { PrintedUnit } from './types.ts';
import type { ValueRun } from './value-runs.ts';

/** Centimetres to an inch, with room for the rounding of both where the numbers are small. */
const RATIO = { least: 2.2, most: 2.9 };

const numberOf = (text: string | null): number | null =>
  text === null || !/^\d+(?:[.,]\d+)?$/.test(text) ? null : Number(text.replace(',', '.'));

/** Share of the pairs that must fit, so that a misprint or two does not hide the unit. */
const ENOUGH = 0.6;

/** Are the numbers of `b` about 2.54 times those of `a`? */
function isInchesToCm(a: ValueRun, b: ValueRun): boolean {
  if (a.values.length !== b.values.length) return false;
  const ratios = a.values.flatMap((value, i) => {
    const [low, high] = [numberOf(value.low), numberOf(b.values[i]!.low)];
    return low && high ? [high / low] : [];
  });
  const fitting = ratios.filter((r) => r > RATIO.least && r < RATIO.most).length;
  return fitting > 0 && fitting >= ENOUGH * ratios.length;
}

/** `34/86, 38/96` without units: every other number is the same in centimetres. */
function splitPairs(run: ValueRun): ValueRun[] {
  if (run.values.length < 4 || run.values.length % 2 === 1) return [run];
  const first = { unit: 'in' as const, values: run.values.filter((_, i) => i % 2 === 0) };
  const second = { unit: 'cm' as const, values: run.values.filter((_, i) => i % 2 === 1) };
  if (isInchesToCm(first, second)) return [first, second];
  return isInchesToCm(second, first)
    ? [
        { ...first, unit: 'cm' },
        { ...second, unit: 'in' },
      ]
    : [run];
}

/** The unit of a run without one, where another run is the same numbers in the other unit. */
function impliedBy(run: ValueRun, other: ValueRun): PrintedUnit | null {
  if (other.unit !== 'in' && isInchesToCm(run, other)) return 'in';
  return other.unit !== 'cm' && isInchesToCm(other, run) ? 'cm' : null;
}

/**
 * Names the unit of numbers that have none where the line itself gives it away: the same numbers
 * stand beside them about 2.54 times as large. Runs that stay unnamed keep null.
 */
export function implyUnits(runs: readonly ValueRun[]): ValueRun[] {
  const [only] = runs;
  if (runs.length === 1 && only?.unit === null) return splitPairs(only);
  return runs.map((run) => {
    if (run.unit !== null) return run;
    const units = runs.flatMap((other) => (other === run ? [] : [impliedBy(run, other)]));
    return { ...run, unit: units.find((unit) => unit !== null) ?? null };
  });
}
