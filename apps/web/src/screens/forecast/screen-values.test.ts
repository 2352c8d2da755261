import { forecast } from '@dryflat/engine/garment';
import { forecastSizes, wantedSizes } from '@dryflat/paper/schematic';
import { askForecast, EXAMPLES } from '@dryflat/record';
import { describe, expect, it } from 'vitest';
import { once } from '../../../../../scripts/lib/once.mjs';
import { finishedWanted, wantedOf } from './wanted-range.ts';

const record = EXAMPLES.find((each) => each.slug === 'waistcoat')!.record;
const asked = askForecast(record);
if (!asked.ok) throw new Error('the example cannot be forecast');
const result = once(() => forecast(asked.value, { draws: 500 }));
const measured = (landmark: string) =>
  result().measurements.find((each) => each.landmark === landmark)!;
const chest = () => measured('chest');
const length = () => measured('body-length');

describe('sizes for the drawing', () => {
  it('halves girths and leaves lengths', () => {
    expect(chest().span).toBe('around');
    expect(wantedSizes(result()).chest).toBeCloseTo(chest().targetMm! / 2, 9);
    expect(wantedSizes(result())['body-length']).toBe(length().targetMm);
  });

  it('takes one state at a time', () => {
    for (const state of ['asKnit', 'dried', 'rewashed'] as const) {
      const sizes = forecastSizes(result(), state);
      expect(sizes.p50.chest).toBeCloseTo(chest().states[state].p50Mm / 2, 9);
      expect(sizes.p95['body-length']).toBe(length().states[state].p95Mm);
    }
  });
});

describe('what is wanted', () => {
  it('adds ease to the body, and takes finished lengths as they are', () => {
    const eased = result().fit.find((each) => each.landmark === 'chest')!;
    expect(finishedWanted(eased)).toEqual({
      min: eased.bodyMm! + eased.wantedMm.min,
      max: eased.bodyMm! + eased.wantedMm.max,
    });
    const finished = result().fit.find((each) => each.landmark === 'body-length')!;
    expect(finishedWanted(finished)).toEqual({
      min: finished.wantedMm.min,
      max: finished.wantedMm.max,
    });
  });

  it('is nothing where there is no body or no wish', () => {
    const eased = result().fit.find((each) => each.landmark === 'chest')!;
    expect(finishedWanted({ ...eased, bodyMm: null })).toBeNull();
    expect(wantedOf(result(), 'rib')).toBeNull();
  });
});
