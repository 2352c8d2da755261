import fc from 'fast-check';
import { expect, it } from 'vitest';
import { rangeOf } from './byte-range.ts';

const SIZE = 10;

it.each([
  ['bytes=0-0', { from: 0, to: 0 }],
  ['bytes=-5', { from: 5, to: 9 }],
  ['bytes=-99', { from: 0, to: 9 }],
  ['bytes=3-', { from: 3, to: 9 }],
  ['bytes=9-99', { from: 9, to: 9 }],
  ['bytes=0-9007199254740993', { from: 0, to: 9 }],
  [`bytes=0-${'9'.repeat(400)}`, { from: 0, to: 9 }],
  ['Bytes=1-2', { from: 1, to: 2 }],
])('S9: %s of ten bytes', (header, range) => expect(rangeOf(header, SIZE)).toEqual(range));

it.each(['bytes=10-', 'bytes=10-20', 'bytes=-0', 'bytes=9007199254740993-'])(
  'S9: %s begins past the end of ten bytes',
  (header) => expect(rangeOf(header, SIZE)).toBe('none'),
);

it.each([
  undefined,
  '',
  'bytes=5-1',
  'bytes=10-9,0-1',
  'bytes=0-1,3-4',
  'bytes=',
  'bytes=-',
  'bytes=5',
  'bytes=1x-2y',
  'bytes=0x1-2',
  'bytes= 0-1',
  'bytes=--1',
  'lines=0-1',
])('S9: %s is no single range of bytes, so the whole is sent', (header) =>
  expect(rangeOf(header, SIZE)).toBe('whole'),
);

it('S9: nothing can be had of an empty file', () => {
  expect(rangeOf('bytes=0-', 0)).toBe('none');
  expect(rangeOf('bytes=-5', 0)).toBe('none');
});

it('S9: whatever is asked, a range lies within the file', () => {
  const bound = fc.oneof(fc.constant(''), fc.nat(), fc.bigInt({ min: 0n }));
  fc.assert(
    fc.property(bound, bound, fc.nat(1000), (first, last, size) => {
      const range = rangeOf(`bytes=${first}-${last}`, size);
      if (typeof range === 'string') return;
      expect(range.from).toBeGreaterThanOrEqual(0);
      expect(range.to).toBeGreaterThanOrEqual(range.from);
      expect(range.to).toBeLessThan(size);
    }),
  );
});
