// @ts-check
/** @typedef {import('playwright-core').Page} Page */
/**
 * A picture of the README's walk: the garment that it begins with, and the way there.
 * @typedef {object} Scene
 * @property {string} file
 * @property {number} width
 * @property {number} height
 * @property {string} example
 * @property {(page: Page) => Promise<void>} prepare
 */

const PHONE = { width: 390, height: 844 };
const DESK = { width: 1280, height: 800 };

/**
 * Goes to another place of the open garment.
 * @param {Page} page
 * @param {string} place
 */
const goTo = async (page, place) => {
  await page.evaluate((to) => {
    location.hash = location.hash.replace(/[^/]*$/, to);
  }, place);
  await page.waitForURL(new RegExp(`/${place}$`));
};

/**
 * Scrolls until that heading is at the top, out from under the bar that stays there.
 * @param {Page} page
 * @param {string | RegExp} name
 */
const bringUp = async (page, name) => {
  const heading = page.getByRole('heading', { name }).first();
  await heading.waitFor();
  await heading.evaluate((element) => {
    element.scrollIntoView({ block: 'start' });
    scrollBy(0, -80);
  });
};

/**
 * @param {string} place
 * @param {string | RegExp} heading
 */
const at = (place, heading) => async (/** @type {Page} */ page) => {
  if (place !== 'forecast') await goTo(page, place);
  await bringUp(page, heading);
};

/**
 * A phone at a place of a garment.
 * @param {string} place
 * @param {string | RegExp} heading
 * @param {string} [example]
 * @returns {Scene}
 */
const phone = (place, heading, example = 'waistcoat') => ({
  file: `${place}.png`,
  ...PHONE,
  example,
  prepare: at(place, heading),
});

/** Some steps into the pinning of the front. */
const pinning = async (/** @type {Page} */ page) => {
  await goTo(page, 'mat');
  await page.getByRole('button', { name: /^Start pinning/ }).click();
  await page.waitForURL(/\/pinning$/);
  const next = page.getByRole('button', { name: /^Next/ });
  for (let step = 0; step < 6; step += 1) await next.click();
};

/** A drying that has begun and was weighed. */
const drying = async (/** @type {Page} */ page) => {
  await goTo(page, 'dry');
  await page.getByRole('button', { name: 'It lies and dries from now' }).click();
  await bringUp(page, 'When it is dry');
};

/** @type {readonly Scene[]} */
export const SCENES = [
  { ...phone('forecast', 'What it will measure'), file: 'phone.png' },
  { ...phone('forecast', 'What it will measure'), ...DESK, file: 'desk.png' },
  phone('evidence', 'The finished back'),
  phone('wearer', 'How should it fit?'),
  phone('pattern', 'Finished sizes'),
  phone('routes', 'What to do now'),
  phone('counts', 'Front'),
  phone('pace', 'When it can be done'),
  phone('mat', /^(Front|Back), \d+/),
  { file: 'pinning.png', ...PHONE, example: 'waistcoat', prepare: pinning },
  { file: 'dry.png', ...PHONE, example: 'waistcoat', prepare: drying },
  phone('after', 'Was it right?', 'hayloft-pullover'),
  phone('report', /^The report/, 'hayloft-pullover'),
  phone('paper', 'What to print'),
];
