import { readCounts } from '@dryflat/engine/counts';
import { EXAMPLES, findExample, type GarmentRecord, writeRecord } from '@dryflat/record';
import { beforeAll, describe, expect, it } from 'vitest';
import { dryflat, type Ran } from './testing/dryflat.ts';

const waistcoat = findExample('waistcoat')?.record ?? expect.fail('no example');
const input = writeRecord(waistcoat);
const withText = (text: string): string =>
  writeRecord({ ...waistcoat, instructions: [{ id: 'b', piece: 'back', text }] });
const withRepeat = (repeat: GarmentRecord['pattern']['repeat'] & object): string =>
  writeRecord({ ...waistcoat, pattern: { ...waistcoat.pattern, repeat } });

interface Measure {
  readonly landmark: string;
  readonly direction: string;
  readonly count: number;
  readonly wantedMm: number;
  readonly mm: number;
  readonly errorMm: number;
}

describe('dryflat counts', () => {
  let json: Ran;
  beforeAll(() => {
    json = dryflat(['counts', '-', '--json'], { input });
  });

  it('C12: one object with the gauge and its state, pieces, steps, and rounding', () => {
    expect(json).toMatchObject({ code: 0, err: '' });
    const { gauge, pieces } = JSON.parse(json.out);
    expect(gauge.state).toBe('dried');
    expect(pieces.map(({ name }: { name: string }) => name)).toEqual(['front', 'back']);
    for (const piece of pieces) {
      expect(piece.stitches).toBeGreaterThan(1000);
      for (const each of piece.measures as Measure[]) {
        // Three roundings to 0.01 mm.
        expect(Math.abs(each.mm - each.wantedMm - each.errorMm)).toBeLessThan(0.016);
        const size = each.direction === 'width' ? gauge.stitchMm : gauge.rowMm;
        // The pitch is printed to 0.0001 mm, over some hundred stitches.
        expect(Math.abs(each.mm - each.count * size)).toBeLessThan(0.05);
      }
    }
  });

  it('C12: the instructions read back as the steps', () => {
    for (const { lines, steps } of JSON.parse(json.out).pieces)
      expect(readCounts(lines.join('\n'))).toEqual({ ok: true, value: steps });
  });

  it('C12: the pattern’s text stands beside what it becomes', () => {
    const [told] = JSON.parse(json.out).instructions;
    expect(told).toMatchObject({ piece: 'back', faults: [] });
    expect(told.lines[0].theirs).toBe('Cast on 112 stitches.');
    expect(told.lines[0].mine[0]).toMatch(/^Cast on \d+ stitches\.$/);
    expect(Math.abs(told.lines[0].stitches.errorMm)).toBeLessThan(6);
  });

  it('C12: a repeat is kept above the ribbing', () => {
    const { out } = dryflat(['counts', '-', '--json'], {
      input: withRepeat({ stitches: 10, plus: 3 }),
    });
    const [{ steps }] = JSON.parse(out).pieces;
    const [castOn, , evenly] = steps;
    const change = evenly.kind === 'evenly' ? evenly.stitches : 0;
    const main = castOn.stitches + (evenly.change === 'decrease' ? -change : change);
    expect(main % 10).toBe(3);
  });

  it('C12: a text that cannot be read is told with its line, and the pieces all the same', () => {
    const told = dryflat(['counts', '-', '--json'], { input: withText('Cast on 100\nSing') });
    const { pieces, instructions } = JSON.parse(told.out);
    expect(pieces).toHaveLength(2);
    expect(instructions[0].faults).toEqual([expect.stringMatching(/line 2: .*Sing/)]);
  });

  it('C12: one piece alone, in British words', () => {
    const told = dryflat(['counts', '-', '--piece', 'back', '--words', 'uk'], { input });
    expect(told.out).toContain('Cast off');
    expect(told.out).toContain('Tension, dried');
    expect(told.out).not.toMatch(/bind off|front,/i);
  });

  it('C12: children’s buttons come with a word on small parts', () => {
    const child = findExample('child-cardigan')?.record ?? expect.fail('no example');
    const told = dryflat(['counts', '-', '--json'], { input: writeRecord(child) });
    const codes = JSON.parse(told.out).notices.map(({ code }: { code: string }) => code);
    expect(codes).toContain('small-parts');
  });

  it.each(EXAMPLES)('C4: the list for $slug keeps within 80 columns', ({ record }) => {
    const told = dryflat(['counts', '-', '--units', 'in'], { input: writeRecord(record) });
    expect(told).toMatchObject({ code: 0, err: '' });
    expect(told.out.split('\n').filter((line) => [...line].length > 80)).toEqual([]);
    expect(told.out).not.toMatch(/\{mm:|NaN|undefined/);
  });

  it('C2: the same bytes again', () => {
    expect(dryflat(['counts', '-', '--json'], { input })).toEqual(json);
  });

  it('C1: what cannot be used ends with 2 and a line that says how to mend it', () => {
    const none = dryflat(['counts', '-', '--piece', 'wing'], { input });
    expect(none).toMatchObject({ code: 2, out: '' });
    expect(none.err).toContain('Choose one of front, back');
    expect(dryflat(['counts', '-', '--units', 'ell'], { input })).toMatchObject({
      code: 2,
      out: '',
    });
    expect(dryflat(['counts', '-'], { input: '{' })).toMatchObject({ code: 2, out: '' });
  });
});
