// @ts-check

/**
 * Waits until a page has drawn what it was told, in its own fonts, and brings what still moves or changes
 * its colour to its end: Chromium may draw no frame of a page that nobody looks at, so that waiting for an
 * end could take for ever. What goes on for good, as a ring that turns, is let go on.
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
    for (const each of document.getAnimations())
      if (each.effect?.getComputedTiming().endTime !== Number.POSITIVE_INFINITY) each.finish();
    await frame();
  });
