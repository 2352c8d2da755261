import { EXAMPLES, type GarmentRecord } from '@dryflat/record';
import { expect, test } from 'vitest';
import { fullSize } from '../full-size/full-size.ts';
import { blankInput, paperInput } from '../input/paper-input.ts';
import type { Sheet } from '../sheet/sheet.ts';
import { A4 } from '../testing/inputs.ts';
import { PERSONS, peopled } from '../testing/persons.ts';
import { measuringSheet } from './measuring-sheet.ts';
import { planPage } from './plan-page.ts';

/** Every page that a record has without a plan of the mat. */
const pagesOf = (record: GarmentRecord): readonly Sheet[] => {
  const input = paperInput(record, { plan: null });
  if (!input.ok) throw new Error(JSON.stringify(input.faults));
  const outline = fullSize(input.value, A4);
  if (!outline.ok) throw new Error(JSON.stringify(outline.faults));
  return [
    ...measuringSheet(blankInput(record), A4),
    ...planPage(input.value, A4),
    ...outline.value,
  ];
};

const naming = (sheets: readonly Sheet[]): string[] =>
  sheets
    .flatMap(({ title, marks }) => [
      title,
      ...marks.flatMap((mark) => (mark.kind === 'text' ? [mark.text] : [])),
    ])
    .filter((text) => PERSONS.test(text));

test.each(EXAMPLES)('PA36: no page of $slug names a person', ({ record }) => {
  expect(naming(pagesOf(peopled(record)))).toEqual([]);
});

test('PA36: where the report names persons, so do the pages', () => {
  const record = peopled(EXAMPLES[0]!.record);
  record.report!.body = true;
  const named = naming(pagesOf(record)).join(' ');
  expect(named).toMatch(/Ottilie/);
  expect(named).toMatch(/EMLEN’S/);
});
