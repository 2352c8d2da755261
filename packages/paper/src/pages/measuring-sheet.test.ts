import { GARMENT_KINDS } from '@dryflat/engine/garment';
import { emptyRecord } from '@dryflat/record';
import { expect, test } from 'vitest';
import { blankInput } from '../input/paper-input.ts';
import { landmarkName } from '../input/telling.ts';
import { toPdf } from '../sheet/pdf.ts';
import { A4, ABOUT, exampleRecord, LETTER } from '../testing/inputs.ts';
import { readPdf } from '../testing/read-pdf.ts';
import { measuringSheet } from './measuring-sheet.ts';

const flat = (text: string) => text.replaceAll(/\s+/g, ' ');

test('PA40: every measurement of the pattern has a box in each state, and gauge has its own', async () => {
  const input = blankInput(exampleRecord('waistcoat'));
  const pages = await readPdf(await toPdf(measuringSheet(input, LETTER), ABOUT));
  const text = flat(pages.map((page) => page.text).join('\n'));
  for (const { name } of input.rows) expect(text).toContain(name);
  expect(text).toContain('as knit wet pinned dried worn rewashed');
  expect(text).toContain('Tension');
  expect(text).toContain('stitches over 4 in');
  // A row of dates and one for each measurement, six states each; gauge twice in five states. Ten rows stand close.
  const tall = pages.flatMap(({ paths }) =>
    paths.flatMap(({ chains }) =>
      chains.filter((c) => c.length === 5 && Math.abs(Math.abs(c[2]!.y - c[0]!.y) - 4.8) < 0.01),
    ),
  );
  expect(tall).toHaveLength(6 * (1 + input.rows.length) + 2 * 5);
});

test('PA41: no number of the garment is on it', async () => {
  const record = exampleRecord('waistcoat');
  record.name = 'Waistcoat';
  const pages = await readPdf(await toPdf(measuringSheet(blankInput(record), A4), ABOUT));
  const numbers = pages.flatMap(({ text }) => text.match(/\d+/g) ?? []);
  // What gauge is counted over, and the number of the page.
  expect(new Set(numbers)).toEqual(new Set(['10', '1']));
});

test.each(GARMENT_KINDS)('PA42: an empty record of %s has its landmarks, on one page', (kind) => {
  const input = blankInput(emptyRecord({ id: 'x', name: 'New', kind }));
  expect(input.rows.length).toBeGreaterThan(0);
  for (const options of [A4, LETTER]) {
    const sheets = measuringSheet(input, options);
    expect(sheets).toHaveLength(1);
    const texts = sheets[0]!.marks.flatMap((mark) => (mark.kind === 'text' ? [mark.text] : []));
    const [first] = input.rows;
    const name = first!.name || landmarkName(first!.landmark, options.words);
    expect(texts.join(' ')).toContain(name);
  }
});
