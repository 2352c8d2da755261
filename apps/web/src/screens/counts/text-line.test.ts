import { readCounts } from '@dryflat/engine/counts';
import { expect, test } from 'vitest';
import { lineOfFault, rangeOfLine } from './text-line.ts';

test('CW1: the line that a fault of the reader names is the one that is selected', () => {
  const text = 'Cast on 100.\nWork 6 cm in rib.\nDance a jig.\nBind off.';
  const read = readCounts(text, { field: '' });
  if (read.ok) throw new Error('a jig was read');
  const line = lineOfFault(read.faults[0]!);
  expect(line).toBe(3);
  const [from, to] = rangeOfLine(text, line!);
  expect(text.slice(from, to)).toBe('Dance a jig.');
});

test('CW1: a fault without a line selects nothing', () => {
  expect(lineOfFault({ field: 'myPitch.stitch' })).toBeNull();
});
