import { expect, test } from 'vitest';
import { readPaperChoices } from './paper-choices.ts';

test('PP1: until it is chosen, paper goes with the unit of length', () => {
  expect(readPaperChoices(null, 'cm').paper).toBe('a4');
  expect(readPaperChoices(null, 'in').paper).toBe('letter');
  expect(readPaperChoices('{"what":"blank"}', 'in')).toEqual({
    what: 'blank',
    paper: 'letter',
    piece: null,
  });
});

test('PP1: what was chosen is read back; what cannot be read is as usual', () => {
  const chosen = { what: 'full-size', paper: 'letter', piece: 'sleeve' } as const;
  expect(readPaperChoices(JSON.stringify(chosen), 'cm')).toEqual(chosen);
  const usual = { what: 'mat', paper: 'a4', piece: null };
  for (const text of ['', '{', 'null', '[]', '{"what":"cake","paper":7,"piece":{}}'])
    expect(readPaperChoices(text, 'cm')).toEqual(usual);
});
