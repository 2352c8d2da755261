import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { complaintsAbout, PLANNING, QUICK, wrongWith } from './complaints.ts';
import { mutatedRecord } from './mutated-record.ts';

const RUNS = 2_000;
/** s. On a machine that does other things besides; alone the slowest takes about one. */
const PATIENCE = 30;

/** One command for each record, so that each sees more than a hundred; plans take longer. */
const command = fc.oneof(
  { weight: 120, arbitrary: fc.constantFrom(...QUICK) },
  { weight: 1, arbitrary: fc.constantFrom(...PLANNING) },
);

it(`C20: ${RUNS} mutated records, each through check and one command, end as check says, or are answered`, async () => {
  let sound = 0;
  let slowest = { line: '', ms: 0 };
  await fc.assert(
    fc.asyncProperty(mutatedRecord, command, async (text, line) => {
      const judged = await complaintsAbout(text, [line]);
      if (judged.sound) sound += 1;
      if (judged.slowest.ms > slowest.ms) slowest = judged.slowest;
      expect(judged.complaints).toEqual([]);
    }),
    { numRuns: RUNS },
  );
  // Records that are all refused at the gate would show nothing of what lies behind it.
  expect(sound).toBeGreaterThan(RUNS / 10);
  expect(slowest.ms, slowest.line).toBeLessThan(1_000 * PATIENCE);
}, 600_000);

describe('what is wrong with an ending', () => {
  const sound = { code: 0, out: 'standard input: sound\n', err: '' } as const;
  const waits = {
    ...sound,
    out: `${sound.out}standard input: a forecast waits for this: pattern.sizes: none. Enter one.\n`,
  };
  const refuses = (...faults: readonly string[]) =>
    ({
      code: 2,
      out: '',
      err: faults.map((each) => `standard input: ${each}\n`).join(''),
    }) as const;
  const sizes = 'pattern.sizes: none. Enter one.';
  const yarn = 'yarns: none. Enter one.';
  const log = 'pace.log[0]: nobody knits at that pace. Check it.';
  const pace = {
    ...sound,
    out: `${sound.out}standard input: the time it takes waits for this: ${log}\n`,
  };

  it.each([
    ['a record that is not sound is answered', sound, refuses(yarn)],
    ['it is refused for something else', refuses(sizes), refuses(yarn)],
    ['it is refused for a part of what check names', refuses(sizes), refuses(sizes, yarn)],
    ['a sound one is refused for what check does not name', refuses(yarn), sound],
    ['so too where a forecast waits for something', refuses(sizes, yarn), waits],
    ['a fault has no file', { ...refuses(), err: `${sizes}\n` }, waits],
    ['a refusal says nothing', refuses(), sound],
    ['a refusal prints', { ...refuses(sizes), out: 'so' }, waits],
  ] as const)('C20: %s', (_, ending, check) => {
    expect(wrongWith(ending, check, '{}')).not.toBe(null);
  });

  it.each([
    [
      'a record that is not sound is refused with the lines of check',
      refuses(sizes),
      refuses(sizes),
    ],
    ['what a forecast waits for', refuses(sizes), waits],
    ['what another part waits for', refuses(log), pace],
    ['an answer', { ...sound, out: 'so' }, sound],
  ] as const)('C20: nothing is wrong with %s', (_, ending, check) => {
    expect(wrongWith(ending, check, '{}')).toBe(null);
  });
});
