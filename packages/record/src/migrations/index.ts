import { oneToTwo } from './one-to-two.ts';
import type { Loss, MigrationStep, PlainRecord } from './step.ts';
import { threeToFour } from './three-to-four.ts';
import { twoToThree } from './two-to-three.ts';

export type { Loss, MigrationStep, PlainRecord } from './step.ts';

/** Every step, oldest first; each starts where the one before it ends. */
export const STEPS: readonly MigrationStep[] = [oneToTwo, twoToThree, threeToFour];

/** The oldest version that can still be read. */
export const OLDEST_VERSION = 1;

/** Carries a plain record of version `from` up to the current version. */
export const migrateUp = (plain: PlainRecord, from: number): PlainRecord =>
  STEPS.filter((step) => step.from >= from).reduce((record, step) => step.up(record), plain);

/** Carries a plain record of the current version down to `to`, and says what was lost on the way. */
export const migrateDown = (
  plain: PlainRecord,
  to: number,
): { readonly plain: PlainRecord; readonly lost: readonly Loss[] } => {
  const lost: Loss[] = [];
  let record = plain;
  for (const step of STEPS.filter((each) => each.from >= to).reverse()) {
    const older = step.down(record);
    record = older.plain;
    lost.push(...older.lost);
  }
  return { plain: record, lost };
};
