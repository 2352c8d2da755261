import type { GarmentRecord, Photo } from '@dryflat/record';
import { emptyRecord } from '@dryflat/record';
import { toBase64 } from '@dryflat/record/photo';
import {
  lettersOf,
  PLAIN,
  PLANTED,
  type Plain,
  plantedAll,
  TYPE_OF,
} from '@dryflat/record/photo/testing';
import { describe, expect, test } from 'vitest';
import { landmarkName } from '../input/telling.ts';
import { PRINTER_MARGIN } from '../sheet/paper-size.ts';
import { toPdf } from '../sheet/pdf.ts';
import { everyFile, picturesIn } from '../testing/every-file.ts';
import { A4, ABOUT, exampleRecord, LETTER } from '../testing/inputs.ts';
import { PERSONS, peopled } from '../testing/persons.ts';
import { extentOf, readPdf } from '../testing/read-pdf.ts';
import { reportHtml } from './html.ts';
import { reportMarkdown } from './markdown.ts';
import { type Report, type ReportGiven, reportOf } from './report.ts';
import { reportSheets } from './sheets.ts';

const made = (record: GarmentRecord, given: ReportGiven = {}): Report => {
  const report = reportOf(record, given);
  if (!report.ok) throw new Error(JSON.stringify(report.faults));
  return report.value;
};

const flat = (text: string) => text.replaceAll(/\s+/g, ' ');

/** What each way of writing says, as plain text. */
const said = async (report: Report, options = A4): Promise<Record<string, string>> => {
  const pages = await readPdf(await toPdf(reportSheets(report, options), ABOUT));
  return {
    html: flat(
      reportHtml(report, options)
        .replace(/<style>.*<\/style>/s, '')
        .replaceAll(/<[^>]+>/g, ' '),
    ),
    markdown: flat(reportMarkdown(report, options).replaceAll('\\', '')),
    pdf: flat(pages.map(({ text }) => text).join('\n')),
  };
};

/** A photo of the patch that is in every format, or of other bytes. */
const photo = (id: string, kind: Plain, bytes: Uint8Array = PLAIN[kind]): Photo => ({
  id,
  when: 'dried',
  caption: `Photo ${id}`,
  type: TYPE_OF[kind],
  widthPx: 8,
  heightPx: 8,
  data: toBase64(bytes),
});

const hayloft = () => exampleRecord('hayloft-pullover');
const row = (report: Report, name: string) => report.rows.find((each) => each.name === name);

describe('what a report gathers', () => {
  test('PA50: wanted, forecast and got side by side, each in the span of its measurement', () => {
    const chest = row(made(hayloft()), 'Chest');
    // The tape read 625 flat; the pattern's 1250 goes around.
    expect(chest).toMatchObject({ around: true, wantedMm: 1250, got: { dried: 1250, worn: 1256 } });
    expect(made(hayloft()).states).toEqual(['asKnit', 'dried', 'worn', 'rewashed']);
  });

  test('PA50: the last reading of a state stands, not the first', () => {
    const record = hayloft();
    record.outcomes.reverse();
    expect(row(made(record), 'Chest')?.got).toEqual(row(made(hayloft()), 'Chest')?.got);
    record.outcomes.push({
      id: 'late',
      on: '2032-01-01',
      washes: 9,
      remark: '',
      measured: [
        { id: 'late-chest', measurement: 'chest', state: 'dried', mm: 1300, span: 'around' },
      ],
    });
    expect(row(made(record), 'Chest')?.got.dried).toBe(1300);
  });

  test('PA51: the forecast is the last that was kept before anything was measured', () => {
    const report = made(hayloft());
    expect(report.forecastFrom).toBe('kept');
    // Chest is of the second forecast kept; the length only the first one told of.
    expect(row(report, 'Chest')?.forecast).toEqual({ mm: 1252, p05Mm: 1215, p95Mm: 1292 });
    expect(row(report, 'Length, hem to shoulder')?.forecast?.mm).toBe(694);
    const late = hayloft();
    for (const kept of late.forecasts) kept.on = '2033-01-01';
    expect(made(late).forecastFrom).toBe('hindsight');
    expect(made(exampleRecord('waistcoat')).forecastFrom).toBe('now');
  });

  test('PA52: yarn and time as the knitter says, else by the balls, the scale and the log', () => {
    expect(made(hayloft())).toMatchObject({ usedG: 616, hours: 46 });
    const record = hayloft();
    delete record.report;
    // 7 skeins of 100 g less 84 g left; nothing was timed.
    expect(made(record)).toMatchObject({ usedG: 616, hours: null });
    record.left = [];
    expect(made(record).usedG).toBeNull();
    const timed = exampleRecord('waistcoat');
    const minutes = timed.pace!.log.reduce((sum, each) => sum + each.minutes, 0);
    expect(made(timed).hours).toBeCloseTo(minutes / 60, 12);
  });

  test('PA60: without a size it says so, with all that does not hang on it', async () => {
    const record = hayloft();
    const whole = made(record);
    delete record.pattern.chosen;
    record.forecasts = [];
    const open = made(record);
    expect(open.size).toBeNull();
    expect(open.openSizes).toEqual(record.pattern.sizes);
    for (const each of open.rows) expect(each).toMatchObject({ wantedMm: null, forecast: null });
    expect(open.rows.map(({ got }) => got)).toEqual(whole.rows.map(({ got }) => got));
    expect(open.yarns).toEqual(whole.yarns);
    expect(open.hours).toBe(whole.hours);
    expect(open.gauge).toHaveLength(whole.gauge.length);
    for (const text of Object.values(await said(open)))
      expect(text).toContain(`not said: one of ${record.pattern.sizes.join(', ')}`);
  });

  test('a record that no forecast can be asked of is refused with what is missing', () => {
    const empty = reportOf(emptyRecord({ id: 'x', name: 'New', kind: 'hat' }));
    expect(empty.ok).toBe(false);
    if (!empty.ok) expect(empty.faults.length).toBeGreaterThan(0);
  });
});

