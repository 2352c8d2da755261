import { GARMENT_KINDS, LANDMARKS } from '@dryflat/engine/garment';
import { expect, test } from 'vitest';
import { bodyPlacesFor, findBodyPlace } from './body-places.ts';

test('P9: every body measurement that a landmark is compared with has a name and a way to measure it', () => {
  const ids = LANDMARKS.flatMap(({ body }) => body ?? []);
  expect(ids.filter((id) => findBodyPlace(id) === null)).toEqual([]);
});

test('P9: a kind asks for no more than five places first, and for none twice', () => {
  for (const kind of GARMENT_KINDS) {
    const { first, later } = bodyPlacesFor(kind);
    expect(first.length).toBeLessThanOrEqual(5);
    expect(new Set([...first, ...later]).size).toBe(first.length + later.length);
  }
});

test('P9: a blanket asks for no body, a sock for the foot', () => {
  expect(bodyPlacesFor('blanket')).toEqual({ first: [], later: [] });
  expect(bodyPlacesFor('sock').first).toEqual(['foot', 'foot-length']);
});
