import type { MatStep, MatWork, PinCounts } from '@dryflat/record';
import { expect, test } from 'vitest';
import { stageWords } from './stage-words.ts';

const step = (done?: MatStep['done']): MatStep => ({
  xMm: 0,
  yMm: 0,
  kind: 't-pin',
  edge: 'selvedge',
  from: [
    { name: 'a', mm: 1 },
    { name: 'b', mm: 1 },
  ],
  pullN: 0,
  ...(done && { done }),
});
const NOW = '2031-02-20T10:00:00Z';
const out = (tPins: number): PinCounts => ({ straight: 0, tPins, combs: 0, wires: 0 });

test.each<[string, Partial<MatWork>]>([
  ['step 2 of 2', { at: 1 }],
  ['some pins left out', { at: 2 }],
  ['pinned', { at: 2, pinned: NOW }],
  ['pins coming out', { at: 2, pinned: NOW, out: out(1) }],
  ['unpinned', { at: 2, pinned: NOW, out: out(2) }],
])('PN12: a piece is told as %s', (words, part) => {
  const work: MatWork = {
    id: 'w',
    piece: 'back',
    copy: '',
    mirrored: false,
    layers: 1,
    gentle: true,
    begun: NOW,
    steps: [step('in'), step('in')],
    at: 0,
    told: [],
    pinsForWires: 0,
    ...part,
  };
  expect(stageWords(work)).toBe(words);
});
