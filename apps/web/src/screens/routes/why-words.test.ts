import type { Route } from '@dryflat/engine/routes';
import { expect, test } from 'vitest';
import { whyWords } from './why-words.ts';

const named = (...names: string[]) => names.map((name) => ({ name }) as Route);

test('RT2: why the first is first is said by places', () => {
  const sentence = '“Rip it” comes first. “Knit on” is near. Against “Knit on”, 9 % fit.';
  expect(whyWords({ sentence, routes: named('Rip it', 'Knit on', 'Leave it') })).toBe(
    'This comes first. Number 2 is near. Against number 2, 9\u00a0% fit.',
  );
  expect(whyWords({ sentence: 'No route was worked out.', routes: [] })).toBe(
    'No route was worked out.',
  );
});
