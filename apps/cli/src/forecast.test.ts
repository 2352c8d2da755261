import { EXAMPLES, type GarmentRecord, writeRecord } from '@dryflat/record';
import { beforeAll, describe, expect, it } from 'vitest';
import { dryflat, type Ran } from './testing/dryflat.ts';

const STATES = ['asKnit', 'wet', 'dried', 'worn', 'rewashed'];

interface Range {
  readonly p05Mm: number;
  readonly p50Mm: number;
  readonly p95Mm: number;
}

describe.each(EXAMPLES.map(({ slug, record }) => ({ slug, record })))(
  'forecast of $slug',
  ({ record }) => {
    const input = writeRecord(record);
    let json: Ran;
    beforeAll(() => {
      json = dryflat(['forecast', '-', '--json'], { input });
    });

    it('C5: one object, every measurement in every state, its range in order', () => {
      expect(json).toMatchObject({ code: 0, err: '' });
      const answer = JSON.parse(json.out);
      expect(answer.name).toBe(record.name);
      expect(answer.measurements).toHaveLength(record.pattern.measurements.length);
      for (const { states } of answer.measurements) {
        expect(Object.keys(states)).toEqual(STATES);
        for (const { p05Mm, p50Mm, p95Mm } of Object.values(states) as Range[]) {
          expect(p05Mm).toBeGreaterThan(0);
          expect(p05Mm).toBeLessThanOrEqual(p50Mm);
          expect(p50Mm).toBeLessThanOrEqual(p95Mm);
        }
      }
    });

    it('C5: lengths to 0.01 mm, chances between none and all', () => {
      const answer = JSON.parse(json.out);
      expect(json.out).not.toMatch(/Mm": -?\d+\.\d{3}/);
      expect(answer.fit.landmarks).toHaveLength(record.wearer.wanted.length);
      // Three chances, each rounded to 0.0001.
      for (const { chance, tooSmall, tooLarge } of answer.fit.landmarks)
        expect(Math.abs(chance + tooSmall + tooLarge - 1)).toBeLessThan(3e-4);
    });

    it('C5: everything that a measurement stands on is in the evidence', () => {
      const answer = JSON.parse(json.out);
      const known = answer.evidence.map(({ id }: { id: string }) => id);
      for (const { standsOn } of answer.measurements)
        expect(known).toEqual(expect.arrayContaining(standsOn));
    });

    it('C2: the same bytes again', () => {
      expect(dryflat(['forecast', '-', '--json'], { input })).toEqual(json);
    });

    it.each(['cm', 'in'])('C4: the table in %s keeps within 80 columns', (units) => {
      const table = dryflat(['forecast', '-', '--units', units], { input });
      expect(table).toMatchObject({ code: 0, err: '' });
      expect(table.out.split('\n').filter((line) => [...line].length > 80)).toEqual([]);
      expect(table.out).not.toContain('{mm:');
      // C7: standard output is no terminal here.
      expect(table.out).not.toContain('\u001b');
      for (const { name } of record.pattern.measurements)
        for (const word of name.split(' ')) expect(table.out).toContain(word);
    });
  },
);

describe('options', () => {
  const [waistcoat] = EXAMPLES;
  const input = writeRecord(waistcoat?.record ?? expect.fail('no example'));
  const json = (...more: string[]) =>
    JSON.parse(dryflat(['forecast', '-', '--json', ...more], { input }).out);

  it('another seed gives other draws of the same forecast', () => {
    const [one, other] = [json('--seed', '1'), json('--seed', '2')];
    const dried = (answer: typeof one) => answer.measurements[0].states.dried.p50Mm;
    expect(dried(one)).not.toBe(dried(other));
    // The median of 10,000 draws of a spread of about 26 mm stands within 1.25·26/√10,000 = 0.33 mm
    // (one standard error); five of them, for two medians, are below 2.5 mm.
    expect(Math.abs(dried(one) - dried(other))).toBeLessThan(2.5);
  });

  it('another size has other targets, and the file is left as it is', () => {
    const sizes = waistcoat?.record.pattern.sizes ?? [];
    const chest = sizes.map((size) => json('--size', size, '--draws', '1000').measurements[0]);
    expect(chest.map(({ targetMm }) => targetMm)).toEqual(
      waistcoat?.record.pattern.measurements[0]?.values,
    );
  });

  it('inches speak in fractions, British words in tension', () => {
    const table = dryflat(['forecast', '-', '--units', 'in', '--words', 'uk'], { input }).out;
    expect(table).toMatch(/\d[⅛¼⅜½⅝¾⅞]–\d+/);
    expect(table).toContain('Tension, over 4 in');
    expect(table).not.toContain('Gauge, over');
  });

  it('the number of draws is the one asked for', () => {
    expect(json('--draws', '2000').draws).toBe(2000);
  });
});

describe('what only the knitter can say', () => {
  const [waistcoat] = EXAMPLES;
  const open = (change: (record: GarmentRecord) => void): string => {
    const record = structuredClone(waistcoat?.record ?? expect.fail('no example'));
    change(record);
    return writeRecord(record);
  };
  const LEFT_OUT =
    '"Chest, buttoned" is left out until you say whether 1040 mm (40.9 in) is flat or around';
  const noSpan = open(({ pattern }) => {
    delete pattern.measurements[0]?.span;
  });
  const noSize = open(({ pattern }) => {
    delete pattern.chosen;
  });

  it('C22: a row that may be flat or around is left out and named; all others are answered, and check says so', () => {
    const ran = dryflat(['forecast', '-', '--json', '--draws', '1000'], { input: noSpan });
    expect(ran).toMatchObject({ code: 0, err: '' });
    const answer = JSON.parse(ran.out);
    const names = waistcoat?.record.pattern.measurements.map(({ name }) => name);
    expect(answer.measurements.map(({ name }: { name: string }) => name)).toEqual(names?.slice(1));
    expect(answer.notices.at(-1).text).toContain(LEFT_OUT);
    const check = dryflat(['check', '-'], { input: noSpan });
    expect(check.code).toBe(0);
    expect(check.out).toContain('sound, and ready for a forecast');
    expect(check.out).toContain(`only you can say: pattern.measurements[0].span: ${LEFT_OUT}`);
  });

  it.each([
    ['routes', '-', '--draws', '1000'],
    ['counts', '-'],
    ['block', '-'],
    ['pace', '-'],
  ])('C22: %s is not stopped by it, and says what is left out', (...line) => {
    const ran = dryflat(line, { input: noSpan });
    expect(ran).toMatchObject({ code: 0, err: '' });
    expect(ran.out.replace(/\s+/g, ' ')).toContain(LEFT_OUT);
  });

  it('C22: counts say that a size which was left out is assumed, not that the pattern gives none', () => {
    const ran = dryflat(['counts', '-'], { input: noSpan }).out.replace(/\s+/g, ' ');
    expect(ran).toContain('"Chest, buttoned" is left out, as nobody has said whether it is flat');
    expect(ran).not.toContain('The pattern gives no chest');
  });

  it.each([
    ['routes', 'size 5'],
    ['block', 'size 5'],
    ['counts', 'Size 5'],
    ['pace', 'Size 5'],
  ])('C22: without a size %s ends well, with every size by name', (command, last) => {
    const ran = dryflat([command, '-'], { input: noSize });
    expect(ran).toMatchObject({ code: 0, err: '' });
    expect(ran.out).toContain('no size chosen');
    expect(ran.out).toContain('Which size?');
    expect(ran.out).toContain(last);
    expect(ran.out.split('\n').filter((line) => [...line].length > 80)).toEqual([]);
    const { size, sizes } = JSON.parse(dryflat([command, '-', '--json'], { input: noSize }).out);
    expect(size).toBeNull();
    expect(sizes.map((each: { size: string }) => each.size)).toEqual(
      waistcoat?.record.pattern.sizes,
    );
  });

  it('C22: with --size counts and pace say of it what they say where it is chosen', () => {
    const inFour = open(({ pattern }) => {
      pattern.chosen = '4';
    });
    for (const command of ['counts', 'pace'])
      expect(dryflat([command, '-', '--size', '4'], { input: noSize }).out).toBe(
        dryflat([command, '-'], { input: inFour }).out,
      );
    expect(dryflat(['pace', '-', '--size', '44'], { input: noSize })).toMatchObject({
      code: 2,
      err: expect.stringContaining('Choose one of "1"'),
    });
  });

  it('C22: without a size a report has what does not hang on it, and says what may be', () => {
    const ran = dryflat(['report', '-'], { input: noSize });
    expect(ran).toMatchObject({ code: 0, err: '' });
    expect(ran.out).toContain('Size knit: not said: one of 1, 2, 3,');
    expect(ran.out).toContain('Time: 6.5 hours');
  });

  it('C22: a file that hangs on the size is not written, and that is said', () => {
    const ran = dryflat(['pace', '-', '--calendar', 'x.ics'], { input: noSize });
    expect(ran).toMatchObject({
      code: 0,
      err: 'x.ics is not written: it hangs on the size. Add --size.\n',
    });
  });

  it('C22: without a size each is told with its chance and its numbers; with --size one of them', () => {
    const ran = dryflat(['forecast', '-', '--json'], { input: noSize });
    expect(ran).toMatchObject({ code: 0, err: '' });
    const answer = JSON.parse(ran.out);
    expect(answer.size).toBeNull();
    expect(answer.sizes.map(({ size }: { size: string }) => size)).toEqual(
      waistcoat?.record.pattern.sizes,
    );
    const chances = answer.sizes.map(({ fit }: { fit: { chanceAll: number } }) => fit.chanceAll);
    expect(answer.bestSize).toBe(answer.sizes[chances.indexOf(Math.max(...chances))].size);
    const one = JSON.parse(
      dryflat(['forecast', '-', '--json', '--size', '5'], {
        input: open(({ pattern, pieces }) => {
          delete pattern.chosen;
          for (const piece of pieces) piece.measured = [];
        }),
      }).out,
    );
    expect(answer.sizes[4].measurements).toEqual(one.measurements);
    const told = dryflat(['forecast', '-'], { input: noSize }).out;
    expect(told).toContain(`size ${answer.bestSize}, fits best`);
    expect(told.split('\n').filter((line) => [...line].length > 80)).toEqual([]);
    expect(told).not.toContain('{mm:');
    expect(dryflat(['check', '-'], { input: noSize }).out).toContain(
      'only you can say: pattern.chosen: no size is chosen',
    );
  });
});
