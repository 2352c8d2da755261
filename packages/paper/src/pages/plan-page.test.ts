import { formatLength, formatRange, mm } from '@dryflat/engine/units';
import { EXAMPLES } from '@dryflat/record';
import { beforeAll, describe, expect, test } from 'vitest';
import { paperInput } from '../input/paper-input.ts';
import type { PageOptions } from '../input/telling.ts';
import { PAPERS, PRINTER_MARGIN } from '../sheet/paper-size.ts';
import { toPdf } from '../sheet/pdf.ts';
import { A4, ABOUT, LETTER, plannedExample, unplanned } from '../testing/inputs.ts';
import { extentOf, type ReadPage, readPdf } from '../testing/read-pdf.ts';
import { planPage } from './plan-page.ts';

/** 58 pins on one piece: the list that runs over its page. */
const shawl = () => plannedExample('lace-shawl');

/** Lines may break anywhere between words. */
const flat = (text: string) => text.replaceAll(/\s+/g, ' ');
const textOf = (pages: readonly ReadPage[]) => flat(pages.map(({ text }) => text).join('\n'));

const pagesOf = async (input: Parameters<typeof planPage>[0], options: PageOptions) =>
  readPdf(await toPdf(planPage(input, options), ABOUT));

describe.each([
  ['centimetres on A4', A4],
  ['inches on Letter, British', LETTER],
] as const)('the page for the mat, in %s', (_, options) => {
  let pages: ReadPage[];
  beforeAll(async () => {
    pages = await pagesOf(shawl(), options);
  });

  test('PA30: every measurement with what is wanted, what it will be dried, and its range', () => {
    const unit = options.units;
    const text = textOf(pages).replaceAll(/(\d)\.0\b/g, '$1');
    const bare = (value: number) => formatLength(mm(value), { unit, bare: true });
    for (const { name, targetMm, pinnedMm, states } of shawl().forecast.measurements) {
      const { p05Mm, p50Mm, p95Mm } = states.dried;
      const row = [
        bare(targetMm!),
        ...(pinnedMm === null ? [] : [bare(pinnedMm)]),
        bare(p50Mm),
        formatRange(p05Mm, p95Mm, unit, { bare: true }).replaceAll(/(\d)\.0\b/g, '$1'),
      ];
      expect(text).toContain(`${name} ${row.join(' ')}`);
    }
    expect(text).toContain('likeliest length dried (dry, pins out, rested)');
  });

  test('PA31: every pin in order, with its kind and both tapes', () => {
    const [plan] = shawl().plan!.pieces;
    const text = textOf(pages);
    const far = (value: number) => flat(formatLength(mm(value), { unit: options.units }));
    let at = text.indexOf('Pins, in order: shawl');
    expect(at).toBeGreaterThan(0);
    for (const { order, kind, from } of plan!.pins) {
      const word = kind === 'straight' ? 'pin' : 'T-pin';
      const start = `${order} ${word} ${far(from[0].mm)} from`;
      const found = text.indexOf(start, at);
      expect(found, start).toBeGreaterThan(at);
      expect(text.slice(found)).toContain(`${far(from[1].mm)} from`);
      at = found;
    }
  });

  test('PA32: where the list goes over the page its heads are repeated', () => {
    const listed = pages.filter(({ text }) => / from pin \d/.test(flat(text)));
    expect(listed.length).toBeGreaterThan(1);
    for (const { text } of listed) expect(flat(text)).toContain('first tape second tape');
  });

  test('PA33: the cautions stand on it', () => {
    const text = flat(pages[0]!.text);
    expect(text).toContain('Pins and wires are sharp');
    // What this yarn of wool and silk asks for, and nothing of other fibers.
    expect(text).toContain('Silk is weak while wet');
    expect(text).not.toContain('acrylic');
  });

  test('PA24: nothing leaves the printable margin, and pages have their size', () => {
    const { widthMm, heightMm } = PAPERS[options.paper];
    for (const page of pages) {
      const { left, right, top, bottom } = extentOf(page);
      expect(page.widthMm).toBeCloseTo(widthMm, 3);
      expect(page.heightMm).toBeCloseTo(heightMm, 3);
      expect(Math.min(left, top)).toBeGreaterThan(PRINTER_MARGIN);
      expect(right).toBeLessThan(widthMm - PRINTER_MARGIN);
      expect(bottom).toBeLessThan(heightMm - PRINTER_MARGIN);
    }
  });
});

test('PA34: inches are fractions, and the words are the chosen ones', async () => {
  const inches = textOf(await pagesOf(shawl(), LETTER));
  expect(inches).toMatch(/\d[⅛¼⅜½⅝¾⅞] in from/);
  expect(inches).toContain('Lengths in inches');
  expect(textOf(await pagesOf(shawl(), A4))).toContain('Lengths in centimeters');
  expect(textOf(await pagesOf(shawl(), { ...A4, words: 'uk' }))).toContain(
    'Lengths in centimetres',
  );
  expect(textOf(await pagesOf(plannedExample('ferry-socks'), LETTER))).toContain(
    'rib depth (welt)',
  );
});

test('PA35: without a plan it has the drawing and the numbers, and no pins', async () => {
  const text = textOf(await pagesOf(unplanned('waistcoat'), A4));
  expect(text).toContain('Chest, buttoned, around');
  expect(text).not.toContain('Pins, in order');
});

test('PA30: the schematic shows flat numbers, halves of those around', async () => {
  const [page] = await pagesOf(unplanned('waistcoat'), A4);
  // The pattern's chest is 104 around: 52 across one layer.
  expect(page!.text).toMatch(/chest\n?\s*52/);
  expect(flat(page!.text)).toContain('Chest, buttoned, around 104');
});

test('PA37: a page for the mat of a swatch that was read 200 times is no longer than of one read once', () => {
  const pages = (times: number): number => {
    const record = structuredClone(EXAMPLES.find(({ slug }) => slug === 'yoke-pullover')!.record);
    const first = record.evidence[0]!;
    first.readings = Array.from({ length: times }, (_, k) => ({
      ...structuredClone(first.readings[0]!),
      id: `r${k}`,
    }));
    const input = paperInput(record, { plan: null });
    if (!input.ok) throw new Error(JSON.stringify(input.faults));
    return planPage(input.value, A4).length;
  };
  expect(pages(200)).toBe(pages(1));
});
