import { expect, test } from 'vitest';
import type { Route } from '../types.ts';
import { whyFirst } from './sentence.ts';

const same = (p50: number) => ({ p5: p50, p50, p95: p50 });

const route = (
  name: string,
  fit: number,
  work: number,
  more: { by?: number; planned?: boolean } = {},
): Route =>
  ({
    name,
    planned: more.planned ?? false,
    chanceAllFit: fit,
    chanceByDate: more.by ?? null,
    hours: { total: same(work) },
    yarnM: { needed: same(10 * work) },
    worth: { fit, time: 20 / (20 + work), yarn: 600 / (600 + 10 * work) },
  }) as Route;

const weights = { fit: 1, time: 0.5, yarn: 0.5 };

test('O11: what leads and what it costs are told, with the weights', () => {
  const both = [route('Rip', 0.34, 25, { by: 0.62 }), route('Go on', 0.14, 17, { by: 0.99 })];
  expect(whyFirst(both, weights)).toBe(
    '“Rip” comes first, with fit weighed 1, time 0.5 and yarn 0.5. Against “Go on”, all of it fits with 34 % (there 14 %); what it costs: it takes 25 hours, the date met with 62 % (there 17 hours, the date met with 99 %).',
  );
});

test('O23: numbers that print the same are not set against each other', () => {
  const both = [route('One', 0.223, 15), route('Other', 0.221, 15.02)];
  expect(whyFirst(both, weights)).toContain('“Other” is hardly behind it.');
});

test('O11: no work is said in words, and the plan is told where it is neither', () => {
  const all = [
    route('Leave it', 0.96, 0),
    route('Wet it', 0.96, 1.5),
    route('Planned', 0.4, 3, { planned: true }),
  ];
  const said = whyFirst(all, weights);
  expect(said).toContain('it takes no work (there 1.5 hours)');
  expect(said).toMatch(/As planned, all of it fits with 40 %\.$/);
});
