import { wholePattern } from '@dryflat/engine/paste/testing';
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import {
  axeFindings,
  beginGarment,
  benchHere,
  DESK,
  fitsSideways,
  isSound,
  type OpenOptions,
  openExample,
  PHONE,
  smallTargets,
} from './harness.ts';

const at = benchHere();

const LINE = 'Finished chest: 34 (38, 42) (46, 50, 54)" / 86 (96, 106) (117, 127, 137) cm';

const goTo = async (page: Page, place: 'Wearer' | 'Pattern' | 'Yarn'): Promise<void> => {
  await page.getByRole('navigation').getByRole('link', { name: place }).click();
  await page.getByRole('heading', { level: 1, name: new RegExp(`: ${place}$`) }).waitFor();
  await page.getByRole('heading', { level: 2 }).first().waitFor();
};
const box = (page: Page) => page.getByLabel('Size lines, or a table from a spreadsheet');
const takeOver = (page: Page) => page.getByRole('button', { name: /^Take over/ });
const cell = (page: Page, name: string) => page.getByRole('textbox', { name });

const pasted = async (text: string, options: OpenOptions = {}): Promise<Page> => {
  const page = await at.open(options);
  await beginGarment(page, 'Pasted');
  await goTo(page, 'Pattern');
  await box(page).fill(text);
  return page;
};

test('E1: a printed size line pasted on a phone becomes sizes; the answer around is kept', async () => {
  const page = await pasted(LINE, { locale: 'en-US' });
  await takeOver(page).click();
  const chest = cell(page, 'Finished chest, size 1');
  await expect.poll(() => chest.inputValue()).toBe('34');
  await page.getByText('All the way around').click();
  await page.getByText('around · counted').waitFor();
  const sizes = await page
    .getByRole('radiogroup', { name: 'Size you knit' })
    .getByRole('radio')
    .evaluateAll((all) => all.map((each) => each.closest('label')?.textContent));
  expect(sizes).toEqual(['1: 34 in', '2: 38 in', '3: 42 in', '4: 46 in', '5: 50 in', '6: 54 in']);
  await page.getByText('3: 42 in').click();
  await expect.poll(() => cell(page, 'Finished chest, size 3').inputValue()).toBe('42');
  expect(await page.getByRole('radio', { name: /^All the way around/ }).count()).toBe(0);
  await page.reload();
  await expect.poll(() => cell(page, 'Finished chest, size 3').inputValue()).toBe('42');
});

