// @ts-check

/**
 * Waits until a page has drawn what it was told, in its own fonts, and nothing moves or changes its colour
 * any more. What goes on for good, as a ring that turns, is let go on.
 * @param {import('playwright-core').Page} page
 * @returns {Promise<void>}
 */
export const atRest = (page) =>
  page.evaluate(async () => {
    const frame = () => new Promise((drawn) => requestAnimationFrame(drawn));
    await document.fonts.ready;
    // The first is of what was there; the second of what scripts made of it.
    await frame();
    await frame();
    const ending = document
      .getAnimations()
      .filter(({ effect }) => effect?.getComputedTiming().endTime !== Number.POSITIVE_INFINITY);
    await Promise.allSettled(ending.map(({ finished }) => finished));
  });
