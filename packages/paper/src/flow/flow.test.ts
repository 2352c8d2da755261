import { describe, expect, test } from 'vitest';
import type { Sheet } from '../sheet/sheet.ts';
import { testFaces } from '../testing/faces.ts';
import { slab } from './block.ts';
import { flow, PAGE_MARGIN, pageHeight } from './flow.ts';
import { table } from './table.ts';
import { heading, list, paragraph } from './text-block.ts';

const frame = { paper: 'a4', faces: testFaces, title: 'A page' } as const;
const textsOf = ({ marks }: Sheet) =>
  marks.flatMap((mark) => (mark.kind === 'text' ? [mark.text] : []));
const gap = (heightMm: number) => () => [slab(heightMm, () => [])];
const columns = [
  { title: 'no.', part: 1 },
  { title: 'what', part: 3 },
];
const rows = (count: number) =>
  Array.from({ length: count }, (_, k) => [`${k + 1}`, `row ${k + 1}`]);

describe('blocks down pages', () => {
  test.each([1, 2, 3])('PA16: a table %d across keeps its order and repeats its head', (across) => {
    const sheets = flow([heading('Long', 1), table(columns, rows(400), { across })], frame);
    expect(sheets.length).toBeGreaterThan(1);
    const said = sheets.flatMap(textsOf).filter((text) => text.startsWith('row '));
    expect(said).toEqual(rows(400).map(([, text]) => text));
    for (const sheet of sheets.slice(0, -1))
      expect(textsOf(sheet).filter((text) => text === 'what')).toHaveLength(across);
    expect(textsOf(sheets.at(-1)!)).toContain('what');
  });

  test('PA16: columns of a table that fits end about level', () => {
    const [sheet] = flow([table(columns, rows(21), { across: 2 })], frame);
    const lefts = sheet!.marks.flatMap((mark) =>
      mark.kind === 'text' && mark.text.startsWith('row ') ? [mark.x] : [],
    );
    expect(lefts.filter((x) => x === lefts[0])).toHaveLength(11);
  });

  test('PA17: a heading stands with what follows it, never last on a page', () => {
    const whole = pageHeight('a4');
    for (const left of [3, 8, 12, 16]) {
      const sheets = flow([gap(whole - left), heading('Next', 2), paragraph('Its text')], frame);
      const page = sheets.findIndex((sheet) => textsOf(sheet).includes('Next'));
      expect(textsOf(sheets[page]!)).toContain('Its text');
    }
  });

  test('PA18: every page has its number, and the number of all', () => {
    const sheets = flow([gap(200), gap(200), gap(200)], frame);
    expect(sheets.map((sheet) => textsOf(sheet).at(-1))).toEqual(['1 of 3', '2 of 3', '3 of 3']);
  });

  test('PA19: nothing but the foot stands in the margin, whatever the text', () => {
    const long = 'A long remark of the knitter '.repeat(140);
    const name = 'W'.repeat(200);
    const sheets = flow(
      [heading(name, 1), paragraph(long), list([long, long]), table(columns, [[name, name]])],
      { ...frame, title: name },
    );
    for (const { marks } of sheets)
      for (const mark of marks) {
        if (mark.kind !== 'text') continue;
        const width = testFaces.widthOf(mark.text, mark.sizeMm, mark.weight);
        const left = mark.x - (mark.align === 'end' ? width : 0);
        expect(left).toBeGreaterThanOrEqual(PAGE_MARGIN - 0.001);
        expect(left + width).toBeLessThanOrEqual(210 - PAGE_MARGIN + 0.001);
        expect(mark.y).toBeLessThanOrEqual(297 - PAGE_MARGIN);
      }
  });

  test('a block taller than a page is a bug, and says so', () => {
    expect(() => flow([gap(400)], frame)).toThrow(RangeError);
    expect(flow([], frame)).toEqual([]);
  });
});
