import { planBlock } from '@dryflat/engine/blocking';
import { askBlockingWith } from '@dryflat/record/block';
import { findExample } from '@dryflat/record/examples';
import type { Page } from 'playwright-core';
import { HAND_NODES, openHand } from '../../apps/web/src/worker/mat/hand.ts';
import { type Visit, visiting } from './browser.ts';

const EXAMPLE = 'waistcoat';
const MOVES = 60;
/** There and back in both directions, mm, as the arrow keys move a pin. */
const STEPS = [
  ['ArrowRight', 1, 0],
  ['ArrowUp', 0, -1],
  ['ArrowLeft', -1, 0],
  ['ArrowDown', 0, 1],
] as const;

const median = (values: readonly number[]): number =>
  [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? Number.NaN;

/** The same pin moved the same way by Node: the solve alone. */
const inNode = (): { times: number[]; nodes: number } => {
  const asked = askBlockingWith(findExample(EXAMPLE)!.record, true);
  if (!asked.ok) throw new Error('the example cannot be asked');
  const { question } = asked.value;
  const piece = question.pieces[0]!;
  const made = planBlock({ ...question, pieces: [piece] }, { nodes: HAND_NODES });
  if (!made.ok) throw new Error('the example has no plan');
  const plan = made.value.pieces[0]!;
  const opened = openHand(piece, plan);
  if (!opened.ok) throw new Error('the example cannot be held');
  const places = plan.pins.map(({ xMm, yMm }): [number, number] => [xMm, yMm]);
  const { points } = opened.value.lie(places);
  const times: number[] = [];
  for (let move = 0; move < MOVES; move += 1) {
    const [, dx, dy] = STEPS[move % STEPS.length]!;
    places[0] = [places[0]![0] + dx, places[0]![1] + dy];
    const began = performance.now();
    opened.value.lie(places);
    times.push(performance.now() - began);
  }
  return { times, nodes: points.length / 2 };
};

const openMat = async ({ browser, url }: Visit): Promise<Page> => {
  const context = await browser.newContext({ serviceWorkers: 'block' });
  const page = await context.newPage();
  await page.goto(`${url}/`);
  await page
    .getByRole('listitem')
    .filter({ hasText: findExample(EXAMPLE)!.title })
    .getByRole('button', { name: 'Open a copy' })
    .click();
  const places = page.getByRole('navigation', { name: 'Places of this garment' });
  await places.getByRole('link', { name: 'Mat' }).click();
  await page.getByRole('heading', { name: 'Pins in their order' }).waitFor({ timeout: 300_000 });
  await page.getByText('Laying the fabric out…').waitFor({ state: 'detached', timeout: 60_000 });
  return page;
};

/** From a key to the frame in which the fabric has followed, ms: worker, drawing and all. */
const inChromium = (page: Page): Promise<number[]> =>
  page.evaluate(
    async ([moves, keys]) => {
      const pin = document.querySelector('.df-mat-chosen')!;
      const outline = document.querySelector('.df-mat-drawing .df-mat-pinned')!;
      const frame = () => new Promise((done) => requestAnimationFrame(done));
      const times: number[] = [];
      for (let move = 0; move < moves; move += 1) {
        const followed = new Promise<void>((done) => {
          const watcher = new MutationObserver(() => {
            watcher.disconnect();
            done();
          });
          watcher.observe(outline, { attributes: true, attributeFilter: ['d'] });
        });
        const began = performance.now();
        const key = keys[move % keys.length]!;
        pin.dispatchEvent(new KeyboardEvent('keydown', { key, bubbles: true, cancelable: true }));
        await followed;
        await frame();
        times.push(performance.now() - began);
      }
      return times;
    },
    [MOVES, STEPS.map(([key]) => key)] as const,
  );

export const bench = () =>
  visiting(async (visit) => {
    const { times: alone, nodes } = inNode();
    const page = await openMat(visit);
    const times = await inChromium(page);
    await page.context().close();
    return [
      {
        name: 'membrane-drag-chromium',
        ms: median(times),
        ratio: median(times) / median(alone),
        against: 'the solve alone in Node, the same pin of the same plan moved the same way',
        nodes,
        nodeMs: Math.round(median(alone) * 10) / 10,
      },
    ];
  });
