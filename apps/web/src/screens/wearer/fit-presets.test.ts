import { LANDMARKS } from '@dryflat/engine/garment';
import { expect, test } from 'vitest';
import { presetOf, presetsFor } from './fit-presets.ts';

test('P2: every landmark that the body sets has presets, each from less to more, in rising order', () => {
  for (const { id, body } of LANDMARKS) {
    const { presets, from } = presetsFor(id, null);
    expect(presets.length > 0).toBe(body !== null);
    expect(from !== '').toBe(body !== null);
    for (const { minMm, maxMm } of presets) expect(minMm).toBeLessThan(maxMm);
    const lows = presets.map(({ minMm }) => minMm);
    expect(lows).toEqual([...lows].sort((a, b) => a - b));
  }
});

test('P2: ease at the chest follows the guide: standard is 2 to 4 in (Craft Yarn Council, older edition)', () => {
  const { presets } = presetsFor('chest', 900);
  const standard = presets.find(({ id }) => id === 'standard');
  expect(standard).toMatchObject({ minMm: 50.8, maxMm: 101.6 });
  expect(presetOf(presets, { minMm: 50.8, maxMm: 101.6 })?.id).toBe('standard');
  expect(presetOf(presets, { minMm: 50.8, maxMm: 100 })).toBeNull();
});

test('P2: what hugs the head scales with the head', () => {
  const snug = (head: number) => presetsFor('brim', head).presets[0];
  expect(snug(500)?.minMm).toBeCloseTo(-60, 6);
  expect(snug(250)?.minMm).toBeCloseTo(-30, 6);
});
