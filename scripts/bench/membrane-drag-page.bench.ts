import { join } from 'node:path';
import { build } from 'esbuild';
import { dragTimes, sizeWith } from '../../packages/engine/src/membrane/check/drag.ts';
import { pinnedPiece } from '../../packages/engine/src/membrane/check/piece.ts';
import { ROOT } from '../lib/root.mjs';
import { visiting } from './browser.ts';

const NODES = 2000;

const median = (values: readonly number[]): number =>
  [...values].sort((a, b) => a - b)[values.length >> 1] ?? Number.NaN;

/** The same drags in a page: solver and piece bundled into one script. */
const pageScript = async (): Promise<string> => {
  const made = await build({
    stdin: {
      contents: `
        import { dragTimes, sizeWith } from './drag.ts';
        import { pinnedPiece } from './piece.ts';
        globalThis.dragTimesAt = (nodes) => dragTimes(pinnedPiece(sizeWith(nodes)));`,
      resolveDir: join(ROOT, 'packages/engine/src/membrane/check'),
      loader: 'ts',
    },
    bundle: true,
    write: false,
    format: 'iife',
    logLevel: 'error',
  });
  return made.outputFiles[0]!.text;
};

/** One pin dragged at 2,000 nodes: the solve in Chromium beside the same solve in Node. */
export const bench = () =>
  visiting(async ({ browser }) => {
    const question = pinnedPiece(sizeWith(NODES));
    const alone = median(dragTimes(question));
    const page = await browser.newPage();
    await page.setContent('<title>drag</title>');
    await page.evaluate(await pageScript());
    const times = await page.evaluate(
      (nodes) => (globalThis as unknown as { dragTimesAt(n: number): number[] }).dragTimesAt(nodes),
      NODES,
    );
    return [
      {
        name: 'membrane-drag-2000-chromium',
        ms: median(times),
        ratio: median(times) / alone,
        against: 'the same drags solved by Node in the same run',
        nodes: question.mesh.points.length / 2,
      },
    ];
  });
