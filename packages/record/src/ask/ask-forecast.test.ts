import { forecast, forecastEach } from '@dryflat/engine/garment';
import { explain } from '@dryflat/engine/units';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anyRecord } from '../arbitrary/index.ts';
import { mustBeMended } from '../check/doubt.ts';
import { faultsOf } from '../check/faults-of.ts';
import { EXAMPLES } from '../examples.ts';
import { sample } from '../malformed/sample.ts';
import { SENSE_OF_MAT } from '../malformed/sense-of-mat.ts';
import { SENSE_OF_WORK } from '../malformed/sense-of-work.ts';
import { setAt } from '../malformed/set-at.ts';
import type { GarmentRecord } from '../schema/index.ts';
import { awaitsSpan } from '../spans/girths.ts';
import { askEachSize, askForecast } from './ask-forecast.ts';

const change = (...changes: [string, unknown][]): GarmentRecord =>
  changes.reduce<unknown>(
    (record, [path, value]) => setAt(record, path, value),
    sample(),
  ) as GarmentRecord;

const asked = (record: GarmentRecord) => {
  const result = askForecast(record);
  if (!result.ok) throw new Error(result.faults.map(explain).join('\n'));
  return result.value;
};
const refused = (record: GarmentRecord): string[] => {
  const result = askForecast(record);
  return result.ok ? [] : result.faults.map(explain);
};

