import { mkdtempSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { findExample, type GarmentRecord, writeRecord } from '@dryflat/record';
import { beforeAll, describe, expect, it } from 'vitest';
import { dryflat, type Ran } from './testing/dryflat.ts';

/** The quickest example: one piece, all of it to be stretched. */
const shawl = findExample('lace-shawl')?.record ?? expect.fail('no example');
const input = writeRecord(shawl);
const withPlan = (plan: Partial<GarmentRecord['plan']>): string =>
  writeRecord({ ...shawl, plan: { ...shawl.plan, ...plan } });

describe('dryflat block', () => {
  let json: Ran;
  beforeAll(() => {
    json = dryflat(['block', '-', '--json'], { input });
  });

  it('C9: one object with pins, measurements as ranges, use, scallops and how it ended', () => {
    expect(json).toMatchObject({ code: 0, err: '' });
    const { pieces, notices } = JSON.parse(json.out);
    expect(pieces).toHaveLength(1);
    const [piece] = pieces;
    expect(piece.converged).toBe(true);
    expect(piece.iterations).toBeGreaterThan(0);
    expect(piece.pins.map(({ order }: { order: number }) => order)).toEqual(
      piece.pins.map((_: unknown, k: number) => k + 1),
    );
    for (const { name, targetMm, reachedMm } of piece.measurements) {
      expect(name).not.toBe('');
      expect(targetMm).toBeGreaterThan(0);
      expect(reachedMm.p05Mm).toBeLessThan(reachedMm.p50Mm);
      expect(reachedMm.p50Mm).toBeLessThan(reachedMm.p95Mm);
    }
    expect(piece.stretchUse.max).toBeGreaterThan(0);
    expect(piece.stretchUse.max).toBeLessThan(1);
    expect(Object.keys(piece.stretchUse.where)).toEqual(['xMm', 'yMm']);
    expect(piece.scallopMm.max).toBeGreaterThan(0);
    const assumed = notices.filter(({ text }: { text: string }) => text.includes('is assumed'));
    expect(assumed.length).toBeGreaterThan(0);
  });

  it('C10: gentle unless told to go to measure, and the answer says which', () => {
    // Of wool in garter stitch 5 % is what makers of wool call safe; a tenth of a percent is below what a tape tells.
    const garter = writeRecord({
      ...shawl,
      stitch: 'garter',
      yarns: shawl.yarns.map((each) => ({
        ...each,
        fibres: [{ fibre: 'wool', percent: 100 }],
      })),
      evidence: shawl.evidence.map((each) => ({ ...each, stitch: 'garter' })),
    });
    const told = (...flags: string[]) =>
      JSON.parse(dryflat(['block', '-', '--json', ...flags], { input: garter }).out);
    const largest = (answer: ReturnType<typeof told>): number =>
      Math.max(
        ...answer.pieces[0].measurements.map(
          (each: { restMm: number; reachedMm: { p50Mm: number } }) =>
            each.reachedMm.p50Mm / each.restMm - 1,
        ),
      );
    const [near, far] = [told(), told('--to-measure')];
    expect(near.gentle).toBe(true);
    expect(near.notices[0].text).toMatch(/by more than 5\s%/);
    expect(largest(near)).toBeLessThanOrEqual(0.051);
    expect(far.gentle).toBe(false);
    expect(largest(far)).toBeGreaterThan(0.051);
  });

  it('C10: how far lace may be pinned in its fibres is not called unsafe', () => {
    const { gentle, notices } = JSON.parse(json.out);
    expect(gentle).toBe(true);
    expect(notices[0].text).toMatch(/by more than 27.8\s%/);
    expect(notices.map(({ code }: { code: string }) => code)).not.toContain('beyond-safe');
  });

  it('C2: the same bytes again', () => {
    expect(dryflat(['block', '-', '--json'], { input })).toEqual(json);
  });

  it('C9: the pins and the mat of the file are used, and nothing more', () => {
    const stock = { straight: 9, tPins: 1, combs: [], wires: [] };
    const mat = { widthMm: 1000, heightMm: 800, tileMm: 0 };
    const told = dryflat(['block', '-', '--json'], { input: withPlan({ stock, mat }) });
    const { pieces, notices, pinsInAll } = JSON.parse(told.out);
    expect(pinsInAll.straight + pinsInAll['t-pin']).toBeLessThanOrEqual(10);
    expect(pieces[0].moreStock[0].what).toMatch(/more pins/);
    expect(pieces[0].fitsMat).toBe(false);
    expect(notices.map(({ code }: { code: string }) => code)).toContain('mat-too-small');
  });

  it.each(['cm', 'in'])('C4: the list in %s keeps within 80 columns', (units) => {
    const told = dryflat(['block', '-', '--units', units], { input });
    expect(told).toMatchObject({ code: 0, err: '' });
    expect(told.out.split('\n').filter((line) => [...line].length > 80)).toEqual([]);
    expect(told.out).not.toContain('{mm:');
    expect(told.out).toContain('Pins, in this order');
  });

  it('C9: the picture is drawn to a file, and not over one that is there', () => {
    const file = join(mkdtempSync(join(tmpdir(), 'dryflat-')), 'shawl.svg');
    const first = dryflat(['block', '-', '--svg', file], { input });
    expect(first.code).toBe(0);
    const svg = readFileSync(file, 'utf8');
    expect(svg).toMatch(/^<svg [^>]*viewBox/);
    const marks = svg.match(/<g transform[^>]*><title>\d+: /g) ?? [];
    expect(marks).toHaveLength(JSON.parse(json.out).pieces[0].pins.length);
    expect(svg).not.toMatch(/NaN|undefined/);
    const again = dryflat(['block', '-', '--svg', file], { input });
    expect(again).toMatchObject({ code: 2, out: '' });
    expect(again.err).toContain('there is a file of that name');
  });

  it('C1: what cannot be used ends with 2 and a line that says how to mend it', () => {
    expect(dryflat(['block', '-', '--units', 'ell'], { input })).toMatchObject({
      code: 2,
      out: '',
    });
    expect(dryflat(['block', '-'], { input: '{' })).toMatchObject({ code: 2, out: '' });
  });
});
