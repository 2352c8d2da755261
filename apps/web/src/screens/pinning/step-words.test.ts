import type { MatStep } from '@dryflat/record';
import { expect, test } from 'vitest';
import { lieWords, stepSaid, type Tongue } from './step-words.ts';

const EDGES = {
  'cast-on': 'cast-on edge',
  'bound-off': 'cast-off edge',
  selvedge: 'selvedge',
  seam: 'seam',
  'picked-up': 'picked-up edge',
  rib: 'ribbing',
  fold: 'fold',
  open: 'open edge',
} as const;
const UK: Tongue = { units: 'cm', words: 'uk', edges: EDGES };
const US: Tongue = { units: 'in', words: 'us', edges: { ...EDGES, 'bound-off': 'bound-off edge' } };

const PIN: MatStep = {
  xMm: 100,
  yMm: 100,
  kind: 't-pin',
  edge: 'bound-off',
  from: [
    { name: 'pin 3', mm: 1076.325 },
    { name: 'top left corner of the mat', mm: 345 },
  ],
  pullN: 1,
};

test('PN3: a step is one sentence, numbers and units in words of the tongue that is chosen', () => {
  expect(stepSaid(PIN, 6, 26, US)).toBe(
    'Step seven of twenty-six: T-pin on the bound-off edge, forty-two and three eighths inches from pin three, and thirteen and five eighths inches from the top left corner of the mat.',
  );
  expect(stepSaid(PIN, 6, 26, UK)).toBe(
    'Step seven of twenty-six: T-pin on the cast-off edge, one hundred and seven point six centimetres from pin three, and thirty-four point five centimetres from the top left corner of the mat.',
  );
});

test('PN3: a wire is told with its length, how it lies and what holds it; a step that is done says so', () => {
  const wire: MatStep = {
    ...PIN,
    kind: 'wire',
    edge: 'selvedge',
    along: { lengthMm: 900, dx: 0.1, dy: 0.99 },
    done: 'in',
  };
  expect(stepSaid(wire, 0, 2, UK, 2)).toBe(
    'Step one of two: wire of ninety centimetres, lying up and down, its middle on the selvedge, one hundred and seven point six centimetres from pin three, and thirty-four point five centimetres from the top left corner of the mat. It is held by two straight pins. It is in.',
  );
  expect(stepSaid({ ...PIN, done: 'passed' }, 0, 1, UK)).toMatch(/It is left out\.$/);
});

test.each([
  [1, 0, 'lying across'],
  [-1, 0, 'lying across'],
  [0, 1, 'lying up and down'],
  [0, -1, 'lying up and down'],
  [0.7, 0.7, 'falling to the right'],
  [-0.7, -0.7, 'falling to the right'],
  [0.7, -0.7, 'rising to the right'],
  [-0.7, 0.7, 'rising to the right'],
])('PN3: along %d, %d is %s, from whichever end', (dx, dy, words) =>
  expect(lieWords({ lengthMm: 100, dx, dy })).toBe(words),
);
