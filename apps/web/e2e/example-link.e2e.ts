import { expect, test } from 'vitest';
import { benchHere } from './harness.ts';

const app = benchHere();

test('S1: an address of an example opens it, once, and going back does not lead there again', async () => {
  const page = await app.open({ path: '#/example/waistcoat' });
  const title = page.getByRole('heading', { level: 1, name: /waistcoat/ });
  await title.waitFor();
  const first = page.url();
  await page.goto(`${app.address}#/example/waistcoat`);
  await title.waitFor();
  expect(page.url()).toBe(first);
  await page.goto(`${app.address}#/`);
  await page.getByRole('heading', { level: 1, name: 'On your shelf' }).waitFor();
  expect(await page.locator('.df-garments > li').count()).toBe(1);
});

test('S2: an example that does not exist leads to the shelf', async () => {
  const page = await app.open({ path: '#/example/toga' });
  await page.getByRole('button', { name: 'Begin a garment' }).waitFor();
  expect(new URL(page.url()).hash).toBe('#/');
});
