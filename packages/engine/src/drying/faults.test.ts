import { expect, test } from 'vitest';
import { celsius, explain, grams } from '../units/index.ts';
import { dryingFaults } from './faults.ts';
import type { DryingQuestion } from './types.ts';

const SOUND: DryingQuestion = {
  fibres: [{ fibre: 'wool', share: 1 }],
  dry: { mass: grams(500), air: 'here' },
  wet: grams(900),
  air: { temperature: celsius(20), humidityPercent: 50, movement: 'still' },
  lying: { on: 'mat', fabricM2: 1.2, layers: 2, thick: null, pinned: false },
  weighings: [{ hours: 3, mass: grams(800) }],
};
const airOf = (change: Partial<DryingQuestion['air']>) => ({ air: { ...SOUND.air, ...change } });
const lyingOf = (change: Partial<DryingQuestion['lying']>) => ({
  lying: { ...SOUND.lying, ...change },
});

test('D20: a sound question has no faults', () => {
  expect(dryingFaults(SOUND)).toEqual([]);
  expect(dryingFaults({ ...SOUND, wet: 'spun', weighings: [] })).toEqual([]);
});

const cases: readonly (readonly [string, string, Partial<DryingQuestion>])[] = [
  ['dry-humidity', 'air.humidityPercent', airOf({ humidityPercent: 0 })],
  ['dry-humidity', 'air.humidityPercent', airOf({ humidityPercent: 101 })],
  ['dry-humidity', 'air.humidityPercent', airOf({ humidityPercent: Number.NaN })],
  ['dry-never', 'air.humidityPercent', airOf({ humidityPercent: 100 })],
  ['dry-temperature', 'air.temperature', airOf({ temperature: celsius(-0.5) })],
  ['dry-temperature', 'air.temperature', airOf({ temperature: celsius(46) })],
  ['dry-altitude', 'air.altitudeM', airOf({ altitudeM: 9000 })],
  ['dry-mass', 'dry.mass', { dry: { mass: grams(0), air: 'here' } }],
  ['dry-dry-air', 'dry.air', { dry: { mass: grams(500), air: 0 } }],
  ['dry-below-dry', 'wet', { wet: grams(480) }],
  ['dry-too-wet', 'wet', { wet: grams(9000) }],
  ['dry-below-dry', 'wet', { wet: grams(Number.NaN), weighings: [] }],
  ['dry-gained', 'weighings[0].mass', { weighings: [{ hours: 1, mass: grams(950) }] }],
  ['dry-lost', 'weighings[0].mass', { weighings: [{ hours: 1, mass: grams(300) }] }],
  ['dry-hours', 'weighings[0].hours', { weighings: [{ hours: -1, mass: grams(700) }] }],
  ['dry-area', 'lying.fabricM2', lyingOf({ fabricM2: 0 })],
  ['dry-area', 'lying.fabricM2', lyingOf({ fabricM2: 12_000 })],
  ['dry-thick', 'lying.thick[0]', lyingOf({ thick: [{ name: 'hem', share: 0.2, times: 0.5 }] })],
  [
    'dry-thick-shares',
    'lying.thick',
    lyingOf({
      thick: [
        { name: 'hem', share: 0.5, times: 2 },
        { name: 'yoke', share: 0.5, times: 2 },
      ],
    }),
  ],
  ['dry-scale', 'scaleSd', { scaleSd: 0 }],
  ['fibre-shares', 'fibres', { fibres: [{ fibre: 'wool', share: 0.5 }] }],
];

test.each(cases)('D20: %s names %s, what was given and the mend', (code, field, change) => {
  const faults = dryingFaults({ ...SOUND, ...change });
  expect(faults.map((each) => [each.code, each.field])).toEqual([[code, field]]);
  expect(faults[0]!.given).not.toBe('');
  expect(explain(faults[0]!)).toMatch(/\. \S.*\.$/);
});

test('D20: several are told at once', () => {
  const faults = dryingFaults({
    ...SOUND,
    ...airOf({ humidityPercent: 0, temperature: celsius(-9) }),
    scaleSd: -1,
  });
  expect(faults).toHaveLength(3);
});
