import { expect, test } from 'vitest';
import { readChoices, USUAL_CHOICES } from './mat-choices.ts';

test('M14: piece and pull are read back as they were chosen', () => {
  const chosen = { piece: 'sleeve', gentle: false };
  expect(readChoices(JSON.stringify(chosen))).toEqual(chosen);
});

test('M14: what was kept badly counts for nothing', () => {
  for (const text of [null, '', '{', 'null', '{"piece":3,"gentle":"no"}'])
    expect(readChoices(text)).toEqual(USUAL_CHOICES);
});
