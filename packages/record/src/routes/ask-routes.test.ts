import { explain } from '@dryflat/engine/units';
import { describe, expect, it } from 'vitest';
import { askForecast } from '../ask/ask-forecast.ts';
import { EXAMPLES } from '../examples.ts';
import { sample } from '../malformed/sample.ts';
import type { GarmentRecord, Specimen } from '../schema/index.ts';
import { askRoutes, routesAssumed } from './index.ts';
import { weighedSwatches } from './weighed-swatches.ts';

const TODAY = '2031-01-20';
type Change = (record: GarmentRecord) => unknown;
const changed = (change: Change): GarmentRecord => {
  const record = sample();
  change(record);
  return record;
};
const asked = (change: Change = () => {}) => {
  const result = askRoutes(changed(change), TODAY);
  if (!result.ok) throw new Error(result.faults.map(explain).join('\n'));
  return result.value;
};
const says = (change: Change, today = TODAY): string[] => {
  const result = askRoutes(changed(change), today);
  return result.ok ? [] : result.faults.map(explain);
};

describe('askRoutes', () => {
  it('R86: asks the forecast of the record and all that bears on a route', () => {
    const forecast = askForecast(sample());
    expect(asked()).toEqual({
      forecast: forecast.ok && forecast.value,
      wearer: 'Somebody',
      people: [
        {
          id: 'q',
          name: 'Somebody else',
          body: [{ body: 'chest', mm: 1000, from: 'measured' }],
        },
      ],
      tables: true,
      progress: [
        { piece: 'back', share: 1 },
        { piece: 'front', share: 0.25 },
      ],
      progressSaid: true,
      dried: true,
      repeat: { stitches: 4, plus: 2 },
      // 180 mm at 20 stitches in 100 mm; 48 rows were counted over all of its 170 mm.
      weighed: [
        {
          id: 'swatch',
          name: 'Swatch',
          stitch: 'stockinette',
          massG: 14,
          across: 36,
          up: 48,
          counts: 'from-extents',
        },
      ],
      stock: {
        lots: [{ dyeLot: '1', skeins: 8, gramsEach: 50, metresEach: 110 }],
        leftG: 120,
      },
      pace: {
        log: [{ minutes: 60, stitches: 1500, fabric: 'plain' }],
        hours: [0, 1, 1, 0, 0, 3, 2],
        away: ['2031-01-15'],
        shopDays: 5,
      },
      dryingHours: null,
      from: TODAY,
      by: '2031-02-03',
      weights: { fit: 1, time: 0.5, yarn: 0 },
    });
  });

  it('R86: the plan starts on the day that it says, and on the day of asking when that is past', () => {
    const on = (from: string) =>
      asked((record) => {
        if (record.pace) record.pace.from = from;
      }).from;
    expect([on('2031-01-21'), on(TODAY), on('2031-01-19')]).toEqual(['2031-01-21', TODAY, TODAY]);
  });

  it('R87: what nobody said is null, or taken as usual and told', () => {
    const bare: Change = (record) => {
      for (const part of ['people', 'pace', 'progress', 'left'] as const) delete record[part];
      delete record.plan.weights;
      delete record.plan.finishBy;
      delete record.pattern.repeat;
      record.yarns = [];
    };
    const { forecast: _, ...question } = asked(bare);
    expect(question).toMatchObject({
      people: [],
      repeat: null,
      stock: null,
      by: null,
      from: TODAY,
      pace: { log: [], hours: [1, 1, 1, 1, 1, 2, 2], away: [], shopDays: 7 },
      weights: { fit: 1, time: 0.5, yarn: 0.5 },
    });
    expect(routesAssumed(changed(bare))).toEqual([
      'How much is knit is not entered: the garment was dried as a whole, so that all of it is (progress).',
      'Hours for knitting are not entered: 1 hour on each day from Monday to Friday and 2 on the others are assumed (pace.hours).',
      'How long another skein takes is not entered: 7 days are assumed (pace.shopDays).',
      'What counts is not entered: fit counts twice as much as time, or as yarn (plan.weights).',
    ]);
    expect(routesAssumed(sample())).toEqual([]);
  });

  it('R87: a pace without days for another skein means that there is none', () => {
    expect(asked(({ pace }) => delete pace?.shopDays).pace.shopDays).toBeNull();
  });

  it('R87: a garment that was measured as a whole is knit, one that never was is not begun', () => {
    const told = asked((record) => delete record.progress).progress;
    expect(told.length).toBeGreaterThan(1);
    expect(told.every(({ share }) => share === 1)).toBe(true);
    const never: Change = (record) => {
      delete record.progress;
      delete record.finished;
      record.outcomes = [];
      record.pieces = [];
    };
    expect(asked(never)).toMatchObject({ progress: [], progressSaid: false });
    expect(routesAssumed(changed(never))).toEqual([]);
  });

  it('R86: it was dried when a drying came to its end, it is finished, or it was measured since', () => {
    const never: Change = (record) => {
      delete record.finished;
      delete record.dryings;
      record.outcomes = [];
    };
    expect(asked(never).dried).toBe(false);
    const since: readonly Change[] = [
      (record) => {
        record.finished = { on: '2031-01-07', remark: '' };
        delete record.onMat;
      },
      (record) => {
        record.dryings = sample().dryings;
      },
      (record) => {
        record.outcomes = sample().outcomes;
      },
    ];
    for (const each of since)
      expect(
        asked((record) => {
          never(record);
          each(record);
        }).dried,
      ).toBe(true);
  });

  it('R88: several yarns are one stock; what is left counts once all were weighed', () => {
    const two: Change = (record) => {
      record.yarns.push({
        id: 'other',
        name: 'Another',
        fibres: [],
        treatment: 'unknown',
        lots: [{ dyeLot: '', skeins: 1 }],
      });
    };
    expect(asked(two).stock).toEqual({
      lots: [
        { dyeLot: 'A yarn 1', skeins: 8, gramsEach: 50, metresEach: 110 },
        { dyeLot: 'Another', skeins: 1, gramsEach: null, metresEach: null },
      ],
      leftG: null,
    });
    expect(
      asked((record) => {
        two(record);
        record.left?.push({ yarn: 'other', massG: 30 });
      }).stock?.leftG,
    ).toBe(150);
  });

  it('R87: faults of what is read stop it, doubts and faults elsewhere do not', () => {
    expect(says(({ left }) => left?.splice(0, 1, { yarn: 'mainn', massG: 1 }))).toEqual([
      'left[0].yarn: there is no yarn of this id (given: "mainn"). Use "main", or add the yarn.',
    ]);
    expect(says(({ pace }) => pace?.hours.fill(0))).toEqual([]);
    expect(says(({ finished }) => delete finished?.missing)).toEqual([]);
    expect(says(({ pattern }) => pattern.sizes.splice(0))[0]).toMatch(/^pattern\.sizes: /);
    expect(says(() => {}, '20.1.2031')).toEqual([
      'today: it is not a day like 2031-04-09 (given: "20.1.2031"). Write a day like 2031-04-09.',
    ]);
  });

  it.each(EXAMPLES.map(({ slug, record }) => [slug, record] as const))(
    'R86: the example %s can be asked',
    (_, record) => {
      const result = askRoutes(record, TODAY);
      expect(result.ok ? [] : result.faults).toEqual([]);
    },
  );
});

