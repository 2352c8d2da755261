import type { Fault } from '@dryflat/engine/units';
import { EXAMPLES, findExample, writeRecord } from '@dryflat/record';
import { refused } from '../faults.ts';
import { hanging, padEnd, widthOf } from '../print/text.ts';
import { done, type Ending, type Surroundings } from '../surroundings.ts';
import { give, type OutputFlags } from './give.ts';

const unknown = (name: string): Fault => ({
  code: 'example-unknown',
  field: 'NAME',
  given: name,
  problem: 'there is no example of this name',
  mend: `Choose from: ${EXAMPLES.map(({ slug }) => slug).join(', ')}.`,
});

const list = (): string => {
  const width = Math.max(...EXAMPLES.map(({ slug }) => widthOf(slug))) + 2;
  const lines = EXAMPLES.flatMap(({ slug, story }) => hanging(padEnd(slug, width), story));
  return `${lines.join('\n')}\n`;
};

/** `dryflat example [NAME]`: the examples in a list, or one of them as a record. */
export const exampleCommand = async (
  name: string | undefined,
  flags: OutputFlags,
  surroundings: Surroundings,
): Promise<Ending> => {
  if (name === undefined) return done(list());
  const example = findExample(name);
  if (!example) return refused('dryflat example', [unknown(name)]);
  return give(writeRecord(example.record), flags, surroundings);
};
