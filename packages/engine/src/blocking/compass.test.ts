import { describe, expect, it } from 'vitest';
import { compassSearch, type Found } from './compass.ts';

const ASKED = { step: 0.2, settled: 0.05, most: 100, free: [0, 1] };

const scored =
  (score: (z: readonly number[]) => number) =>
  (z: readonly number[]): Found<null> => ({ z, score: score(z), found: null });

describe('B16: readings that no slope brings together', () => {
  it('a kink is found to the step that it ends with', () => {
    const at = scored(([x, y]) => Math.abs(x! - 0.7) + 2 * Math.abs(y! + 0.4));
    const end = compassSearch(at([0, 0]), at, ASKED)!;
    expect(end.residual).toBe(0.05);
    expect(Math.abs(end.z[0]! - 0.7)).toBeLessThanOrEqual(0.05);
    expect(Math.abs(end.z[1]! + 0.4)).toBeLessThanOrEqual(0.05);
  });

  it('too few steps are told by what is left', () => {
    const at = scored(([x]) => (x! - 9) ** 2);
    const end = compassSearch(at([0, 0]), at, { ...ASKED, most: 5 })!;
    expect(end).toMatchObject({ iterations: 5, residual: 0.2 });
    // Closed form: five steps of 0.2 the right way.
    expect(end.z[0]).toBeCloseTo(1, 12);
  });

  it('what is known stays, and a stop ends it', () => {
    const at = scored(([x, y]) => x! ** 2 + (y! - 1) ** 2);
    expect(compassSearch(at([0.5, 0]), at, { ...ASKED, free: [1] })!.z[0]).toBe(0.5);
    expect(compassSearch(at([1, 1]), () => null, ASKED)).toBeNull();
  });
});
