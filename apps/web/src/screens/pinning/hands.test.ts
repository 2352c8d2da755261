import { expect, test } from 'vitest';
import { readHands, USUAL_HANDS } from './hands.ts';

test('PN7: nothing speaks or listens until it is switched on, and what was kept badly counts for nothing', () => {
  expect([USUAL_HANDS.aloud, USUAL_HANDS.listening]).toEqual([false, false]);
  for (const text of [null, '', '{', 'null', '7', '{"aloud":1,"voice":2,"keys":"no"}'])
    expect(readHands(text)).toEqual(USUAL_HANDS);
});

test('PN7: what was chosen is read back', () => {
  const chosen = { aloud: true, voice: 'urn:ada', listening: true, keys: false };
  expect(readHands(JSON.stringify(chosen))).toEqual(chosen);
});
