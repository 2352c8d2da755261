import type { Page } from 'playwright-core';

/** Opens a copy of the example whose title holds `title`, from the shelf. */
export const openExample = async (page: Page, title: string): Promise<void> => {
  await page
    .getByRole('listitem')
    .filter({ hasText: title })
    .getByRole('button', { name: 'Open a copy' })
    .click();
  await page.getByRole('navigation', { name: 'Places of this garment' }).waitFor();
};

/** Begins an empty garment of that name, from the shelf. */
export const beginGarment = async (page: Page, name: string): Promise<void> => {
  await page.getByRole('button', { name: 'Begin a garment' }).click();
  await page.getByLabel('What do you call it?').fill(name);
  await page.getByRole('button', { name: 'Put it on the shelf' }).click();
  await page.getByRole('heading', { level: 1, name }).waitFor();
};

/** Id of the garment that is open, from the address. */
export const openId = (page: Page): string => {
  const id = /#\/garment\/([^/]+)/.exec(page.url())?.[1];
  if (id === undefined) throw new Error(`no garment is open at ${page.url()}`);
  return decodeURIComponent(id);
};