describe('askForecast', () => {
  it('R102: on pins or not, of a swatch that was pinned and nobody said, may be either; that is asked', () => {
    const at = 'evidence[0].readings[0].pinned';
    const pins = (pinned: unknown) => {
      const record = change([at, pinned]);
      const [reading] = asked(record).specimens[0]?.readings ?? [];
      const codes = faultsOf(record).flatMap(({ field, code }) => (field === at ? [code] : []));
      return [reading && 'pinned' in reading ? reading.pinned : undefined, codes];
    };
    expect(pins(undefined)).toEqual(['perhaps', ['question-pinned']]);
    expect(pins(false)).toEqual([undefined, []]);
    expect(pins(true)).toEqual([true, []]);
  });

  it('R60: the whole question of the sample', () => {
    expect(asked(sample())).toEqual({
      kind: 'pullover-set-in',
      stitch: 'stockinette',
      fibres: [
        { fibre: 'wool', share: 0.8 },
        { fibre: 'nylon', share: 0.2 },
      ],
      treatment: 'untreated',
      yarns: 1,
      weightClass: 3,
      metresPer100g: 220,
      mass: 400,
      needle: 4,
      patternNeedle: 4,
      patternGauge: { stitch: 5, row: 100 / 28, state: 'dried' },
      sizes: ['S', 'M', 'L'],
      chosen: 1,
      measurements: [
        {
          id: 'chest',
          name: 'Chest',
          landmark: 'chest',
          direction: 'width',
          span: 'around',
          worked: 'counted',
          values: [900, 1000, 1100],
          counts: [180, 200, 220],
          stitch: 'stockinette',
        },
        {
          id: 'length',
          name: 'Length',
          landmark: 'body-length',
          direction: 'length',
          span: 'flat',
          worked: 'to-length',
          values: [560, 580, null],
          counts: [null, null, null],
          stitch: 'stockinette',
        },
        {
          id: 'pocket',
          name: 'Pocket',
          landmark: 'pocket',
          direction: 'width',
          span: 'flat',
          worked: 'counted',
          values: [120, 120, 130],
          counts: [null, null, null],
          stitch: 'stockinette',
        },
      ],
      specimens: [
        {
          id: 'swatch',
          name: 'Swatch',
          kind: 'swatch',
          stitch: 'stockinette',
          workedAsGarment: true,
          needle: 4,
          washed: 'as-garment',
          width: 180,
          height: 170,
          readings: [
            {
              kind: 'count',
              id: 'a',
              direction: 'width',
              count: 20,
              over: 100,
              state: 'dried',
              read: 'flat',
              place: null,
            },
            {
              kind: 'extent',
              id: 'b',
              direction: 'length',
              extent: 170,
              count: 48,
              state: 'asKnit',
              read: 'flat',
              place: null,
            },
            {
              kind: 'hang',
              id: 'c',
              direction: 'length',
              mass: 100,
              clipped: 150,
              before: 150,
              after: 165,
              state: 'dried',
            },
            { kind: 'set', id: 'd', direction: 'width', rest: 150, pinned: 170, dried: 160 },
          ],
        },
      ],
      measured: [
        { id: 'm1', measurement: 'chest', state: 'asKnit', value: 980, span: 'around' },
        { id: 'm2', measurement: 'length', state: 'dried', value: 585, span: 'flat' },
      ],
      wanted: [
        { landmark: 'chest', body: 914, bodyFrom: 'measured', kind: 'ease', min: 50, max: 100 },
        {
          landmark: 'body-length',
          body: null,
          bodyFrom: null,
          kind: 'finished',
          min: 560,
          max: 600,
        },
      ],
      drying: 'pin',
      pinTo: [{ measurement: 'length', value: 590 }],
      judgeAt: 'dried',
      washing: 'by-hand',
    });
  });

  it('R61: a table given flat asks the same question as the same table given around', () => {
    const flat = change(
      ['pattern.measurements[0].span', 'flat'],
      ['pattern.measurements[0].values', [450, 500, 550]],
      ['pattern.measurements[0].counts', [90, 100, 110]],
      ['pieces[0].measured[0].mm', 980],
      ['pieces[0].measured[0].span', 'around'],
    );
    expect(asked(flat)).toEqual(asked(sample()));
  });

  it('R61: a finished girth wanted flat is wanted twice around; ease is never doubled', () => {
    const wanted = { kind: 'finished', landmark: 'chest', minMm: 490, maxMm: 510, span: 'flat' };
    expect(asked(change(['wearer.wanted[0]', wanted])).wanted[0]).toMatchObject({
      min: 980,
      max: 1020,
    });
  });

  it('R61: a width of her own stays as she said it, and its tapes are brought to that', () => {
    const tapes = [
      { id: 't1', measurement: 'pocket', state: 'asKnit', mm: 118, span: 'flat' },
      { id: 't2', measurement: 'pocket', state: 'asKnit', mm: 236, span: 'around' },
    ];
    const flat = asked(change(['pieces[0].measured', tapes]));
    expect(flat.measured.slice(0, 2).map(({ value, span }) => [value, span])).toEqual([
      [118, 'flat'],
      [118, 'flat'],
    ]);
    const around = asked(
      change(['pieces[0].measured', tapes], ['pattern.measurements[2].span', 'around']),
    );
    expect(around.measured.slice(0, 2).map(({ value, span }) => [value, span])).toEqual([
      [236, 'around'],
      [236, 'around'],
    ]);
  });

  it('R62: a body measurement from a table says so', () => {
    const record = change(['wearer.body[0].from', { kind: 'table', table: 't', size: 'M' }]);
    expect(asked(record).wanted[0]).toMatchObject({ body: 914, bodyFrom: 'table' });
  });

  it('R62: garment and body landmarks of different names are joined: cuff over wrist', () => {
    const record = change(
      ['wearer.body[1]', { landmark: 'wrist', mm: 160, from: { kind: 'measured' } }],
      ['wearer.wanted[1]', { kind: 'ease', landmark: 'cuff', minMm: 10, maxMm: 30 }],
    );
    expect(asked(record).wanted[1]).toMatchObject({ landmark: 'cuff', body: 160 });
  });

  it('R63: a pattern of one size needs no choosing; of more it does', () => {
    const one = change(
      ['pattern.sizes', ['one']],
      ['pattern.chosen', undefined],
      [
        'pattern.measurements',
        [{ id: 'l', name: 'L', landmark: 'body-length', worked: 'to-length', values: [500] }],
      ],
      ['plan.pinTo', []],
      ['pieces', []],
      ['outcomes', []],
      ['forecasts', []],
    );
    expect(asked(one).chosen).toBe(0);
    expect(refused(change(['pattern.chosen', undefined]))).toEqual([
      'pattern.chosen: no size is chosen. Choose one of "S", "M", "L".',
    ]);
  });

  it('R63: what is missing is said with its mend', () => {
    const bare = change(
      ['pattern', { name: '', sizes: [], measurements: [] }],
      ['plan.pinTo', []],
      ['pieces', []],
      ['outcomes', []],
      ['forecasts', []],
    );
    expect(refused(bare)).toEqual([
      "pattern.sizes: the pattern has no sizes yet. Enter the pattern's sizes; one is enough.",
      'pattern.measurements: the pattern gives no finished measurement yet. Enter at least one measurement from its size table or schematic.',
    ]);
  });

  const OPEN: [string, unknown] = ['pattern.measurements[0].span', undefined];

  it('R55: a row that may be flat or around is left out with its tapes, and nothing else is', () => {
    const { measurements, measured, ...rest } = asked(change(OPEN));
    const whole = asked(sample());
    expect(measurements).toEqual(whole.measurements.filter(({ id }) => id !== 'chest'));
    expect(measured).toEqual(whole.measured.filter(({ measurement }) => measurement !== 'chest'));
    expect({ ...whole, ...rest }).toEqual(whole);
    expect(faultsOf(change(OPEN)).map(explain)).toEqual([
      'pattern.measurements[0].span: "Chest" is left out until you say whether 1000 mm (39.4 in) is flat or around. Write "flat" or "around"; it reads like around.',
    ]);
  });

  it('R55: so are its pins, and a tape, a pin or a wish that is open itself leaves only itself out', () => {
    const pins = (span?: 'flat'): [string, unknown] => [
      'plan.pinTo',
      [
        { measurement: 'chest', mm: 500, ...(span && { span }) },
        { measurement: 'length', mm: 590 },
      ],
    ];
    const pinned = (...changes: [string, unknown][]) =>
      asked(change(...changes)).pinTo.map(({ measurement }) => measurement);
    expect(pinned(pins('flat'))).toEqual(['chest', 'length']);
    expect(pinned(pins('flat'), OPEN)).toEqual(['length']);
    expect(pinned(pins())).toEqual(['length']);
    const tape = asked(change(['pieces[0].measured[0].span', undefined]));
    expect(tape.measured.map(({ id }) => id)).toEqual(['m2']);
    expect(tape.measurements).toEqual(asked(sample()).measurements);
    const wish = { kind: 'finished', landmark: 'chest', minMm: 490, maxMm: 510 };
    expect(
      asked(change(['wearer.wanted[0]', wish])).wanted.map(({ landmark }) => landmark),
    ).toEqual(['body-length']);
  });

  it('R55: where the open row is all there is, the question is the answer', () => {
    const [chest] = sample().pattern.measurements;
    const only = change(
      ['pattern.measurements', [{ ...chest, span: undefined }]],
      ['plan.pinTo', []],
      ['pieces', []],
      ['outcomes', []],
      ['forecasts', []],
    );
    expect(refused(only)).toEqual([
      'pattern.measurements[0].span: "Chest" is left out until you say whether 1000 mm (39.4 in) is flat or around. Write "flat" or "around"; it reads like around.',
    ]);
  });

  it('R55: no open question stops a forecast of what is left', () => {
    fc.assert(
      fc.property(anyRecord, (record) => {
        const { sizes, chosen, measurements } = record.pattern;
        const left = measurements.some(
          (row) => !awaitsSpan(row) && row.values.some((value) => value !== null),
        );
        const stops = faultsOf(record).some(
          (each) =>
            mustBeMended(each) &&
            /^(wearer|pattern|yarns|evidence|pieces|plan|outcomes|needleMm|massG|id|name|kind|stitch)\b/.test(
              each.field,
            ),
        );
        const sized = sizes.length === 1 || chosen !== undefined;
        if (left && !stops && sized) expect(refused(record)).toEqual([]);
      }),
    );
  });

  it.each(EXAMPLES)(
    'R69: a size of $slug has the chances before it is chosen that it has once it is',
    ({ record }) => {
      const { chosen: _, ...open } = record.pattern;
      const fresh = { ...record, pieces: [], outcomes: [] };
      const options = { draws: 1_000 };
      const each = askEachSize({ ...fresh, pattern: open });
      if (!each?.ok) throw new Error('it cannot be asked');
      const before = forecastEach(each.value, options).sizes.map((f) => f.chanceAllFit);
      for (const chosen of open.sizes) {
        const answer = forecast(asked({ ...fresh, pattern: { ...open, chosen } }), options);
        expect(answer.chanceAllFit).toBe(before[open.sizes.indexOf(chosen)]);
        if (answer.fit.length > 0)
          expect(answer.sizes.map(({ chanceAll }) => chanceAll)).toEqual(before);
      }
    },
  );

  it('R69: without a size each is asked for, begun afresh; with one, or a single one, none is', () => {
    const each = askEachSize(change(['pattern.chosen', undefined]));
    const whole = asked(sample());
    expect(each).toEqual({
      ok: true,
      value: [0, 1, 2].map((chosen) => ({ ...whole, chosen, measured: [] })),
    });
    expect(askEachSize(sample())).toBeNull();
    expect(
      askEachSize(change(['pattern.chosen', undefined], ['pattern.sizes', ['one']])),
    ).toBeNull();
    const faulty = askEachSize(
      change(['pattern.chosen', undefined], ['yarns[0].fibres[0].percent', 10]),
    );
    expect(faulty?.ok).toBe(false);
  });

  it('R64: doubts and kept forecasts do not stop a forecast, faults do', () => {
    expect(askForecast(change(['massG', 0.4])).ok).toBe(true);
    expect(askForecast(change(['forecasts[0].measurements[0].p50Mm', 1])).ok).toBe(true);
    expect(askForecast(change(['yarns[0].fibres[0].percent', 10])).ok).toBe(false);
  });

  it('R64: faults in parts that a forecast does not read do not stop one', () => {
    const [photo] = sample().photos ?? [];
    const twice = { title: 'a photo twice', path: 'photos', value: [photo, photo] };
    for (const each of [...SENSE_OF_MAT, ...SENSE_OF_WORK, twice]) {
      const record = change([each.path, each.value]);
      expect([each.title, faultsOf(record).length > 0, askForecast(record).ok]).toEqual([
        each.title,
        true,
        true,
      ]);
    }
  });

  it('R65: any record is asked or refused with faults; an asked one has no fault that counts', () => {
    fc.assert(
      fc.property(anyRecord, (record) => {
        const result = askForecast(record);
        const faults = faultsOf(record).filter(
          (each) =>
            mustBeMended(each) &&
            /^(wearer|pattern|yarns|evidence|pieces|plan|outcomes)\b/.test(each.field),
        );
        expect(result.ok && faults.length > 0).toBe(false);
        if (!result.ok) expect(result.faults.length).toBeGreaterThan(0);
      }),
    );
  });
});
