import type { GarmentRecord } from '@dryflat/record';
import { routesAssumed } from '@dryflat/record/routes';

const FIELD = /\s*\((\w+)(?:\.\w+)?\)\.$/;

/** What a record does not say of its pace, of what counts or of how much is knit, and is taken as usual; sentences. */
export const assumedOf = (record: GarmentRecord, part: 'pace' | 'plan' | 'progress'): string[] =>
  routesAssumed(record)
    .filter((each) => FIELD.exec(each)?.[1] === part)
    .map((each) => each.replace(FIELD, '.'));