describe('swatches that were weighed', () => {
  const swatch = (more: Partial<Specimen>): Specimen => ({
    ...(sample().evidence[0] as Specimen),
    ...more,
  });

  it('R89: are counted where both whole extents have their count', () => {
    const extent = { kind: 'extent', state: 'asKnit', read: 'flat' } as const;
    const readings: Specimen['readings'] = [
      { ...extent, id: 'w', direction: 'width', mm: 182, count: 37 },
      { ...extent, id: 'h', direction: 'length', mm: 168, count: 47 },
    ];
    const [weighed] = weighedSwatches([swatch({ readings })]);
    expect(weighed).toMatchObject({ across: 37, up: 47, counts: 'counted' });
  });

  it('R89: are worked out from the latest state that has a gauge', () => {
    const count = { kind: 'count', overMm: 100, read: 'flat' } as const;
    const readings: Specimen['readings'] = [
      { ...count, id: 'a', direction: 'width', count: 22, state: 'asKnit' },
      { ...count, id: 'b', direction: 'width', count: 19, state: 'dried' },
      { ...count, id: 'c', direction: 'width', count: 21, state: 'dried' },
      { ...count, id: 'd', direction: 'length', count: 30, state: 'asKnit' },
      { ...count, id: 'e', direction: 'width', count: 9, state: 'dried', read: 'stretched' },
    ];
    const [weighed] = weighedSwatches([swatch({ widthMm: 200, heightMm: 150, readings })]);
    expect(weighed).toMatchObject({ counts: 'from-extents' });
    expect(weighed?.across).toBeCloseTo(40, 9);
    expect(weighed?.up).toBeCloseTo(45, 9);
  });

  it('R89: a shaped piece, and a swatch without mass, size or gauge, tell nothing', () => {
    const { massG: _, ...unweighed } = swatch({});
    const { widthMm: __, ...unsized } = swatch({});
    const none = [swatch({ kind: 'piece' }), unweighed, unsized, swatch({ readings: [] })];
    expect(weighedSwatches(none)).toEqual([]);
  });
});
