import { forecast } from '@dryflat/engine/garment';
import { explain } from '@dryflat/engine/units';
import { describe, expect, it } from 'vitest';
import { askForecast } from '../ask/ask-forecast.ts';
import { sample } from '../malformed/sample.ts';
import type { GarmentRecord, Specimen } from '../schema/index.ts';
import { countsKnit } from './counts-knit.ts';

const half = (more: Partial<Specimen> = {}, place?: string): Specimen => ({
  id: 'half',
  name: 'Half a back',
  kind: 'part',
  stitch: 'stockinette',
  workedAsGarment: true,
  washed: 'not',
  readings: [
    {
      kind: 'extent',
      id: 'w',
      direction: 'width',
      mm: 530,
      count: 100,
      state: 'asKnit',
      read: 'flat',
      ...(place !== undefined && { place }),
    },
  ],
  ...more,
});

/** A pattern that gives its chest as 96 cm and neither counts nor gauge, and what was measured. */
const record = (evidence: readonly Specimen[], change?: (record: GarmentRecord) => void) => {
  const made: GarmentRecord = {
    ...sample(),
    pieces: [],
    outcomes: [],
    evidence: [...evidence],
  };
  const { gauge: _, ...pattern } = made.pattern;
  made.pattern = { ...pattern, sizes: ['M'], chosen: 'M' };
  made.pattern.measurements = [
    {
      id: 'chest',
      name: 'Chest',
      landmark: 'chest',
      span: 'around',
      worked: 'counted',
      values: [960],
    },
    {
      id: 'hem',
      name: 'Hem',
      landmark: 'hem',
      span: 'flat',
      worked: 'counted',
      values: [460],
    },
    {
      id: 'arm',
      name: 'Upper arm',
      landmark: 'upper-arm',
      span: 'around',
      worked: 'counted',
      values: [340],
    },
  ];
  made.plan.pinTo = [];
  change?.(made);
  return made;
};

const at = (of: GarmentRecord) =>
  countsKnit(of).map(({ measurement, stitches }) => [measurement, stitches]);

describe('stitches of what is knit', () => {
  it('R101: the chest is foretold as half a back has it, and not as the pattern would', () => {
    const asked = askForecast(record([half()]));
    if (!asked.ok) throw new Error(asked.faults.map(explain).join('\n'));
    const { measurements, notices } = forecast(asked.value, { draws: 400 });
    const chest = measurements.find(({ id }) => id === 'chest')!.states.asKnit;
    // 100 stitches measuring 53 cm, twice; a specimen may lie 1.2 % (SD) off the garment.
    expect(Math.abs(chest.p50Mm - 1060)).toBeLessThan(8);
    expect(notices.map(({ code }) => code)).toContain('counted-on-piece');
  });

  it('R101: a width is of the place that it names, else of that with as many stitches, else of the widest', () => {
    expect(at(record([half()]))).toEqual([['chest', 200]]);
    expect(at(record([half({}, 'Hem')]))).toEqual([['hem', 200]]);
    const printed = (counts: number) =>
      record([half()], ({ pattern }) => {
        pattern.measurements[1]!.counts = [counts];
      });
    expect(at(printed(98))).toEqual([['hem', 200]]);
    expect(at(printed(120))).toEqual([['chest', 200]]);
    expect(at(printed(100))).toEqual([]);
    for (const place of ['middle', 'Across the back', 'in the middle', 'back'])
      expect(at(record([half({}, place)]))).toEqual(at(record([half()])));
    expect(at(record([half({}, 'above the rib')]))).toEqual([]);
  });

  it('R101: a sleeve is knit all around the arm; a swatch is of no place', () => {
    expect(at(record([half({ name: 'Sleeve' })]))).toEqual([['arm', 100]]);
    expect(at(record([half({ kind: 'swatch' })]))).toEqual([]);
    expect(at(record([half({ kind: 'past-garment' })]))).toEqual([]);
  });
});
