import { garmentRecord } from '../schema/garment.ts';
import { objectSchemaFor, schemaBelow } from '../schema/walk.ts';
import type { Path } from './path.ts';
import { valueAt } from './path.ts';

/** Keys that the current schema knows at a path of this value, in the schema's order. */
export const knownKeys = (root: unknown, path: Path): string[] => {
  const schema = path.reduce<unknown>(
    (at, step, depth) => schemaBelow(at, valueAt(root, path.slice(0, depth)), step),
    garmentRecord,
  );
  return Object.keys(objectSchemaFor(schema, valueAt(root, path))?.shape ?? {});
};
