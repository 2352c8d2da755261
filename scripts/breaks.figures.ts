import { isDeepStrictEqual } from 'node:util';
import type { Figure } from './lib/figures.mjs';
import { insideTheApp } from './lib/inside.mjs';
import { NODES, nodeOf, smokeOf } from './lib/nodes.mjs';

/** What a Node gives; null, and why, where it gives nothing. */
const given = async (major: number) => {
  try {
    return await smokeOf(await nodeOf(major));
  } catch (error) {
    console.error(`Node ${major}: ${error}`);
    return null;
  }
};

/** What is shipped with its licences, and where it runs. */
export async function* figures(full: boolean): AsyncIterable<Figure> {
  const { inside, untold } = await insideTheApp();
  yield {
    name: `packages without the text of their licence, of ${inside.length} inside the app`,
    value: untold.length,
    unit: '',
    goal: { exactly: 0 },
  };
  const nodes = full ? NODES : NODES.slice(-1);
  const here = await smokeOf(process.execPath);
  let same = 0;
  for (const major of nodes) if (isDeepStrictEqual(await given(major), here)) same += 1;
  yield {
    name: `versions of Node that serve the app and give the same at the command line, of ${nodes.join(', ')}`,
    value: same,
    unit: '',
    goal: { least: nodes.length },
  };
}
