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

/** @type {readonly Scene[]} */
export const SCENES = [
  {
    file: 'phone.png',
    ...PHONE,
    example: 'waistcoat',
    prepare: at('forecast', 'What it will measure'),
  },
  {
    file: 'desk.png',
    ...DESK,
    example: 'waistcoat',
    prepare: at('forecast', 'What it will measure'),
  },
  { file: 'mat.png', ...PHONE, example: 'waistcoat', prepare: at('mat', /^(Front|Back), \d+/) },
];
