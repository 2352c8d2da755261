import { forecast } from '@dryflat/engine/garment';
import { countOfPitch } from '@dryflat/engine/units';
import { askForecast, EXAMPLES, type GarmentRecord, writeRecord } from '@dryflat/record';
import type { Locator, Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import {
  axeFindings,
  beginGarment,
  benchHere,
  DESK,
  fitsSideways,
  isSound,
  openExample,
  PHONE,
  smallTargets,
} from './harness.ts';

const at = benchHere();

const answer = (page: Page) => page.getByRole('region', { name: 'The answer' });

const openForecast = async (page: Page, title: string): Promise<void> => {
  await openExample(page, title);
  await answer(page).waitFor();
};

const goTo = async (page: Page, place: string): Promise<void> => {
  await page
    .getByRole('navigation', { name: 'Places of this garment' })
    .getByRole('link', { name: new RegExp(`^${place}(:|$)`) })
    .click();
  await page.getByRole('heading', { level: 1, name: new RegExp(`: ${place}$`) }).waitFor();
  await page.locator('main').getByRole('heading', { level: 2 }).first().waitFor();
};

/** The text as it is seen: lines apart, and nothing that is hidden. */
const seen = async (locator: Locator): Promise<string> =>
  (await locator.allInnerTexts()).join('\n');

const record = (slug: string): GarmentRecord =>
  structuredClone(EXAMPLES.find((each) => each.slug === slug)!.record);

describe.each([
  ['phone', PHONE],
  ['desk', DESK],
] as const)('on a %s', (_, viewport) => {
  test.each(EXAMPLES.map(({ title, record }) => [title, record] as const))(
    'R1: %s opens on its forecast, a row for every measurement',
    async (title, example) => {
      const page = await at.open({ viewport });
      await openForecast(page, title);
      const big = await page.locator('.df-figure-big').allTextContents();
      expect(big.length).toBeGreaterThanOrEqual(2);
      expect(big.some((text) => /^\d+(\.\d)? cm$/.test(text))).toBe(true);
      expect(await page.locator('.df-measurement').count()).toBe(
        example.pattern.measurements.length,
      );
      await page.getByRole('img', { name: 'Outline wanted and forecast, to scale' }).waitFor();
      expect(await fitsSideways(page)).toBe(true);
    },
  );
});

test('R2: no chance is printed as 0 % or 100 %', async () => {
  const page = await at.open();
  await openForecast(page, 'Ledger Day');
  const text = await seen(page.locator('main'));
  expect(text).toMatch(/under 1\s%/);
  expect(text).not.toMatch(/(^|[^.\d])(0|100)\s%/);
});

test('R3: a tapped dimension tells its ranges in every state and what it stands on, with kinds', async () => {
  const page = await at.open();
  await openForecast(page, 'Ledger Day');
  await page.getByRole('button', { name: /^chest, flat: wanted/i }).click();
  const sheet = page.getByRole('dialog', { name: 'Chest, buttoned, around' });
  await sheet.waitFor();
  for (const state of ['as knit', 'wet', 'dried', 'worn', 'rewashed'])
    await sheet
      .getByRole('img', { name: new RegExp(`^Chest, buttoned, ${state}: nine times`) })
      .waitFor();
  const kinds = await sheet.locator('.df-bases .df-kind').allTextContents();
  expect(kinds[0]).toBe('measured by you');
  expect(kinds).toContain('from the pattern');
  expect(kinds).toContain('assumption');
  await sheet.getByText(/^The finished back: 112 stitches measuring 46\.2\scm, as knit$/).waitFor();
  await page.keyboard.press('Escape');
  await page.getByRole('button', { name: /^Armhole depth/ }).click();
  await page.getByRole('dialog', { name: 'Armhole depth' }).waitFor();
});

test('R4: the state switch changes the drawing and the numbers together', async () => {
  const page = await at.open();
  await openForecast(page, 'Ledger Day');
  const row = page.locator('.df-measurement').first();
  const big = page.locator('.df-figure-big').nth(1);
  const dried = [await seen(row), await seen(big)];
  await page.getByRole('radio', { name: 'As knit' }).click({ force: true });
  const knit = [await seen(row), await seen(big)];
  expect(knit[0]).not.toBe(dried[0]);
  expect(knit[1]).not.toBe(dried[1]);
  const flat = Number.parseFloat(knit[1]!) / 2;
  const drawn = page.getByRole('button', { name: /^chest, flat:/i });
  const said = /most likely ([\d.]+)\scm/.exec((await drawn.textContent()) ?? '')?.[1];
  // Each is rounded to a millimetre, and half of a rounded girth adds half of one more.
  expect(Math.abs(Number(said) - flat)).toBeLessThanOrEqual(0.1 + 1e-9);
});

/** Lengths in a text by their unit; `1 in 30` is a chance and no length. */
const lengthsIn = (text: string, unit: 'cm' | 'in'): number =>
  text.match(unit === 'cm' ? /[\d⅛¼⅜½⅝¾⅞]\s?cm\b/g : /[\d⅛¼⅜½⅝¾⅞]\s?in\b(?![ \u00a0]\d)/g)
    ?.length ?? 0;

test.each(['Forecast', 'Evidence', 'Pieces', 'After'])(
  'R5: switching the unit changes every length under %s',
  async (place) => {
    const page = await at.open();
    await openForecast(page, 'Hayloft');
    if (place !== 'Forecast') await goTo(page, place);
    const main = page.locator('main');
    await expect.poll(async () => lengthsIn(await seen(main), 'cm')).toBeGreaterThan(3);
    const before = await seen(main);
    expect(lengthsIn(before, 'in')).toBe(0);
    await page.locator('.df-units').click();
    await expect.poll(async () => lengthsIn(await seen(main), 'cm')).toBe(0);
    expect(lengthsIn(await seen(main), 'in')).toBe(lengthsIn(before, 'cm'));
  },
);

test('R6: words of the craft switch with the rest', async () => {
  const page = await at.open();
  await openForecast(page, 'Lantern Row');
  await page.getByText(/fits best at this tension/).waitFor();
  await page.getByRole('button', { name: 'More for this garment' }).click();
  await page.getByRole('radio', { name: /^American/ }).click({ force: true });
  await page.keyboard.press('Escape');
  await page.getByText(/fits best at this gauge/).waitFor();
  await goTo(page, 'Evidence');
  await page.getByRole('heading', { name: 'What this says of the gauge' }).waitFor();
});

/** What the ladder must say of stitches over 10 cm, dried, from the engine alone. */
const expectedRung = (of: GarmentRecord): string => {
  const asked = askForecast(of);
  if (!asked.ok) throw new Error(asked.faults[0]?.problem);
  const { p05Mm, p95Mm } = forecast(asked.value, { draws: 100 }).gauge.stitch.dried;
  return `${countOfPitch(p95Mm, '10cm').toFixed(1)}–${countOfPitch(p05Mm, '10cm').toFixed(1)}`;
};

test('R7: a swatch added by keyboard alone narrows the ladder to what the engine says', async () => {
  const page = await at.open();
  await openForecast(page, 'Ledger Day');
  await goTo(page, 'Evidence');
  const now = page
    .getByRole('region', { name: 'Stitches over 10 cm' })
    .locator('[data-now] .df-rung-numbers');
  const before = record('waistcoat');
  await expect.poll(() => now.textContent()).toBe(expectedRung(before));

  await page.getByRole('button', { name: 'Tension square', exact: true }).focus();
  await page.keyboard.press('Enter');
  const card = page
    .locator('section.df-card')
    .filter({ has: page.getByRole('heading', { name: 'Tension square' }) });
  await card.getByRole('radio', { name: 'Not yet' }).focus();
  await page.keyboard.press('ArrowRight');
  await card.getByLabel('Counted').focus();
  await page.keyboard.type('22½ over 10 cm');
  await page.keyboard.press('Enter');
  await card.getByText('Say when it was: before any wash, or after.').waitFor();
  expect(await card.getByLabel('Counted').inputValue()).toBe('22½ over 10 cm');
  await card.getByRole('radio', { name: 'Dried', exact: true }).focus();
  await page.keyboard.press('Space');
  await card.getByLabel('Counted').focus();
  await page.keyboard.press('Enter');

  const after = structuredClone(before);
  after.evidence.push({
    id: 'new',
    name: 'Tension square',
    kind: 'swatch',
    stitch: after.stitch,
    workedAsGarment: true,
    washed: 'as-garment',
    readings: [
      {
        kind: 'count',
        id: 'r',
        direction: 'width',
        count: 22.5,
        overMm: 100,
        state: 'dried',
        read: 'flat',
      },
    ],
  });
  await expect.poll(() => now.textContent()).toBe(expectedRung(after));
  const width = (text: string): number => {
    const [low, high] = text.split('–').map(Number);
    return high! - low!;
  };
  expect(width(expectedRung(after))).toBeLessThan(width(expectedRung(before)));
  await card.getByText('Half a stitch over 10 cm at 22½ stitches is 2.2 %').waitFor();
  expect(await card.getByLabel('Counted').inputValue()).toBe('');
});

test('R8: a count that cannot be read stays, says why, and survives the tab', async () => {
  const page = await at.open();
  await openForecast(page, 'Lantern Row');
  await goTo(page, 'Evidence');
  const field = page.getByLabel('Counted');
  await field.fill('many over 10 cm');
  await field.press('Enter');
  await page.getByText(/Write it like 20 sts/).waitFor();
  await page.reload();
  await expect.poll(() => field.inputValue()).toBe('many over 10 cm');
});

test('R9: before and after a wash stand side by side, and a new cell becomes a reading', async () => {
  const page = await at.open();
  await openForecast(page, 'Ledger Day');
  await goTo(page, 'Evidence');
  const group = page.getByRole('group', { name: 'Stitches over 10 cm, middle' });
  expect(await group.getByRole('textbox').count()).toBe(1);
  await page.getByRole('radio', { name: 'As the garment will be' }).click({ force: true });
  const dried = group.getByLabel('Dried');
  await dried.fill('23');
  await dried.press('Tab');
  await page.getByRole('button', { name: /^Show all 3 readings of stitches/ }).waitFor();
  await page.getByRole('button', { name: /^Show all 3 readings of stitches/ }).click();
  await page.getByText(/23 stitches over 10 cm, washed and dried/).waitFor();
});

test('R23: what dried on pins says so; a reading that changes nothing says why, beside itself', async () => {
  const page = await at.open({ viewport: PHONE });
  await openForecast(page, 'Ledger Day');
  await goTo(page, 'Evidence');
  await page.getByRole('button', { name: 'Tension square', exact: true }).click();
  const card = page
    .locator('section.df-card')
    .filter({ has: page.getByRole('heading', { name: 'Tension square' }) });
  await card.getByRole('radio', { name: 'As the garment will be' }).click({ force: true });
  await card.getByRole('button', { name: 'The whole width or length' }).click();
  const form = card.getByRole('form', { name: 'The whole width or length' });
  await form.getByLabel('From edge to edge').fill('15 cm');
  await form.getByRole('radio', { name: 'Dried', exact: true }).click({ force: true });
  const pins = form.getByRole('radiogroup', { name: 'It dried' });
  expect(await pins.getByRole('radio', { checked: true }).count()).toBe(0);
  await pins.getByRole('radio', { name: 'On pins' }).click({ force: true });
  await form.getByRole('button', { name: 'Add the length' }).click();
  const row = card.getByRole('group', { name: 'Whole width', exact: true });
  await expect
    .poll(() => row.getByRole('textbox', { name: 'Dried, on pins' }).inputValue())
    .toBe('15');
  await row.getByText(/washed and dried, changes nothing: .*Give its stitches or rows/).waitFor();
  await isSound(page);
  await page.reload();
  await expect
    .poll(() => row.getByRole('textbox', { name: 'Dried, on pins' }).inputValue())
    .toBe('15');
  await row.getByText(/changes nothing/).waitFor();

  // Said otherwise, it is shown so.
  await row.getByRole('button', { name: /^Change or remove/ }).click();
  await page.getByRole('dialog').getByRole('radio', { name: 'Laid flat' }).click({ force: true });
  await page.getByRole('dialog').getByRole('button', { name: 'Done' }).click();
  await expect
    .poll(() => row.getByRole('textbox', { name: /^Dried\s*, in/ }).inputValue())
    .toBe('15');
  await page.getByRole('button', { name: 'Undo', exact: true }).first().click();
  await row.getByRole('textbox', { name: 'Dried, on pins' }).waitFor();
});

test('R23: how it dried may stay open; the doubt stands beside that reading alone, until it is said', async () => {
  const page = await at.open({ viewport: PHONE });
  const open = record('waistcoat');
  const [swatch] = open.evidence;
  swatch!.washed = 'as-garment';
  const reads = { direction: 'width', overMm: 100, read: 'flat' } as const;
  swatch!.readings.push(
    { kind: 'count', id: 'open', ...reads, count: 22, state: 'dried', place: 'edge' },
    { kind: 'set', id: 'strip', direction: 'width', restMm: 100, pinnedMm: 110, driedMm: 105 },
    { kind: 'set', id: 'slack', direction: 'width', restMm: 100, pinnedMm: 98, driedMm: 97 },
    { kind: 'extent', id: 'lone', direction: 'length', mm: 150, state: 'dried', read: 'flat' },
  );
  await page.getByRole('button', { name: 'Bring one in from a file' }).click();
  await page.locator('input[type=file]').setInputFiles({
    name: 'open.json',
    mimeType: 'application/json',
    buffer: Buffer.from(writeRecord(open)),
  });
  await answer(page).waitFor();
  await goTo(page, 'Evidence');
  const doubt = page.getByText(/nothing says whether this was read of it dried so or laid flat/);
  const row = page.getByRole('group', { name: 'Stitches over 10 cm, edge' });
  await row.filter({ has: doubt }).waitFor();
  await expect.poll(() => page.getByText(/changes nothing/).count()).toBe(2);
  await wellMade(page);
  expect(await doubt.count()).toBe(1);
  await row.getByRole('button', { name: /^Change or remove/ }).click();
  const sheet = page.getByRole('dialog');
  expect(await sheet.getByRole('radio', { name: /flat|pins/i, checked: true }).count()).toBe(0);
  await sheet.getByRole('radio', { name: 'On pins' }).click({ force: true });
  await sheet.getByRole('button', { name: 'Done' }).click();
  await row.getByRole('textbox', { name: 'Dried, on pins' }).waitFor();
  expect(await doubt.count()).toBe(0);
});

test('R10: what is missing leads to where it is mended', async () => {
  const page = await at.open();
  await beginGarment(page, 'Empty');
  await goTo(page, 'Forecast');
  await page.getByRole('heading', { level: 2, name: 'No forecast yet' }).waitFor();
  await page.getByRole('link', { name: 'Mend it under Pattern' }).first().click();
  await expect.poll(() => new URL(page.url()).hash).toMatch(/\/pattern$/);
});

test('R11: another size is chosen from the comparison, and can be taken back', async () => {
  const page = await at.open();
  await openForecast(page, 'Ledger Day');
  await page.getByText('Size 3: all that is wanted fits').waitFor();
  await page.getByRole('button', { name: 'Choose size 4', exact: true }).click();
  await page.getByText('Size 4: all that is wanted fits').waitFor();
  await page.getByRole('button', { name: 'Undo' }).last().click();
  await page.getByText('Size 3: all that is wanted fits').waitFor();
});

test('R12: a forecast that is kept is scored by what is measured afterwards', async () => {
  const page = await at.open();
  await openForecast(page, 'Lantern Row');
  const row = page.getByRole('button', { name: /^Length, hem to shoulder/ });
  const likely = Number.parseFloat(await seen(row.locator('.df-measurement-big')));
  await page.getByRole('button', { name: 'Keep this forecast' }).click();
  await page.getByText('Nothing to hold it against yet.').waitFor();
  await goTo(page, 'After');
  await page.getByRole('button', { name: 'Write down what it measures now' }).click();
  await page.getByLabel('Measure another place').selectOption({ label: 'Length, hem to shoulder' });
  const group = page.getByRole('group', { name: 'Length, hem to shoulder' });
  await group.getByLabel('Dried').fill(`${likely}`);
  await group.getByLabel('Worn').fill(`${likely + 30}`);
  await group.getByLabel('Worn').press('Tab');
  await page.getByText('1 of 2', { exact: true }).waitFor();
  expect(await page.locator('.df-compared').count()).toBe(2);
  await page.getByText('inside the range', { exact: true }).waitFor();
  await page.getByText(/cm over the range/).waitFor();
});

test('R13: a girth by the tape is asked flat or around, with what each would mean', async () => {
  const page = await at.open();
  await openForecast(page, 'Lantern Row');
  await goTo(page, 'Pieces');
  await page.getByRole('button', { name: 'Back', exact: true }).first().click();
  await page.getByLabel('Measure another place').first().selectOption({ label: 'Chest' });
  const group = page.getByRole('group', { name: 'Chest', exact: true });
  await group.getByLabel('As knit').fill('50,5');
  await group.getByLabel('As knit').press('Tab');
  await group.getByText('If it is flat, it goes 101 cm around', { exact: false }).waitFor();
  await goTo(page, 'Forecast');
  await answer(page).waitFor();
  const leftOut = page.getByText('50.5 cm of "Chest" is left out until you say');
  await leftOut.waitFor();
  await page.getByRole('link', { name: 'Say it under Pieces' }).click();
  await group.getByRole('radio', { name: /^Flat/ }).click({ force: true });
  await goTo(page, 'Forecast');
  await answer(page).waitFor();
  expect(await leftOut.count()).toBe(0);
});

test('R16: a whole width, a hang weight and a pinned strip are entered, and named as what they are', async () => {
  const page = await at.open();
  await openForecast(page, 'Lantern Row');
  await goTo(page, 'Evidence');
  const form = async (name: string, fields: Readonly<Record<string, string>>): Promise<Locator> => {
    await page.getByRole('button', { name, exact: true }).click();
    const opened = page.getByRole('form', { name });
    for (const [label, text] of Object.entries(fields)) await opened.getByLabel(label).fill(text);
    return opened;
  };
  const whole = await form('The whole width or length', {
    'From edge to edge': '16 cm',
    'Stitches or rows in it (may stay empty)': '29',
  });
  await whole.getByRole('radio', { name: /^Was pulled/ }).click({ force: true });
  await whole.getByRole('radio', { name: 'As knit' }).click({ force: true });
  await whole.getByRole('button', { name: 'Add the length' }).click();
  await page
    .getByRole('group', { name: 'Whole width of 29 stitches, pulled: an upper bound' })
    .waitFor();
  const hang = await form('A weight hung from it', {
    'Weight hung on, grams': '50',
    'Width that the clip holds': '10',
    'Length before': '12,5',
    'Length with the weight on': 'long',
  });
  await hang.getByRole('radio', { name: 'Dried', exact: true }).click({ force: true });
  await hang.getByRole('button', { name: 'Add the hang weight' }).click();
  await hang.getByText(/is not a length|no length|cannot be read/i).waitFor();
  expect(await page.getByRole('heading', { name: /^A weight hung, up/ }).count()).toBe(0);
  await hang.getByLabel('Length with the weight on').fill('13.5 cm');
  await hang.getByRole('button', { name: 'Add the hang weight' }).click();
  await page.getByRole('heading', { name: 'A weight hung, up, dried' }).waitFor();
  const strip = await form('A strip pinned out', {
    'Wet, at rest': '10',
    Pinned: '12',
    'Dry, pins out': '11',
  });
  await strip.getByRole('button', { name: 'Add the pinned strip' }).click();
  await page.getByRole('heading', { name: 'A strip pinned out, across' }).waitFor();
  await goTo(page, 'Forecast');
  await page.getByRole('button', { name: /^All that this stands on/ }).click();
  await page
    .getByText(/: 50 g hung from 10\scm took 12\.5\scm to 13\.5\scm$/)
    .first()
    .waitFor();
  await page
    .getByText(/: 10\scm at rest, pinned to 12\scm, dried to 11\scm$/)
    .first()
    .waitFor();
});

test('R21: no state is chosen for a count: it is kept as typed and asked for, and filed as it was said', async () => {
  const page = await at.open();
  await openForecast(page, 'Lantern Row');
  await goTo(page, 'Evidence');
  const form = page.getByRole('form', { name: /^Count on/ }).first();
  expect(
    await form
      .getByRole('radiogroup', { name: 'When it was' })
      .getByRole('radio', { checked: true })
      .count(),
  ).toBe(0);
  await form.getByLabel('Counted').fill('31 over 10 cm');
  await form.getByRole('button', { name: 'Add the count' }).click();
  await form.getByText('Say when it was: before any wash, or after.').waitFor();
  await isSound(page);
  await page.reload();
  expect(await form.getByLabel('Counted').inputValue()).toBe('31 over 10 cm');
  await form.getByText('As knit', { exact: true }).click();
  await form.getByRole('button', { name: 'Add the count' }).click();
  await expect.poll(() => form.getByLabel('Counted').inputValue()).toBe('');
  const group = page.getByRole('group', { name: 'Stitches over 10 cm', exact: true });
  await expect.poll(() => group.getByLabel('As knit').inputValue()).toBe('31');
  expect(await group.getByLabel('Dried', { exact: true }).inputValue()).toBe('');
});

test('R22: without a size each is foretold with its chance and its numbers, and one press chooses', async () => {
  const page = await at.open();
  await openForecast(page, 'Ledger Day');
  await goTo(page, 'Pattern');
  await page.getByRole('button', { name: 'Names of sizes, add a size' }).click();
  await page.getByRole('button', { name: 'Remove size 3' }).click();
  await page.getByRole('dialog').getByRole('button', { name: 'Done' }).click();
  const line = page.getByRole('link', { name: /Which size\?/ });
  await line.click();
  await page.getByRole('heading', { level: 2, name: 'Which size?' }).waitFor();
  const sizes = page.locator('.df-sizes > li');
  expect(await sizes.count()).toBe(7);
  await isSound(page);
  for (const text of await sizes.allInnerTexts()) {
    expect(text).toMatch(/%/);
    expect(text).toMatch(/Chest, buttoned, around \d/);
    expect(text).toMatch(/Length, hem to shoulder \d/);
  }
  await goTo(page, 'Evidence');
  await page.getByRole('region', { name: 'Stitches over 10 cm' }).waitFor();
  // Each place answers as if it were the best one, and asks; any other is one choice away.
  const asks = page.getByLabel('As if it were');
  const answers = {
    Counts: page.getByText(/^Cast on \d+ stitches/).first(),
    Routes: page.getByRole('status').filter({ hasText: 'Working' }),
    Mat: page.getByRole('region', { name: 'The plan is being worked out' }),
    Pace: page.getByText(/^Work that is left: /),
    Yarn: page.getByText(/^It lasts: /),
  };
  for (const [place, answer] of Object.entries(answers)) {
    await goTo(page, place);
    await asks.waitFor();
    expect(await asks.textContent()).toMatch(/Size \d, all fits: .+%/);
    await answer.waitFor();
    expect(await page.getByText('No size is chosen').count()).toBe(0);
  }
  const day = page.locator('.pc-when');
  await goTo(page, 'Pace');
  const before = await day.textContent();
  await asks.selectOption({ index: 6 });
  await expect.poll(() => day.textContent()).not.toBe(before);
  await goTo(page, 'Report');
  await page.getByRole('heading', { level: 2, name: 'Which size?' }).waitFor();
  await page.getByRole('heading', { name: 'The report' }).waitFor();
  await line.click();
  await page.getByRole('button', { name: 'Choose size 4', exact: true }).click();
  await page.getByText('Size 4: all that is wanted fits').waitFor();
});

test('R17: a note is kept through a closed tab', async () => {
  const page = await at.open();
  await openForecast(page, 'Lantern Row');
  await goTo(page, 'After');
  await page.getByRole('button', { name: 'Add a note' }).click();
  const note = page.getByLabel(/^Note of /).last();
  await note.fill('Pins in 42, pins out 42.');
  await page.reload();
  await expect.poll(() => note.inputValue()).toBe('Pins in 42, pins out 42.');
});

const wellMade = async (page: Page): Promise<void> => {
  expect(await axeFindings(page)).toEqual([]);
  expect(await smallTargets(page)).toEqual([]);
  expect(await fitsSideways(page)).toBe(true);
};

describe.each([
  ['phone', PHONE],
  ['desk', DESK],
] as const)('made well on a %s', (_, viewport) => {
  test.each(['light', 'dark'] as const)(
    'R14: axe finds nothing, targets are 44 px, nothing sticks out (%s)',
    async (colorScheme) => {
      const page = await at.open({ viewport, colorScheme });
      await openForecast(page, 'Hayloft');
      await wellMade(page);
      await page.locator('.df-measurement').first().click();
      await page.getByRole('dialog').waitFor();
      await wellMade(page);
      await page.keyboard.press('Escape');
      for (const place of ['Evidence', 'Pieces', 'After']) {
        await goTo(page, place);
        await wellMade(page);
      }
    },
  );
});

test('R15: text at 200 % wraps and sticks out nowhere', async () => {
  const page = await at.open();
  await page.addStyleTag({ content: 'html { font-size: 200% }' });
  await openForecast(page, 'Ledger Day');
  for (const place of ['Forecast', 'Evidence', 'Pieces', 'After']) {
    if (place !== 'Forecast') await goTo(page, place);
    expect([place, await fitsSideways(page)]).toEqual([place, true]);
    const cut = await page.evaluate(() =>
      [...document.querySelectorAll<HTMLElement>('main button, main p, main h2, main h3, main li')]
        .filter((each) => each.clientWidth > 1 && each.scrollWidth > each.clientWidth + 1)
        .map((each) => `${each.className}: ${each.textContent?.slice(0, 60)}`),
    );
    expect(cut).toEqual([]);
  }
});
