import type { PaceQuestion } from '../types.ts';

/** A pullover in pieces, begun on Wednesday, 9 April 2031, by a hand that was timed once. */
export const PLAN: PaceQuestion = {
  parts: [
    { name: 'the front', stitches: 18_000, fabric: 'plain' },
    { name: 'the first sleeve', stitches: 11_000, fabric: 'worked' },
    { name: 'the second sleeve', stitches: 11_000, fabric: 'worked' },
  ],
  log: [{ minutes: 45, stitches: 1200, fabric: 'plain' }],
  hours: [1, 1, 1, 0, 1.5, 3, 2.5],
  from: '2031-04-09',
  away: ['2031-04-19', '2031-04-20'],
  finishing: { seamsMm: 2400, ends: 12, when: 'after-drying' },
  dryingHours: { p5: 20, p50: 32, p95: 60 },
  yarn: null,
  by: '2031-05-15',
};
