import { fail, ok, type Result } from '@dryflat/engine/units';
import { type GarmentRecord, garmentRecord } from '../schema/garment.ts';
import { issueFaults } from './issue-faults.ts';
import { knownKeys } from './known-keys.ts';

/** Checks a plain value of the current version against the schema; every fault is reported. */
export const parseStructure = (plain: unknown): Result<GarmentRecord> => {
  const parsed = garmentRecord.safeParse(plain);
  if (parsed.success) return ok(parsed.data);
  return fail(
    ...parsed.error.issues.flatMap((issue) =>
      issueFaults(issue, plain, (path) => knownKeys(plain, path)),
    ),
  );
};
