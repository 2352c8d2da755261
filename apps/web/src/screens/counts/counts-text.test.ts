import { readCounts } from '@dryflat/engine/counts';
import { outlineSizes } from '@dryflat/engine/garment';
import { fillLengths, formatLength, mm } from '@dryflat/engine/units';
import { expect, test } from 'vitest';
import { answerCounts } from '../../worker/counts/answer-counts.ts';
import { linesOf, pieceText, pieceTitle } from './counts-text.ts';

const pitch = { stitch: mm(4.5), row: mm(3.2), state: 'dried' } as const;
const print = (text: string) =>
  fillLengths(text, (value) => formatLength(mm(value), { unit: 'cm' }));
const ask = {
  turn: 1,
  mine: pitch,
  repeat: undefined,
  pattern: null,
  instructions: [],
} as const;
const answer = (kind: 'cardigan-set-in' | 'sock') => {
  const sizes = outlineSizes(
    kind === 'sock' ? [] : [{ landmark: 'chest', span: 'around', mm: 1000 }],
  );
  const told = answerCounts({ ...ask, kind, sizes });
  if (told.kind !== 'counts') throw new Error('no counts');
  return told.pieces;
};

test('CW3: the text of a piece is a title and a numbered line for each step, which reads back', () => {
  const back = answer('cardigan-set-in').find(({ outline }) => outline.name === 'back')!;
  const text = pieceText(back, 'uk', print);
  const [title, , ...lines] = text.trimEnd().split('\n');
  expect(title).toBe('Back');
  expect(lines[0]).toMatch(/^1\. Cast on \d+ stitches\.$/);
  expect(text).toMatch(/Cast off/);
  const bare = lines.map((line) => line.replace(/^\d+\. /, '')).join('\n');
  expect(readCounts(bare)).toEqual({ ok: true, value: back.parts[0]!.counts.steps });
});

test('CW3: two fronts are mirrored, two sleeves alike; a sock is leg, heel and foot', () => {
  expect(answer('cardigan-set-in').map(pieceTitle)).toEqual([
    'Back',
    'Front (two, the second mirrored)',
    'Sleeve (two alike)',
  ]);
  const [sock] = answer('sock');
  const text = pieceText(sock!, 'us', print);
  expect(pieceTitle(sock!)).toBe('Sock (two alike)');
  expect(text).toMatch(/Leg, from the cuff down[\s\S]*Heel, over \d+[\s\S]*Foot, from the heel/);
  // Only the leg is cast on.
  expect(text.match(/Cast on/g)).toHaveLength(1);
  expect(text).toMatch(/Foot, from the heel\n1\. Go on in the round over all \d+ stitches\.\n2\. /);
});

test('CW4: a text that is read is recounted line by line; one that is not has its faults, and nothing else', () => {
  const theirs = { stitch: mm(5), row: mm(3.6), state: 'dried' } as const;
  const told = answerCounts({
    ...ask,
    kind: 'vest',
    sizes: {},
    pattern: { theirs, mine: pitch },
    instructions: [
      { id: 'a', piece: 'back', text: 'Cast on 90. Work 40 rows. Bind off.' },
      { id: 'b', piece: 'front', text: 'Cast on 90. Twirl.' },
      { id: 'c', piece: 'sleeve', text: '  ' },
    ],
  });
  if (told.kind !== 'counts') throw new Error('no counts');
  const [read, unread, empty] = told.texts;
  expect(read!.recount?.lines).toHaveLength(3);
  // 90 stitches of 5 mm are 450 mm, 100 of 4.5 mm; 40 rows of 3.6 mm are 144 mm, 45 of 3.2 mm.
  expect(linesOf(read!.recount!.steps, 'us', print)).toEqual([
    'Cast on 100 stitches.',
    'Work 45 rows even.',
    'Bind off the remaining stitches.',
  ]);
  expect(read!.mine).not.toBeNull();
  expect(unread).toMatchObject({ steps: null, recount: null, mine: null });
  expect(unread!.faults[0]!.code).toBe('counts-unreadable');
  expect(empty).toMatchObject({ steps: null, faults: [] });
});
