import { toBase64 } from '@dryflat/record/photo';
import { PLAIN } from '@dryflat/record/photo/testing';
import { expect, test } from 'vitest';
import { ABOUT } from '../testing/inputs.ts';
import { readPdf } from '../testing/read-pdf.ts';
import { PAPERS } from './paper-size.ts';
import { toPdf } from './pdf.ts';
import type { Mark, Sheet } from './sheet.ts';

const sheet = (marks: readonly Mark[], paper: keyof typeof PAPERS = 'a4'): Sheet => ({
  ...PAPERS[paper],
  title: 'one',
  marks,
});

const written = (text: string, align: 'start' | 'middle' | 'end' = 'start'): Mark => ({
  kind: 'text',
  x: 100,
  y: 50,
  text,
  sizeMm: 5,
  weight: 'regular',
  align,
  colour: '#000000',
});

/** A thousandth of a millimetre: PDF numbers are written to 6 digits after the point. */
const EXACT = 3;

test.each(['a4', 'letter'] as const)('PA10: %s pages have their exact size', async (paper) => {
  const [page] = await readPdf(await toPdf([sheet([], paper)], ABOUT));
  expect(page!.widthMm).toBeCloseTo(PAPERS[paper].widthMm, EXACT);
  expect(page!.heightMm).toBeCloseTo(PAPERS[paper].heightMm, EXACT);
});

test('PA11: lines, boxes, dots and paths stand where the sheet has them', async () => {
  const stroke = { colour: '#000000', widthMm: 0.4 };
  const marks: Mark[] = [
    { kind: 'line', from: { x: 20, y: 30 }, to: { x: 120, y: 30 }, stroke },
    { kind: 'path', d: 'M10 10L40 10C50 10 60 20 60 40Z', fill: '#eeeeee', stroke },
    { kind: 'box', x: 5, y: 200, width: 30, height: 20, stroke: { ...stroke, dash: [1, 2] } },
  ];
  const [page] = await readPdf(await toPdf([sheet(marks)], ABOUT));
  const [line, path, box] = page!.paths.map(({ chains }) => chains[0]!);
  const near = (p: { x: number; y: number } | undefined, x: number, y: number) => {
    expect(p?.x).toBeCloseTo(x, EXACT);
    expect(p?.y).toBeCloseTo(y, EXACT);
  };
  near(line![0], 20, 30);
  near(line![1], 120, 30);
  near(path!.at(-2), 60, 40);
  near(box![2], 35, 220);
  expect(page!.paths.map(({ lineMm }) => Math.round(lineMm * 1000))).toEqual([400, 400, 400]);
});

test.each([
  'Chest 13⅛ ⅜ ⅝ ⅞ ½ ¼ ¾ in, 96.5–105.1',
  'Łódź, smørbrød, naïve',
  'Свитер для Нади',
  'πλεκτό',
  'no. 1 × 2 − 3 ≈ 4',
])('PA12: what is written can be read and copied: %s', async (text) => {
  const [page] = await readPdf(await toPdf([sheet([written(text)])], ABOUT));
  expect(page!.text).toBe(text);
});

test('PA12: text ends or stands in the middle where it is told to, by its measured width', async () => {
  const width = ABOUT.faces.widthOf('13⅜ in', 5, 'regular');
  const left = async (align: 'start' | 'middle' | 'end') =>
    (await readPdf(await toPdf([sheet([written('13⅜ in', align)])], ABOUT)))[0]!.words[0]!.x;
  expect(await left('start')).toBeCloseTo(100, EXACT);
  expect(await left('middle')).toBeCloseTo(100 - width / 2, EXACT);
  expect(await left('end')).toBeCloseTo(100 - width, EXACT);
});

test('PA13: the same sheets and day give the same bytes, another day others', async () => {
  const sheets = [sheet([written('13⅜ in')])];
  const one = await toPdf(sheets, ABOUT);
  expect(await toPdf(sheets, ABOUT)).toEqual(one);
  expect(await toPdf(sheets, { ...ABOUT, made: new Date(0) })).not.toEqual(one);
});

test('PA14: a picture fills its box', async () => {
  const mark: Mark = {
    kind: 'picture',
    x: 20,
    y: 40,
    width: 60,
    height: 45,
    type: 'image/jpeg',
    base64: toBase64(PLAIN.jpeg),
    alt: 'white',
  };
  const [page] = await readPdf(await toPdf([sheet([mark])], ABOUT));
  const [picture] = page!.pictures;
  expect(picture!.x).toBeCloseTo(20, EXACT);
  expect(picture!.y).toBeCloseTo(40, EXACT);
  expect(picture!.widthMm).toBeCloseTo(60, EXACT);
  expect(picture!.heightMm).toBeCloseTo(45, EXACT);
});
