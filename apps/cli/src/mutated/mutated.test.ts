import fc from 'fast-check';
import { expect, it } from 'vitest';
import { complaintsAbout, PLANNING, QUICK } from './complaints.ts';
import { mutatedRecord } from './mutated-record.ts';

const RUNS = 2_000;
/** s. On a machine that does other things besides; alone the slowest takes about one. */
const PATIENCE = 30;

/** One command for each record, so that each sees more than a hundred; plans take longer. */
const line = fc.oneof(
  { weight: 60, arbitrary: fc.constantFrom(...QUICK) },
  { weight: 1, arbitrary: fc.constantFrom(...PLANNING) },
);

it('C20: mutated records end every command as check says, or are answered', async () => {
  let sound = 0;
  let slowest = { line: '', ms: 0 };
  await fc.assert(
    fc.asyncProperty(mutatedRecord, line, async (text, each) => {
      const judged = await complaintsAbout(text, [each]);
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
