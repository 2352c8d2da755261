import type { DryingForecast } from '@dryflat/engine/drying';
import { expect, test } from 'vitest';
import { dryByTouch, feelsDrySince, handDisagrees, lastTouch, type Touch } from './touched.ts';

const touch = (hour: number, feels: Touch['feels'], where = 'hem'): Touch => ({
  id: `${hour}`,
  at: new Date(Date.UTC(2031, 2, 5, hour)).toISOString(),
  where,
  feels,
});
const worth = (hoursLeft: DryingForecast['touch']['hoursLeft']) => ({
  touch: { where: 'hem', feelsDryAt: 0.35, hoursLeft, text: '' },
  now: null,
});

test('DR7: the newest touch of a place counts, in any order of writing, whatever others say', () => {
  const touches = [touch(12, 'cool'), touch(9, 'wet'), touch(13, 'dry', 'cuff')];
  expect(lastTouch({ touches }, 'hem')?.feels).toBe('cool');
  expect(lastTouch({ touches }, 'collar')).toBeNull();
});

test('DR7: a dry feel counts from the first since it last felt damp', () => {
  const touches = [touch(8, 'dry'), touch(9, 'cool'), touch(11, 'dry'), touch(12, 'dry')];
  expect(feelsDrySince({ touches }, 'hem')).toBe(Date.UTC(2031, 2, 5, 11));
  expect(feelsDrySince({ touches: [...touches, touch(13, 'wet')] }, 'hem')).toBeNull();
  expect(feelsDrySince({ touches: [] }, 'hem')).toBeNull();
});

test('DR7: dry by touch is so many hours after that, and nothing where the worth is not known', () => {
  const dry = { touches: [touch(11, 'dry')] };
  expect(dryByTouch(dry, worth({ p5: 1, p50: 2, p95: 5 }))).toEqual({
    p5: Date.UTC(2031, 2, 5, 12),
    p50: Date.UTC(2031, 2, 5, 13),
    p95: Date.UTC(2031, 2, 5, 16),
  });
  expect(dryByTouch(dry, worth(null))).toBeNull();
  expect(dryByTouch({ touches: [] }, worth({ p5: 1, p50: 2, p95: 5 }))).toBeNull();
});

test('DR7: a damp hem speaks against a scale that calls it dry', () => {
  const scale = (state: 'dry' | 'unsure') => ({
    ...worth(null),
    now: { hours: 9, chance: 0.95, state, text: '' },
  });
  expect(handDisagrees({ touches: [touch(9, 'cool')] }, scale('dry'))).toBe(true);
  expect(handDisagrees({ touches: [touch(9, 'dry')] }, scale('dry'))).toBe(false);
  expect(handDisagrees({ touches: [touch(9, 'cool')] }, scale('unsure'))).toBe(false);
});
