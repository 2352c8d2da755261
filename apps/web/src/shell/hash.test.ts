import { expect, test } from 'vitest';
import { exampleHash, garmentHash, parseHash } from './hash.ts';

test('S1: an address of a garment leads to its place, whatever its id', () => {
  expect(parseHash(garmentHash('a/b c', 'yarn'))).toEqual({
    at: 'garment',
    id: 'a/b c',
    place: 'yarn',
  });
  expect(parseHash('#/garment/x')).toEqual({ at: 'garment', id: 'x', place: 'forecast' });
});

test.each(['', '#', '#/', '#/nowhere', '#/garment/', '#/garment/%E0%A4%A'])(
  'S2: %j leads to the shelf',
  (hash) => expect(parseHash(hash)).toEqual({ at: 'shelf' }),
);

test('S1: an address of an example leads to it', () => {
  expect(parseHash(exampleHash('waistcoat'))).toEqual({ at: 'example', slug: 'waistcoat' });
  expect(parseHash('#/example/')).toEqual({ at: 'shelf' });
});