test('E2: each answer of flat or around says what it would mean for this body', async () => {
  const page = await at.open({ locale: 'en-US' });
  await beginGarment(page, 'For a body');
  await goTo(page, 'Wearer');
  await page.getByText('A woman', { exact: true }).click();
  await cell(page, 'Chest or bust').fill('36');
  await page.keyboard.press('Tab');
  await goTo(page, 'Pattern');
  await box(page).fill('Chest: 40 in');
  await takeOver(page).click();
  // 40 in flat is 80 in around, 44 in more than a body of 36 in; around it is 4 in more.
  await page.getByText(/it goes 80 in around, 44 in more than the body's 36 in/).waitFor();
  await page.getByText(/it lies 20 in wide when flat, 4 in more than the body's 36 in/).waitFor();
});

test('E3: 34,5 typed in an American browser stays thirty-four and a half', async () => {
  const page = await pasted(LINE, { locale: 'en-US' });
  await takeOver(page).click();
  const chest = cell(page, 'Finished chest, size 1');
  await chest.fill('34,5');
  await page.keyboard.press('Tab');
  await expect.poll(() => chest.inputValue()).toBe('34½');
  await page.getByText('cm', { exact: true }).first().click();
  // 34.5 in is 87.63 cm; a tape's mark is a millimetre.
  await expect.poll(() => chest.inputValue()).toBe('87.6');
});

test('E4: inches and centimetres that disagree are flagged with both, and the choice is taken over', async () => {
  const page = await pasted(LINE.replace('117', '171'), { viewport: DESK, locale: 'en-US' });
  const question = page.getByRole('radiogroup', {
    name: 'Finished chest, size 4: which is meant?',
  });
  await question.waitFor();
  expect(await question.getByRole('radio').count()).toBe(2);
  await page.getByText('One number disagrees').waitFor();
  await question
    .locator('label')
    .filter({ hasText: /^171 cm/ })
    .click();
  // 171 cm is 67.32 in; the tape's nearest eighth is 67 3/8.
  await expect.poll(() => cell(page, 'Finished chest, size 4').inputValue()).toBe('67⅜');
  await question
    .locator('label')
    .filter({ hasText: /^46 in/ })
    .click();
  await expect.poll(() => cell(page, 'Finished chest, size 4').inputValue()).toBe('46');
  expect(await page.getByText('One number disagrees').count()).toBe(0);
  await takeOver(page).click();
  await page.getByRole('heading', { name: 'Finished sizes' }).waitFor();
  await expect.poll(() => cell(page, 'Finished chest, size 4').inputValue()).toBe('46');
});

test('E5: what was not read is marked under its line, nothing else is lost, and the box outlives the tab', async () => {
  const page = await pasted(
    `${LINE}\nsee also page twelve\nSleeve length: 17 (tbc, 18) (18, 18½, 19) in`,
  );
  await page.locator('mark').getByText('tbc').waitFor();
  const fold = page.getByRole('button', { name: '1 line holds no measurement' });
  expect(await page.getByText('see also page twelve').last().isVisible()).toBe(false);
  await fold.click();
  await page.getByRole('region', { name: 'Lines without measurements' }).waitFor();
  expect(await page.getByText('see also page twelve').last().isVisible()).toBe(true);
  await page.getByRole('button', { name: 'Take over 2 measurements' }).waitFor();
  await page.reload();
  expect(await box(page).inputValue()).toContain('see also page twelve');
  await takeOver(page).click();
  await page.getByRole('heading', { name: 'Sleeve length', exact: true }).waitFor();
  await page.getByRole('button', { name: 'Undo' }).last().click();
  await expect.poll(() => box(page).inputValue()).toContain('see also page twelve');
});

test('E19: a whole pattern is pasted: its measurements and its gauge are found, the rest is one line, the page is short', async () => {
  const page = await pasted(wholePattern(24_000), { locale: 'en-US' });
  await page.getByRole('button', { name: 'Take over 8 measurements and the gauge' }).waitFor();
  await page.getByRole('button', { name: /^\d{3} lines hold no measurement$/ }).waitFor();
  expect(await box(page).inputValue()).toHaveLength(24_000);
  // Six screens of a phone for eight measurements, each with its number, its sizes and its button.
  expect(await page.evaluate(() => document.documentElement.scrollHeight)).toBeLessThan(6 * 844);
  await page.getByRole('button', { name: /lines hold no measurement$/ }).click();
  await isSound(page);
  await takeOver(page).click();
  const gauge = cell(page, 'Gauge, as the pattern gives it');
  await expect.poll(() => gauge.inputValue()).toBe('18 sts and 24 rows = 4 in');
  expect(
    await page.getByRole('radio', { name: 'Washed and dried, as nearly always' }).isChecked(),
  ).toBe(true);
  await page.getByRole('heading', { name: 'Yoke depth', exact: true }).waitFor();
  await page.getByRole('radiogroup', { name: /^Cuff, size 3/ }).waitFor();
});

test('E20: a gauge alone is taken over, over the one that was there, and undone', async () => {
  const page = await pasted('20 sts/28 rows = 4" / 10 cm', { locale: 'en-GB' });
  const gauge = cell(page, 'Tension, as the pattern gives it');
  await page.getByRole('button', { name: 'Take over the tension' }).click();
  await expect.poll(() => gauge.inputValue()).toBe('20 sts and 28 rows = 10 cm');
  await page.getByRole('button', { name: 'Undo' }).last().click();
  await expect.poll(() => gauge.inputValue()).toBe('');
  await page.getByRole('button', { name: 'Take over the tension' }).click();
  await expect.poll(() => gauge.inputValue()).toBe('20 sts and 28 rows = 10 cm');
  await box(page).fill('Gauge, unblocked: 18 sts = 4 in');
  await page.getByText('It takes the place of 20 sts and 28 rows = 10 cm').waitFor();
  await takeOver(page).click();
  await expect.poll(() => gauge.inputValue()).toBe('18 sts = 4 in');
  expect(await page.getByRole('radio', { name: 'Before any wash' }).isChecked()).toBe(true);
});

test('E21: a flat number called a circumference is asked about where it stands, and all else is foretold meanwhile', async () => {
  const page = await at.open({ locale: 'en-US' });
  await beginGarment(page, 'Slip');
  await goTo(page, 'Wearer');
  await page.getByText('A woman', { exact: true }).click();
  await cell(page, 'Chest or bust').fill('34');
  await page.keyboard.press('Tab');
  await goTo(page, 'Pattern');
  await box(page).fill(
    'Chest circumference: 19 in\nSleeve length: 17 in\nGauge: 18 sts and 24 rows = 4 in',
  );
  await takeOver(page).click();
  const question = page.getByRole('radiogroup', {
    name: 'Chest circumference, 19 in: how is it measured?',
  });
  await question.getByText('It reads like flat').waitFor();
  expect(await question.getByRole('radio', { checked: true }).count()).toBe(0);
  const forecast = page.getByRole('link', { name: /^Forecast:/ });
  await forecast.click();
  const leftOut = page.getByText(
    '"Chest circumference" is left out until you say whether 19 in is flat or around.',
  );
  await leftOut.waitFor();
  await page.getByRole('button', { name: /^Sleeve length/ }).waitFor();
  await isSound(page);
  expect(await page.getByRole('button', { name: /^Chest circumference/ }).count()).toBe(0);
  await page.getByRole('link', { name: 'Say it under Pattern' }).click();
  await question.getByText('Flat, across one layer').click();
  await forecast.click();
  await page.getByRole('button', { name: /^Chest circumference, around/ }).waitFor();
  expect(await leftOut.count()).toBe(0);
});

test('E22: a number that the words call around, and that may be, is not asked about again', async () => {
  const page = await pasted('Chest 96 cm around', { locale: 'en-GB' });
  await takeOver(page).click();
  await page.getByText('around · counted').waitFor();
  expect(await page.getByRole('radio', { name: /^All the way around/ }).count()).toBe(0);
});

test('E23: who it is for is said by nobody but the knitter', async () => {
  const page = await at.open({ locale: 'en-US' });
  await beginGarment(page, 'For whom');
  await goTo(page, 'Wearer');
  const who = page.getByRole('radiogroup', { name: 'It is for' });
  await who.getByText('A woman', { exact: true }).waitFor();
  expect(await who.getByRole('radio', { checked: true }).count()).toBe(0);
  await page.getByText('Choose who, and the measurements of the body come next.').waitFor();
  await who.getByText(/^Nobody/).click();
  await page.getByText('A wish can be said for nobody too.').waitFor();
});

test('E6: a spreadsheet with named sizes goes beside what is there, by name', async () => {
  const page = await pasted('Size\tS\tM\nChest (in)\t34\t38', { viewport: DESK, locale: 'en-US' });
  await takeOver(page).click();
  await page.getByRole('button', { name: 'Paste more lines of the pattern' }).click();
  await box(page).fill('Size\tM\tL\nWaist (in)\t36\t40');
  await page.getByText('New beside them: L.').waitFor();
  await takeOver(page).click();
  await expect.poll(() => cell(page, 'Waist, size L').inputValue()).toBe('40');
  expect(await cell(page, 'Waist, size S').inputValue()).toBe('');
  expect(await cell(page, 'Waist, size M').inputValue()).toBe('36');
});

test('E7: a published table is a start, never over the own tape, and says what it is', async () => {
  const page = await at.open({ locale: 'en-US' });
  await beginGarment(page, 'Started');
  await goTo(page, 'Wearer');
  await page.getByText('A woman', { exact: true }).click();
  await cell(page, 'Hips').fill('39½');
  await page.keyboard.press('Tab');
  await page.getByRole('button', { name: 'No tape at hand? Start from a size table' }).click();
  await page.getByRole('dialog').getByText('M', { exact: true }).click();
  await page.getByText('Craft Yarn Council, published, seen in a quotation').first().waitFor();
  await page.getByText('Craft Yarn Council, from memory of the table').first().waitFor();
  await page.getByRole('button', { name: 'Start from these' }).click();
  // Craft Yarn Council sizes, women M: bust 36 to 38 in, so a start of 37 in.
  await expect.poll(() => cell(page, 'Chest or bust').inputValue()).toBe('37');
  expect(await cell(page, 'Hips').inputValue()).toBe('39½');
  await page
    .getByText('A start from a table, not this body: Women, XS to 5X, size M')
    .first()
    .waitFor();
  await cell(page, 'Chest or bust').fill('36 1/4');
  await page.keyboard.press('Tab');
  await expect.poll(() => cell(page, 'Chest or bust').inputValue()).toBe('36¼');
  await page
    .getByRole('listitem')
    .filter({ hasText: 'Chest or bust' })
    .getByText('Measured')
    .waitFor();
});

test('E8: a wish is a signed range, drawn against the body; its fault stands beside it', async () => {
  const page = await at.open({ locale: 'en-US' });
  await beginGarment(page, 'Wished');
  await goTo(page, 'Wearer');
  await page.getByText('A woman', { exact: true }).click();
  await cell(page, 'Chest or bust').fill('36');
  await page.keyboard.press('Tab');
  const chest = page.getByRole('region', { name: 'Chest', exact: true });
  await chest
    .getByLabel('Chest: ease over the body')
    .selectOption({ label: 'Standard: +2 to +4 in' });
  await chest.getByText('Wanted 38–40 in').waitFor();
  const least = chest.getByRole('textbox', { name: /at least/ });
  await least.fill('5');
  await page.keyboard.press('Tab');
  await chest.getByText('The least is more than the most.').waitFor();
  await least.fill('-1');
  await page.keyboard.press('Tab');
  await chest.getByText('Wanted 35–40 in').waitFor();
});

test('E9: shares that do not make a whole are told at once, and a second fibre fills the rest', async () => {
  const page = await at.open();
  await beginGarment(page, 'Blend');
  await goTo(page, 'Yarn');
  await page.getByRole('button', { name: 'Add the yarn' }).click();
  const wool = cell(page, 'Share of wool');
  await wool.fill('82,5 %');
  await page.keyboard.press('Tab');
  await page.getByText('The shares make 82½ %: 17½ % are missing.').waitFor();
  await page.getByRole('button', { name: 'Add another fibre' }).click();
  await expect.poll(() => page.getByText('are missing').count()).toBe(0);
  await expect.poll(() => cell(page, 'Share of alpaca').inputValue()).toBe('17½');
});

test('E10: a skein tells the length in 100 g, and that the class, in metres or yards', async () => {
  const page = await at.open();
  await beginGarment(page, 'Skeins');
  await goTo(page, 'Yarn');
  await page.getByRole('button', { name: 'Add the yarn' }).click();
  await page.getByRole('button', { name: 'Add skeins' }).click();
  await cell(page, 'A skein weighs').fill('50');
  await cell(page, 'A skein holds').fill('115');
  await page.keyboard.press('Tab');
  await page.getByRole('button', { name: 'By the skeins: 230 m in 100 g. Use it' }).click();
  // 230 m in 100 g lies in 210 to 250, which the conversion sheet gives for class 3.
  await page
    .getByRole('button', { name: 'By its length: 3: light, DK, light worsted. Use it' })
    .click();
  expect(await page.getByLabel('Yarn thickness').inputValue()).toBe('3');
  await page.getByText('in', { exact: true }).first().click();
  // 230 m / 0.9144 m is 251.5 yd.
  await expect.poll(() => cell(page, 'Length in 100 g').inputValue()).toBe('252');
});

test('E11: a gauge is typed as people write it; rows alone say what is missing, stitches alone will do', async () => {
  const page = await at.open({ locale: 'en-US' });
  await beginGarment(page, 'Gauge');
  await goTo(page, 'Pattern');
  const gauge = cell(page, 'Gauge, as the pattern gives it');
  await gauge.fill('28 rows = 4 in');
  await page.keyboard.press('Tab');
  await page.getByText('The stitches are missing.').waitFor();
  expect(await gauge.inputValue()).toBe('28 rows = 4 in');
  await gauge.fill('20 sts = 4 in');
  await page.keyboard.press('Tab');
  await page.getByText(/The pattern gives no rows: those of plain knit are taken/).waitFor();
  await gauge.fill('20 sts and 28 rows to 4"');
  await page.keyboard.press('Tab');
  await expect.poll(() => gauge.inputValue()).toBe('20 sts and 28 rows = 4 in');
  await cell(page, 'Needle of the pattern').fill('US 7');
  await page.keyboard.press('Tab');
  await expect.poll(() => cell(page, 'Needle of the pattern').inputValue()).toBe('4.5');
  await page.getByText('cm', { exact: true }).first().click();
  // 20 over 101.6 mm are 19.7 over 100 mm, 28 are 27.6.
  await page.getByText('That is 19.7 stitches and 27.6 rows over 10 cm.').waitFor();
});

test('E12: the words of the craft follow the knitter at once', async () => {
  const page = await at.open({ locale: 'en-GB' });
  await beginGarment(page, 'Words');
  await goTo(page, 'Pattern');
  await page.getByRole('heading', { name: 'Its tension' }).waitFor();
  await page.getByRole('button', { name: 'More for this garment' }).click();
  await page.getByRole('dialog').getByText('American', { exact: false }).first().click();
  await page.keyboard.press('Escape');
  await page.getByRole('heading', { name: 'Its gauge' }).waitFor();
  expect(
    await page
      .getByLabel('Mostly knit in')
      .evaluate((each) => (each as HTMLSelectElement).selectedOptions[0]?.text),
  ).toBe('Stockinette');
});

/** Tabs until what is focused is called `name`; fails when it never is. */
const tabTo = async (page: Page, name: RegExp): Promise<void> => {
  for (let presses = 0; presses < 80; presses++) {
    await page.keyboard.press('Tab');
    const focused = await page.evaluate(() => {
      const each = document.activeElement as HTMLElement & { labels?: NodeListOf<HTMLElement> };
      const label = each.labels?.[0]?.textContent ?? '';
      return `${each.getAttribute('aria-label') ?? ''} ${label} ${each.tagName === 'BUTTON' ? each.textContent : ''}`.trim();
    });
    if (name.test(focused)) return;
  }
  throw new Error(`Tab never reached ${name}`);
};

test('E13: the pattern is entered by keyboard alone', async () => {
  const page = await at.open({ viewport: DESK, locale: 'en-US' });
  await beginGarment(page, 'By keys');
  await goTo(page, 'Wearer');
  await tabTo(page, /Nobody|A woman/);
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('ArrowUp');
  for (let i = 0; i < 5 && !(await page.getByRole('radio', { name: 'A woman' }).isChecked()); i++)
    await page.keyboard.press('ArrowDown');
  expect(await page.getByRole('radio', { name: 'A woman' }).isChecked()).toBe(true);
  await tabTo(page, /^Chest or bust/);
  await page.keyboard.type('36');
  await page.getByRole('navigation').getByRole('link', { name: 'Pattern' }).focus();
  await page.keyboard.press('Enter');
  await tabTo(page, /Size lines/);
  await page.keyboard.insertText(LINE);
  await tabTo(page, /^Take over 1 measurement/);
  await page.keyboard.press('Enter');
  // The focus is brought to the table; its first stop is the choice of size.
  await tabTo(page, /1: 34 in|All sizes/);
  await page.keyboard.press('Space');
  await page.keyboard.press('ArrowRight');
  await expect.poll(() => page.getByRole('radio', { name: '2: 38 in' }).isChecked()).toBe(true);
  await tabTo(page, /^Finished chest, size 1/);
  await page.keyboard.press('Tab');
  await page.keyboard.type('38 1/4');
  await page.keyboard.press('Tab');
  await expect.poll(() => cell(page, 'Finished chest, size 2').inputValue()).toBe('38¼');
  await tabTo(page, /^Flat, across one layer/);
  await page.keyboard.press('ArrowDown');
  await page.getByText('around · counted').waitFor();
});

test('E16: up, down and Enter go through a size of the table as in any table', async () => {
  const page = await at.open({ viewport: DESK });
  await openExample(page, 'Ledger Day waistcoat');
  await goTo(page, 'Pattern');
  const focused = (): Promise<string> =>
    page.evaluate(
      () => (document.activeElement as HTMLInputElement).labels?.[0]?.textContent ?? '',
    );
  await cell(page, 'Chest, buttoned, size 2').focus();
  await page.keyboard.press('ArrowDown');
  expect(await focused()).toMatch(/^Waist, buttoned, size 2/);
  await page.keyboard.press('Enter');
  expect(await focused()).toMatch(/^Hem, buttoned, size 2/);
  await page.keyboard.press('ArrowUp');
  await page.keyboard.type('91');
  await page.keyboard.press('ArrowUp');
  await expect.poll(() => cell(page, 'Waist, buttoned, size 2').inputValue()).toBe('91');
  expect(await focused()).toMatch(/^Chest, buttoned, size 2/);
});

test("E17: a place of one's own has a row in the pattern, a body and a wish", async () => {
  const page = await at.open({ locale: 'en-US' });
  await beginGarment(page, 'Hooded');
  await goTo(page, 'Wearer');
  await page.getByText('A woman', { exact: true }).click();
  await page
    .getByLabel('Another place', { exact: true })
    .selectOption({ label: 'A place of your own' });
  await page.getByRole('button', { name: 'Add it' }).first().click();
  await page.getByLabel('What is it called?').fill('Hood depth');
  await page.getByRole('dialog').getByText('Up the rows').click();
  await page.getByRole('dialog').getByRole('button', { name: 'Add it' }).click();
  await cell(page, 'Hood depth').fill('13 3/8');
  await page.keyboard.press('Tab');
  await expect.poll(() => cell(page, 'Hood depth').inputValue()).toBe('13⅜');
  await page.getByLabel('Another place of the garment').selectOption({ label: 'Hood depth' });
  await page.getByRole('button', { name: 'Add it' }).last().click();
  await page.getByLabel('Hood depth: ease over the body').selectOption({ label: 'My own ease' });
  await goTo(page, 'Pattern');
  await cell(page, 'Hood depth, size One size').fill('14');
  await page.keyboard.press('Tab');
  await goTo(page, 'Wearer');
  // 13 3/8 in is 339.7 mm; with ease of 0 to 50 mm up to 389.7 mm, outwards to the tape's 15 3/8 in.
  await page
    .getByRole('region', { name: 'Hood depth' })
    .getByText(/Wanted 13⅜–15⅜ in/)
    .waitFor();
});

test('E18: a range in the text is no number: its middle is offered and taken on request', async () => {
  const page = await pasted('Chest: 34-36 (38-40) in', { viewport: DESK, locale: 'en-US' });
  await page.getByText('Printed as a range: size 1, 34–36 in; size 2, 38–40 in.').waitFor();
  expect(await cell(page, 'Chest, size 1').inputValue()).toBe('');
  await page.getByRole('button', { name: 'Take the middle of each' }).click();
  await expect.poll(() => cell(page, 'Chest, size 2').inputValue()).toBe('39');
});

/** Tall enough for the whole page, so that no bar lies over what is judged. */
const wellMade = async (page: Page): Promise<void> => {
  const { width, height } = page.viewportSize() ?? PHONE;
  const whole = await page.evaluate(() => document.documentElement.scrollHeight);
  await page.setViewportSize({ width, height: whole + 200 });
  expect(await axeFindings(page)).toEqual([]);
  expect(await smallTargets(page)).toEqual([]);
  expect(await fitsSideways(page)).toBe(true);
  await page.setViewportSize({ width, height });
};

describe.each([
  ['phone', PHONE],
  ['desk', DESK],
] as const)('E14 on a %s', (_, viewport) => {
  test.each(['light', 'dark'] as const)(
    'E14: axe finds nothing, targets are 44 px, nothing sticks out (%s)',
    async (colorScheme) => {
      const page = await at.open({ viewport, colorScheme });
      await openExample(page, 'Ledger Day waistcoat');
      for (const place of ['Wearer', 'Pattern', 'Yarn'] as const) {
        await goTo(page, place);
        await wellMade(page);
      }
      await goTo(page, 'Pattern');
      await page.getByRole('button', { name: 'More of Chest, buttoned' }).click();
      await page.getByRole('dialog').waitFor();
      await wellMade(page);
      await page.keyboard.press('Escape');
      await page.getByRole('button', { name: 'Paste more lines of the pattern' }).click();
      await box(page).fill(`${LINE.replace('117', '171')}\nsee page twelve\nPocket flap: 4 in`);
      await takeOver(page).waitFor();
      await wellMade(page);
    },
  );
});

test.each(['Wearer', 'Pattern', 'Yarn'] as const)(
  'E15: on %s, text twice as large wraps and nothing is cut',
  async (place) => {
    const page = await at.open();
    await openExample(page, 'Ledger Day waistcoat');
    await page.addStyleTag({ content: 'html { font-size: 200% }' });
    await goTo(page, place);
    expect(await fitsSideways(page)).toBe(true);
    const cut = await page.evaluate(() =>
      [...document.querySelectorAll<HTMLElement>('main :is(button, label, h2, h3, p, legend)')]
        .filter((each) => each.clientWidth > 1 && each.scrollWidth > each.clientWidth + 1)
        .map((each) => each.textContent),
    );
    expect(cut).toEqual([]);
  },
);
