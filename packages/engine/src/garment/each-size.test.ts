import { expect, test } from 'vitest';
import { mm } from '../units/index.ts';
import { PULLOVER } from './check/questions.ts';
import { forecastEach, keyMeasurements } from './each-size.ts';
import { forecast } from './forecast.ts';

const OPTIONS = { draws: 2_000, seed: 1 };
const EVERY = PULLOVER.sizes.map((_, chosen) => ({ ...PULLOVER, chosen }));

test('F30: each size is what it is foretold to be alone, on the same luck', () => {
  const { sizes } = forecastEach(EVERY, OPTIONS);
  expect(sizes.map(({ chosenSize }) => chosenSize)).toEqual(PULLOVER.sizes);
  expect(sizes[3]).toEqual(forecast(PULLOVER, OPTIONS));
  // Graded by 60 mm from one to the next: the numbers follow.
  const chests = sizes.map(({ measurements }) => measurements[0]!.states.worn.p50Mm);
  for (const [k, chest] of chests.slice(1).entries()) expect(chest).toBeGreaterThan(chests[k]!);
});

test('F30: the best has the best chance; none is best where nothing is wanted or nothing is likely to fit', () => {
  const { sizes, best } = forecastEach(EVERY, OPTIONS);
  const chances = sizes.map(({ chanceAllFit }) => chanceAllFit!);
  expect(best).toBe(PULLOVER.sizes[chances.indexOf(Math.max(...chances))]);
  const without = EVERY.map((question) => ({ ...question, wanted: [] }));
  expect(forecastEach(without, OPTIONS).best).toBeNull();
  const [chest] = PULLOVER.wanted;
  const giant = EVERY.map((question) => ({
    ...question,
    wanted: [{ ...chest!, body: mm(2_000) }],
  }));
  expect(forecastEach(giant, OPTIONS).best).toBeNull();
});

test('F30: what is said is what holds for every size', () => {
  const pinned = EVERY.map((question) => ({ ...question, drying: 'pin' as const }));
  const { sizes, notices } = forecastEach(pinned, OPTIONS);
  expect(notices.map(({ code }) => code)).toContain('caution-pins');
  for (const { text } of notices)
    for (const each of sizes) expect(each.notices.map((notice) => notice.text)).toContain(text);
});

test('F30: the numbers looked at first are a width and a length, those that are wanted before others', () => {
  const names = (landmark: string) =>
    keyMeasurements(
      forecast(
        {
          ...PULLOVER,
          wanted: PULLOVER.wanted.map((each) => ({
            ...each,
            landmark,
            body: null,
            kind: 'finished' as const,
          })),
        },
        OPTIONS,
      ),
    ).map(({ landmark: at }) => at);
  expect(names('sleeve-length')).toEqual(['chest', 'sleeve-length']);
  expect(names('waist')).toEqual(['waist', 'body-length']);
});
