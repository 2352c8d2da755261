import { expect, it } from 'vitest';
import { benchHere, openExample } from './harness.ts';

const here = benchHere();

it('V23: a calculation that never ends can be stopped, says so, and begins again with a change', async () => {
  const page = await here.open({ serviceWorkers: 'block' });
  let endless = true;
  await page.route(/forecast\.worker-.*\.js$/, async (route) => {
    if (endless) await route.fulfill({ contentType: 'text/javascript', body: 'for (;;) {}' });
    else await route.continue();
  });
  await openExample(page, 'waistcoat');
  const stop = page.getByRole('button', { name: 'Stop', exact: true });
  await stop.waitFor();
  await page.getByText('Still working it out…').waitFor();
  endless = false;
  await stop.click();
  await page.getByText('You stopped it.', { exact: false }).waitFor();
  expect(await stop.count()).toBe(0);
  await page.getByRole('link', { name: 'Wearer' }).click();
  await page.getByRole('textbox', { name: 'Name', exact: false }).first().fill('Somebody');
  await page.getByRole('link', { name: /^Forecast/ }).click();
  await page.getByRole('heading', { name: 'You stopped it.' }).waitFor({ state: 'detached' });
  await page
    .getByText(/All of it at once|Chest, buttoned/)
    .first()
    .waitFor();
});
