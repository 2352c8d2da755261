import { EXAMPLES, emptyRecord, type GarmentRecord, writeRecord } from '@dryflat/record';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { benchHere, isSound } from './harness.ts';

const at = benchHere();

/** Ten thousand draws beside other work on two cores. */
const SOON = { timeout: 30_000 };

const bring = async (page: Page, record: GarmentRecord): Promise<void> => {
  await page.clock.setFixedTime(new Date('2031-01-12T10:00:00Z'));
  await page.getByRole('button', { name: 'Bring one in from a file' }).click();
  await page.locator('input[type=file]').setInputFiles({
    name: 'g.json',
    mimeType: 'application/json',
    buffer: Buffer.from(writeRecord(record)),
  });
  await page.getByRole('navigation', { name: 'Places of this garment' }).waitFor();
};
const toPlace = async (page: Page, place: string): Promise<void> => {
  const name = place === 'Forecast' ? /^Forecast: / : new RegExp(`^${place}$`);
  await page.getByRole('link', { name }).click();
  await page.getByRole('heading', { level: 1, name: new RegExp(`: ${place}$`) }).waitFor();
};
const fill = async (page: Page, name: string | RegExp, text: string): Promise<void> => {
  await page.getByRole('textbox', { name }).fill(text);
  await page.keyboard.press('Tab');
};

/** A pattern that gives a chest of 96 cm in one size, and neither gauge nor counts. */
const pullover = (): GarmentRecord => {
  const record = emptyRecord({ id: 'half', name: 'Half a pullover', kind: 'pullover-set-in' });
  record.pattern = {
    name: 'Plain',
    sizes: ['One size'],
    chosen: 'One size',
    measurements: [
      {
        id: 'chest',
        name: 'Chest',
        landmark: 'chest',
        span: 'around',
        worked: 'counted',
        values: [960],
      },
      {
        id: 'length',
        name: 'Length',
        landmark: 'body-length',
        worked: 'to-length',
        values: [600],
      },
      {
        id: 'underarm',
        name: 'To the underarm',
        landmark: 'underarm-length',
        worked: 'to-length',
        values: [380],
      },
      {
        id: 'rib',
        name: 'Ribbing',
        landmark: 'rib-depth',
        worked: 'to-length',
        values: [60],
      },
    ],
  };
  record.needleMm = 4;
  record.wearer.wanted = [
    { kind: 'finished', landmark: 'chest', minMm: 940, maxMm: 1000, span: 'around' },
    { kind: 'finished', landmark: 'body-length', minMm: 580, maxMm: 620 },
  ];
  record.yarns = [
    {
      id: 'main',
      name: 'Tideline grey',
      fibres: [{ fibre: 'wool', percent: 100 }],
      treatment: 'untreated',
      weightClass: 4,
      lots: [{ dyeLot: '4711', skeins: 14, gramsEach: 50, metresEach: 90 }],
    },
  ];
  return record;
};

test('R19: half a back is begun, as wide as its stitches, and asked how far it is where it is measured', async () => {
  const page = await at.open();
  await bring(page, pullover());
  await toPlace(page, 'Evidence');
  await page.getByRole('button', { name: 'Part of the garment' }).click();
  await page.getByLabel('Which piece it is of').selectOption({ label: 'Back' });
  await page.getByRole('button', { name: 'The whole width or length' }).click();
  const form = page.getByRole('form', { name: 'The whole width or length' });
  await form.getByRole('textbox', { name: /^From edge to edge/ }).fill('53 cm');
  await form.getByRole('textbox', { name: /^Stitches or rows in it/ }).fill('100');
  await form.getByLabel('Where it was taken').selectOption({ label: 'Chest' });
  await form.getByRole('radio', { name: 'As knit' }).click({ force: true });
  await form.getByRole('button', { name: 'Add the length' }).click();
  await page.getByText('Not said yet: 50 % is assumed.').waitFor();
  await fill(page, /^How much of the back is knit/, '60');
  await isSound(page);

  await toPlace(page, 'Forecast');
  await page.getByRole('radio', { name: 'As knit' }).click({ force: true });
  const chest = page.locator('.df-figure').filter({ hasText: /^Chest/ });
  await expect.poll(() => chest.textContent(), SOON).toMatch(/10[56](\.\d)? cm/);
  // Of one size nothing is compared, and what is said of needles has its chances.
  expect(await page.getByText('fits best').count()).toBe(0);
  expect(await page.getByRole('heading', { name: 'Sizes compared' }).count()).toBe(0);
  await page.getByText(/^Needle: .* on this one, .* one size smaller/).waitFor();

  await toPlace(page, 'Routes');
  const list = page.getByRole('list', { name: 'Routes, best first' });
  await list.waitFor(SOON);
  const names = await list.locator('.ro-name').allInnerTexts();
  expect(names.some((name) => /Rip/.test(name))).toBe(true);
  expect(names.some((name) => /Go on as planned/.test(name))).toBe(true);
  expect(names.some((name) => /Knit it as planned/.test(name))).toBe(false);
  await list
    .getByRole('button', { name: /Rip the body down/ })
    .first()
    .click();
  const sheet = page.getByRole('dialog');
  const steps = sheet.getByRole('heading', { name: 'How it is done' });
  await steps.waitFor();
  expect(await sheet.locator('.ro-steps').textContent()).toMatch(
    /Rip down to row \d+ from the cast-on edge/,
  );
  await isSound(page);
  await page.keyboard.press('Escape');

  await toPlace(page, 'Pace');
  await expect.poll(() => page.getByRole('textbox', { name: /^Back/ }).inputValue()).toBe('60');
  await page.context().close();
});

test('YL3: a lot suffices by what is left of it; how much is knit is asked beside the yarn', async () => {
  const page = await at.open();
  await bring(page, pullover());
  await toPlace(page, 'Yarn');
  const card = page.locator('.df-card').filter({ hasText: 'Will it last?' });
  await card.getByText(/^Lot 4711 suffices alone\./).waitFor(SOON);
  await fill(page, /^Left of it now/, '50');
  await card
    .getByText(/^Say how much is knit, and what is left by the scale counts\./)
    .waitFor(SOON);
  await fill(page, /^Back/, '30');
  await card.getByText('Lot 4711 is likelier to run out than to last.').waitFor(SOON);
  await card.getByText(/^Buy \d+ more skeins/).waitFor(SOON);
  expect(await card.textContent()).not.toMatch(/suffices/);
  expect(await card.locator('.ya-over').textContent()).toMatch(
    /Knit already.*Left to knit takes.*At hand for it/,
  );
  await isSound(page);
  await page.context().close();
});

test('R20: judged where it was measured last, and that is said', async () => {
  const page = await at.open();
  const record = structuredClone(
    EXAMPLES.find(({ slug }) => slug === 'hayloft-pullover')?.record ?? expect.fail('no example'),
  );
  record.plan.judgeAt = 'dried';
  await bring(page, record);
  await toPlace(page, 'Forecast');
  await page.getByRole('heading', { name: 'How it will fit, rewashed' }).waitFor(SOON);
  await page.getByText(/it was measured rewashed since, and is judged so/).waitFor();
  await page.context().close();
});