describe('what is private', () => {
  /** Numbers of a body that nothing else in the garment could be. */
  const secret = (): GarmentRecord => {
    const record = exampleRecord('waistcoat');
    record.wearer.body = [
      { landmark: 'chest', mm: 4765.4, from: { kind: 'measured' } },
      { landmark: 'waist', mm: 4654.3, from: { kind: 'measured' } },
    ];
    record.report = {
      changes: 'Emlen asked for a longer back.',
      fitNotes: 'Mr VARR is pleased.',
      photos: [],
      body: false,
    };
    return record;
  };
  const NUMBERS = /4765|476\.5|4654|465\.4|187[⅛¼⅜½⅝¾⅞]|183[⅛¼⅜½⅝¾⅞]/;

  test.each([
    ['cm', A4],
    ['in', LETTER],
  ] as const)('PA53: no body number and no name leaks, in %s', async (_, options) => {
    const report = made(secret());
    expect(report.body).toBeNull();
    expect(JSON.stringify(report)).not.toMatch(NUMBERS);
    expect(JSON.stringify(report)).not.toMatch(/emlen|varr/i);
    for (const text of Object.values(await said(report, options))) {
      expect(text).not.toMatch(NUMBERS);
      expect(text).not.toMatch(/emlen|varr/i);
      expect(text).toContain('the wearer asked for a longer back.');
    }
    expect(reportHtml(report, options)).not.toMatch(/emlen|varr/i);
  });

  test('PA53: nothing of the body moves anything in a report without it, nor do other people', () => {
    const record = secret();
    record.wearer.body = record.wearer.body.map((each) => ({ ...each, mm: each.mm / 2 }));
    record.people = [];
    expect(made(record)).toEqual(made(secret()));
  });

  const withPersons = (): GarmentRecord => peopled({ ...hayloft(), photos: [photo('p', 'jpeg')] });

  test('PA54: no person is named in any file of a report, nor in its title', async () => {
    const report = made(withPersons());
    expect(report.title).toBe('Pullover');
    const written = await everyFile(report);
    for (const [how, bytes] of written.bytes) expect(lettersOf(bytes), how).not.toMatch(PERSONS);
    for (const [how, text] of Object.entries(await said(report)))
      expect(text, how).not.toMatch(PERSONS);
    expect(written.html).toContain('somebody would have it too.');
  });

  test('PA54: ticked, the garment goes by its own name everywhere', async () => {
    const report = made(withPersons(), { body: true });
    expect(report.title).toBe('Present for Ottilie, by Perpetua');
    for (const text of Object.values(await said(report))) expect(text).toContain('Ottilie');
    const pdf = (await everyFile(report)).bytes.filter(([how]) => how === 'PDF');
    expect(pdf.some(([, bytes]) => lettersOf(bytes).includes('Perpetua'))).toBe(true);
  });

  test('PA53: ticked in the record, or asked for, both are there', async () => {
    const ticked = secret();
    ticked.report = { ...ticked.report!, body: true };
    for (const report of [made(ticked), made(secret(), { body: true })])
      for (const text of Object.values(await said(report))) {
        expect(text).toContain('Emlen Varr');
        expect(text).toContain('476.5');
        expect(text).toContain(landmarkName('waist', 'us'));
      }
    expect(made(ticked, { body: false }).body).toBeNull();
  });
});

