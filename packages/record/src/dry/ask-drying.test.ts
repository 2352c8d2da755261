import { forecastDrying } from '@dryflat/engine/drying';
import { explain } from '@dryflat/engine/units';
import { describe, expect, it } from 'vitest';
import { sample } from '../malformed/sample.ts';
import type { Drying, GarmentRecord } from '../schema/index.ts';
import { drawnFabricM2 } from './fabric-area.ts';
import { askDrying } from './index.ts';

const asked = (change: (record: GarmentRecord, drying: Drying) => void = () => {}) => {
  const record = sample();
  change(record, record.dryings?.[0] as Drying);
  return askDrying(record, 'd');
};
const questionOf = (change?: Parameters<typeof asked>[0]) => {
  const result = asked(change);
  if (!result.ok) throw new Error(result.faults.map(explain).join('\n'));
  return result.value;
};
const saysOf = (change?: Parameters<typeof asked>[0]) => {
  const result = asked(change);
  return result.ok ? [] : result.faults.map(explain);
};

describe('askDrying', () => {
  it('R83: asks all that the drying says, hours from its beginning', () => {
    expect(questionOf()).toEqual({
      fibres: [
        { fibre: 'wool', share: 0.8 },
        { fibre: 'nylon', share: 0.2 },
      ],
      dry: { mass: 400, air: 'here' },
      wet: 700,
      air: { temperature: 20, humidityPercent: 55, movement: 'still', altitudeM: 300 },
      lying: {
        on: 'mat',
        fabricM2: 1.1,
        layers: 1,
        thick: [
          { name: 'ribbing', share: 0.2, times: 1.5 },
          { name: 'seams', share: 0.1, times: 2 },
        ],
        pinned: true,
      },
      weighings: [{ hours: 8, mass: 560 }],
    });
  });

  it('R83: the engine takes what is asked', () => {
    const forecast = forecastDrying(questionOf(), { draws: 200 });
    expect(forecast.ok ? [] : forecast.faults).toEqual([]);
  });

  it('R83: weighings are asked in order of time, in whatever order they were entered', () => {
    const { weighings } = questionOf((_, drying) => {
      drying.weighings.push({ id: 'early', at: '2031-01-05T12:00:00Z', massG: 660 });
    });
    expect(weighings.map(({ hours }) => hours)).toEqual([1.5, 8]);
  });

  it('R83: no scale, no thick places and no height above the sea stay unsaid', () => {
    const { wet, lying, air } = questionOf((_, drying) => {
      drying.wet = 'towel';
      delete drying.thick;
      delete drying.air.altitudeM;
    });
    expect([wet, lying.thick, Object.hasOwn(air, 'altitudeM')]).toEqual(['towel', null, false]);
  });

  it('R84: dry mass is what was weighed, else the garment, else the balls less what is left', () => {
    const without = (record: GarmentRecord, drying: Drying) => {
      delete drying.dry;
      delete record.massG;
    };
    expect(
      questionOf((record, drying) => {
        delete drying.dry;
        record.massG = 390;
      }).dry,
    ).toEqual({ mass: 390, air: 'here' });
    // Eight skeins of 50 g, of which 120 g are left.
    expect(questionOf(without).dry).toEqual({ mass: 280, air: 'label' });
    const unknown = (record: GarmentRecord, drying: Drying) => {
      without(record, drying);
      for (const lot of record.yarns[0]?.lots ?? []) delete lot.gramsEach;
    };
    expect(saysOf(unknown)).toEqual([
      'dryings[0].dry: nobody knows what it weighs dry. Enter the mass before the wash, the mass of the garment (massG), or skeins and grams of every lot.',
    ]);
  });

  it('R84: an id of no drying is a fault, with those that there are', () => {
    const other = askDrying(sample(), 'e');
    expect(other.ok ? [] : other.faults.map(explain)).toEqual([
      'dryings: the record has no drying of this id (given: "e"). Use one of d.',
    ]);
    const { dryings: _, ...never } = sample();
    const none = askDrying(never, 'd');
    expect(none.ok ? [] : none.faults.map(explain)).toEqual([
      'dryings: the record has no drying. Begin one: lay the garment out and enter the air of the room.',
    ]);
  });

  it('R84: faults of this drying stop it, doubts and faults elsewhere do not', () => {
    expect(
      saysOf((_, drying) => {
        drying.dried = '2031-01-05T08:00:00Z';
      }),
    ).toHaveLength(1);
    const other = questionOf((record, drying) => {
      drying.weighings[0] = { id: 'g', at: '2031-01-05T18:30:00Z', massG: 707 };
      record.dryings?.unshift({ ...drying, id: 'before', wet: 1 });
    });
    expect(other.weighings).toEqual([{ hours: 8, mass: 707 }]);
  });
});

describe('fabric by the drawing', () => {
  const blanket = (values: number[]): GarmentRecord => ({
    ...sample(),
    kind: 'blanket',
    pattern: {
      name: '',
      sizes: ['one'],
      measurements: ['width', 'length'].slice(0, values.length).map((landmark, at) => ({
        id: landmark,
        name: landmark,
        landmark,
        worked: 'counted' as const,
        values: [values[at] ?? null],
      })),
    },
  });

  it('R85: a blanket of 1 m by 1.5 m has 1.5 m²', () => {
    expect(drawnFabricM2(blanket([1000, 1500]))).toBeCloseTo(1.5, 9);
  });

  it('R85: twice as wide and twice as long is four times the fabric', () => {
    const once = drawnFabricM2(blanket([700, 900])) ?? Number.NaN;
    expect(drawnFabricM2(blanket([1400, 1800]))).toBeCloseTo(4 * once, 9);
  });

  it('R85: a piece of which no length, or nothing, is given says nothing', () => {
    expect(drawnFabricM2(blanket([1000]))).toBeNull();
    expect(drawnFabricM2(sample())).toBeNull();
    const { lying } = questionOf((_, drying) => {
      delete drying.fabricM2;
    });
    expect(lying.fabricM2).toBeNull();
  });
});
