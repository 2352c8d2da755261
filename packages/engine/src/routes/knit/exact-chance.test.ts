import { expect, test } from 'vitest';
import { type Draws, type FitWanted, learn } from '../../garment/index.ts';
import { mm } from '../../units/index.ts';
import { QUESTION } from '../check/questions.ts';
import { utilityOf } from '../price/utility.ts';
import { judge } from './judge.ts';
import { clothOf, luckOf, type Make } from './luck.ts';
import { ownTargets } from './targets.ts';

/** Two equally likely values for each doubt, and every combination of them once: 32 garments. */
const KNIT = [Math.log(1010), Math.log(1070)] as const;
const LONG = [Math.log(585), Math.log(640)] as const;
const GROWTH = [-0.02, 0.03] as const;
const KEPT = [0.3, 0.8] as const;
const BODY = [-1.2, 0.9] as const;
const ROWS = [KNIT, LONG, GROWTH, KEPT, BODY] as const;
const N = 2 ** ROWS.length;

const column = (at: number): Float64Array =>
  Float64Array.from({ length: N }, (_, i) => ROWS[at]![(i >> at) & 1]!);
const same = (value: number): Float64Array => new Float64Array(N).fill(value);

const wanted: FitWanted[] = [
  {
    landmark: 'chest',
    body: mm(980),
    bodyFrom: 'measured',
    kind: 'ease',
    min: mm(40),
    max: mm(90),
  },
  {
    landmark: 'body-length',
    body: null,
    bodyFrom: null,
    kind: 'finished',
    min: mm(580),
    max: mm(632),
  },
];
const question = {
  ...QUESTION.forecast,
  judgeAt: 'dried' as const,
  wanted,
  specimens: [],
  measured: [],
  measurements: QUESTION.forecast.measurements.filter(
    ({ id }) => id === 'chest' || id === 'body-length',
  ),
};

const WET = 0.015;
const draws: Draws = {
  n: N,
  asKnit: [column(0), column(1)],
  afresh: [column(0), column(1)],
  driedOverAsKnit: { width: column(2), length: column(2) },
  wetOverDried: { width: same(WET), length: same(WET) },
  rewashedOverDried: { width: same(0), length: same(0) },
  own: [{}, {}],
  kept: column(3),
  give: same(0),
  further: [],
  body: () => column(4),
};

const known = learn(question);
const luck = luckOf(question, clothOf(known, draws, { n: N, normal: () => same(0) }));
const LIMIT = 0.04;
const makes = (pins: readonly [number | null, number | null], factor = 1): Make[] =>
  pins.map((pinnedTo) => ({ from: 'there', factor, pinnedTo, limit: LIMIT, hang: 0 }));

/** The same by hand: every combination, its finished lengths, and whether both are in range. */
const byHand = (pins: readonly [number | null, number | null], factor: number): boolean[] => {
  const out: boolean[] = [];
  for (const b of BODY)
    for (const k of KEPT)
      for (const g of GROWTH)
        for (const l of LONG)
          for (const c of KNIT) {
            const dried = (log: number, pin: number | null): number => {
              const rest = factor * Math.exp(log + g);
              if (pin === null) return rest;
              const stretch = Math.min(LIMIT, Math.max(0, pin / (rest * Math.exp(WET)) - 1));
              return rest * (1 + k * stretch);
            };
            const chest = dried(c, pins[0]) - 9 * b;
            const length = dried(l, pins[1]);
            out.push(chest >= 1020 && chest <= 1070 && length >= 580 && length <= 632);
          }
  return out;
};

test.each([
  { name: 'dried flat', pins: [null, null], factor: 1 },
  { name: 'pinned', pins: [1080, 630], factor: 1 },
  { name: 'pinned across alone, a little larger', pins: [1080, null], factor: 1.01 },
  { name: 'smaller', pins: [null, null], factor: 0.97 },
] as const)('O1: the chance is that of every combination counted: $name', ({ pins, factor }) => {
  const made = makes(pins, factor);
  const judged = judge(luck, made, ownTargets(question, luck), 'dried');
  const fits = byHand(pins, factor);
  expect(judged.chanceAll).toBe(fits.filter(Boolean).length / N);
  expect([...judged.fits!]).toEqual(fits.map(Number));
});

test('O1: the cases are neither sure nor hopeless', () => {
  const chances = [byHand([null, null], 1), byHand([1080, 630], 1), byHand([1080, null], 1.01)].map(
    (fits) => fits.filter(Boolean).length / N,
  );
  for (const chance of chances) expect(chance > 0 && chance < 1).toBe(true);
  expect(new Set(chances).size).toBeGreaterThan(1);
});

test('O2: worth is the mean over the draws of what each is worth by itself', () => {
  const fits = Uint8Array.from([1, 0, 1, 1]);
  const cost = {
    work: Float64Array.from([0, 20, 60, 20]),
    inTime: Uint8Array.from([1, 1, 0, 0]),
    enough: Uint8Array.from([1, 0, 1, 0]),
    neededM: Float64Array.from([600, 1200, 600, 0]),
    returnedM: Float64Array.from([0, 600, 600, 0]),
  };
  const weights = { fit: 1, time: 0.5, yarn: 0.5 };
  const { worth, score, draws: each } = utilityOf({ weights }, { makes: [] }, { fits }, cost);
  // Hours halve at 20, metres at 600: (1 + 1)/2, (1 + ½)/2, (0 + ¼)/2, (0 + ½)/2; (1 + ½)/2, (0 + ½)/2, (1 + 1)/2, (0 + 1)/2.
  expect(worth.fit).toBe(0.75);
  expect(worth.time).toBe((1 + 0.75 + 0.125 + 0.25) / 4);
  expect(worth.yarn).toBe((0.75 + 0.25 + 1 + 0.5) / 4);
  expect(score).toBe((worth.fit + 0.5 * worth.time + 0.5 * worth.yarn) / 2);
  expect(each.reduce((a, b) => a + b, 0) / 4).toBeCloseTo(score, 12); // sums in another order
  const other = utilityOf({ weights }, { makes: [], recipient: 'p' }, { fits }, cost);
  expect(other.worth.fit).toBe(0.375);
  expect(other.worth.time).toBe(worth.time);
});
