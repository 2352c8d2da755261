import schema from '@dryflat/record/schema.json' with { type: 'json' };
import { done, type Ending } from '../surroundings.ts';

/** `dryflat schema`: the published JSON Schema of the current version, as it stands. */
export const schemaCommand = (): Ending => done(`${JSON.stringify(schema, null, 2)}\n`);