describe('how it is written', () => {
  test('PA55: HTML, Markdown and PDF say the same', async () => {
    const texts = await said(made(hayloft()), { ...A4, words: 'uk' });
    for (const [how, text] of Object.entries(texts))
      for (const part of [
        'Upper Hayloft',
        '616 g, about 1109 m',
        '46 hours',
        '125.2 (121.5–129.2)',
        'Tension',
        'Knit to the size as printed. Sewn before its first bath.',
        'Roomy over a shirt, as wished.',
        '2031-04-30: Put away for summer.',
      ])
        expect(text, how).toContain(part);
  });

  test('PA55: a usual garment stays on one page, inside the printable margin', async () => {
    const pages = await readPdf(await toPdf(reportSheets(made(hayloft()), A4), ABOUT));
    expect(pages).toHaveLength(1);
    const { left, right, top, bottom } = extentOf(pages[0]!);
    expect(Math.min(left, top)).toBeGreaterThan(PRINTER_MARGIN);
    expect(right).toBeLessThan(210 - PRINTER_MARGIN);
    expect(bottom).toBeLessThan(297 - PRINTER_MARGIN);
  });

  test('PA56: what the knitter wrote is text, never markup', () => {
    const record = hayloft();
    record.name = '<script>alert("x")</script>';
    record.report = { ...record.report!, changes: '<b>a</b> | b *c*\n# d\n1. e\n- f' };
    const report = made(record);
    const html = reportHtml(report, A4);
    expect(html).not.toMatch(/<script|<b>/);
    expect(html).toContain('&lt;b&gt;a&lt;/b&gt;');
    const markdown = reportMarkdown(report, A4);
    expect(markdown).toContain('\\<b\\>a\\</b\\> \\| b \\*c\\*\n\n\\# d\n\n1\\. e\n\n\\- f');
  });

  test('PA57: the photos that were chosen are in it, and no other', async () => {
    const record = hayloft();
    record.photos = [photo('one', 'jpeg'), photo('two', 'jpeg'), photo('web', 'lossy')];
    record.report = { ...record.report!, photos: ['one', 'web'] };
    const report = made(record);
    const html = reportHtml(report, A4);
    expect(html.match(/<img /g)).toHaveLength(2);
    expect(html).toContain('alt="Photo one"');
    expect(html).not.toContain('Photo two');
    const pages = await readPdf(await toPdf(reportSheets(report, A4), ABOUT));
    expect(pages.flatMap(({ pictures }) => pictures)).toHaveLength(1);
    const text = flat(pages.map((page) => page.text).join('\n'));
    expect(text).toContain('Photo web (WebP: it is in the HTML report)');
    expect(reportMarkdown(report, A4)).toContain('- Photo one');
  });

  test('PA58: what a camera noted is in none of its files, whatever the record holds', async () => {
    const kinds = Object.keys(PLAIN) as Plain[];
    const record = hayloft();
    record.photos = kinds.map((kind) => photo(kind, kind, plantedAll(kind, PLANTED)));
    record.report = { ...record.report!, photos: kinds };
    const written = await everyFile(made(record));
    for (const [how, bytes] of written.bytes) expect(lettersOf(bytes), how).not.toContain(PLANTED);
    expect(picturesIn(written.html)).toHaveLength(kinds.length);
  });

  test('PA58: a picture that cannot be read is left out, and that is said', async () => {
    const record = hayloft();
    const cut = plantedAll('jpeg', PLANTED).subarray(0, 900);
    record.photos = [photo('whole', 'png'), photo('cut', 'jpeg', cut)];
    record.report = { ...record.report!, photos: ['whole', 'cut'] };
    const report = made(record);
    for (const text of Object.values(await said(report)))
      expect(text).toContain('Photo cut (left out: this picture cannot be read)');
    const written = await everyFile(report);
    expect(written.html.match(/<img /g)).toHaveLength(1);
    for (const [how, bytes] of written.bytes) expect(lettersOf(bytes), how).not.toContain(PLANTED);
  });
});

test('PA59: a kept forecast that makes no sense is named, and nothing is made of it', () => {
  const record = exampleRecord('hayloft-pullover');
  const [kept] = record.forecasts;
  if (kept === undefined) throw new Error('the example keeps no forecast');
  const [first, ...rest] = kept.measurements;
  const upsideDown = { ...first!, p05Mm: first!.p95Mm + 1 };
  const report = reportOf({
    ...record,
    forecasts: [{ ...kept, measurements: [upsideDown, ...rest] }],
  });
  expect(report.ok ? [] : report.faults.map(({ code }) => code)).toEqual([
    'percentiles-out-of-order',
  ]);
});
