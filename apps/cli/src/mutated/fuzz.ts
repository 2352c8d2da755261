import fc from 'fast-check';
import { complaintsAbout, type Judged, PLANNING, QUICK } from './complaints.ts';
import { EXTREME_RECORDS } from './extreme-records.ts';
import { mutatedRecord } from './mutated-record.ts';

export interface Fuzzed extends Judged {
  /** What was run: a number among the mutated ones, or what an extreme one has too much of. */
  readonly name: string;
  readonly text: string;
}

/**
 * Runs mutated records through the commands one by one; the same seed makes the same records. With
 * `every` each goes through every command, else through two in turn, and through a plan now and then.
 */
export async function* fuzzMutated(
  count: number,
  { seed, every }: { readonly seed: number; readonly every: boolean },
): AsyncGenerator<Fuzzed> {
  const texts = fc.sample(mutatedRecord, { numRuns: count, seed });
  for (const [k, text] of texts.entries()) {
    const some = [QUICK[k % QUICK.length]!, QUICK[(k + 6) % QUICK.length]!];
    const lines = every
      ? [...QUICK, ...PLANNING]
      : [...some, ...(k % 50 === 49 ? [PLANNING[((k - 49) / 50) % PLANNING.length]!] : [])];
    yield { name: `record ${k + 1}`, text, ...(await complaintsAbout(text, lines)) };
  }
}

/** Runs the records at the bounds of sense through every command. */
export async function* fuzzExtremes(): AsyncGenerator<Fuzzed> {
  for (const [name, make] of EXTREME_RECORDS) {
    const text = JSON.stringify(make());
    yield { name, text, ...(await complaintsAbout(text, [...QUICK, ...PLANNING], true)) };
  }
}
