import { describe, expect, it } from 'vitest';
import type { CountReading, Reading, Specimen } from '../fabric/index.ts';
import { mm } from '../units/index.ts';
import { PULLOVER } from './check/questions.ts';
import { forecast } from './forecast.ts';

const count = (id: string, stitches: number, change: Partial<CountReading> = {}): CountReading => ({
  kind: 'count',
  id,
  direction: 'width',
  count: stitches,
  over: mm(100),
  state: 'dried',
  read: 'flat',
  place: id,
  ...change,
});

const specimen = (name: string, readings: readonly Reading[]): Specimen => ({
  id: name,
  name,
  kind: 'swatch',
  stitch: 'stockinette',
  workedAsGarment: true,
  washed: 'as-garment',
  width: mm(160),
  height: mm(160),
  readings,
});

const swatch = (name: string, stitches: number): Specimen =>
  specimen(name, [count(`${name}-a`, stitches), count(`${name}-b`, stitches)]);

const notices = (specimens: readonly Specimen[]) =>
  forecast({ ...PULLOVER, specimens }, { draws: 200 }).notices;

const named = (specimens: readonly Specimen[]): string[] =>
  notices(specimens)
    .filter(({ code }) => code === 'specimens-disagree')
    .map(({ text }) => text.split(':', 1)[0]!);

describe('specimens that do not agree', () => {
  it.each([22.5, 23, 24, 26, 17.5, 16])(
    'F26: two swatches of 20 and %d stitches are named, both of them',
    (stitches) => {
      expect(named([swatch('One', 20), swatch('Two', stitches)])).toEqual([
        'One and Two do not agree',
      ]);
    },
  );

  it.each([20, 20.5, 21, 19.2])('F26: of 20 and %d they are not: hands differ so', (stitches) => {
    expect(named([swatch('One', 20), swatch('Two', stitches)])).toEqual([]);
  });

  it('F26: one among three is named alone', () => {
    expect(named([swatch('One', 20), swatch('Two', 20), swatch('Three', 25)])).toEqual([
      'Three does not agree with what else was knit',
    ]);
  });

  it('F26: a swatch alone contradicts nobody, whatever the pattern’s gauge', () => {
    expect(named([swatch('One', 26)])).toEqual([]);
  });
});

describe('readings that change nothing', () => {
  const unused = (readings: readonly Reading[]) =>
    notices([specimen('Back', readings)]).flatMap(({ code, about }) =>
      code.startsWith('reading-unused') ? [[code, about]] : [],
    );
  const extent = (id: string, change: object = {}): Reading => ({
    kind: 'extent',
    id,
    direction: 'width',
    extent: mm(530),
    count: null,
    state: 'asKnit',
    read: 'flat',
    place: null,
    ...change,
  });

  it('F27: a length without its stitches says so, in its place', () => {
    expect(unused([extent('e')])).toEqual([['reading-unused-no-count', 'evidence:Back:e']]);
    expect(unused([extent('e', { count: 100 })])).toEqual([]);
  });

  it('F27: two lengths of one piece in two states tell of its growth', () => {
    expect(unused([extent('e'), extent('f', { state: 'dried', extent: mm(540) })])).toEqual([]);
  });

  it('F27: a strip that was not stretched says so', () => {
    const set: Reading = {
      kind: 'set',
      id: 's',
      direction: 'width',
      rest: mm(150),
      pinned: mm(150),
      dried: mm(150),
    };
    expect(unused([count('a', 20), set])).toEqual([
      ['reading-unused-no-stretch', 'evidence:Back:s'],
    ]);
    expect(unused([count('a', 20), { ...set, pinned: mm(170), dried: mm(160) }])).toEqual([]);
  });
});

describe('readings of what dried on pins', () => {
  const dried = (pinned: boolean | 'perhaps') => [
    count('knit', 20, { state: 'asKnit', place: 'middle' }),
    count('dried', 17, { place: 'middle', ...(pinned ? { pinned } : {}) }),
  ];
  const set: Reading = {
    kind: 'set',
    id: 's',
    direction: 'width',
    rest: mm(100),
    pinned: mm(125),
    dried: mm(117),
  };
  const stitch = (readings: readonly Reading[]) =>
    forecast({ ...PULLOVER, specimens: [specimen('Lace', readings)] }, { draws: 200 }).gauge.stitch
      .dried;

  it('F28: free growth is what is left without that which the pins gained', () => {
    // 20 became 17 on pins that left 17 % in it: 100 / 17 / 1.17 is 5.03 mm a stitch at rest.
    const { p50Mm } = stitch([...dried(true), set]);
    expect(p50Mm).toBeGreaterThan(4.9);
    expect(p50Mm).toBeLessThan(5.15);
    expect(stitch([...dried(false), set]).p50Mm).toBeGreaterThan(5.35);
  });

  it('F28: where nobody said whether it was pinned it may be either, and narrows less than both', () => {
    const of = (pinned: boolean | 'perhaps') => stitch([...dried(pinned), set]);
    const [pinned, perhaps, laid] = [of(true), of('perhaps'), of(false)];
    expect(perhaps.p50Mm).toBeGreaterThan(pinned.p50Mm);
    expect(perhaps.p50Mm).toBeLessThan(laid.p50Mm);
    const width = ({ p05Mm, p95Mm }: typeof laid) => Math.log(p95Mm / p05Mm);
    expect(width(perhaps)).toBeGreaterThan(1.05 * Math.max(width(pinned), width(laid)));
    // Nobody said it of any: five readings may all be of pins, and narrow no more than one does.
    const more = Array.from({ length: 5 }, (_, k) =>
      count(`dried ${k}`, 17, { pinned: 'perhaps' }),
    );
    expect(width(stitch([...dried('perhaps'), ...more, set]))).toBeGreaterThan(
      1.05 * width(stitch([...dried(false), set])),
    );
  });

  it('F28: where nobody marked how hard it was pinned, less is known', () => {
    const told = stitch([...dried(true), set]);
    const untold = stitch(dried(true));
    const laid = stitch(dried(false));
    const width = ({ p05Mm, p95Mm }: typeof told) => Math.log(p95Mm / p05Mm);
    expect(width(untold)).toBeGreaterThan(width(told));
    expect(untold.p50Mm).toBeLessThan(laid.p50Mm);
  });
});
