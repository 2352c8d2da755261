import * as z from 'zod';
import { bare, objectSchemaFor, schemaBelow } from '../schema/walk.ts';

/**
 * A copy of a value with its keys in the order of the schema, whatever order they were set in. Keys
 * that the schema does not know follow in alphabetical order; fields without a value are left out.
 */
export const inSchemaOrder = (value: unknown, schema: unknown): unknown => {
  if (Array.isArray(value)) {
    const list = bare(schema);
    return value.map((each) =>
      inSchemaOrder(each, list instanceof z.ZodArray ? list.element : null),
    );
  }
  if (typeof value !== 'object' || value === null) return value;
  const fields = value as Record<string, unknown>;
  return Object.fromEntries(
    orderedKeys(fields, schema).map((key) => [
      key,
      inSchemaOrder(fields[key], schemaBelow(schema, value, key)),
    ]),
  );
};

const orderedKeys = (fields: Record<string, unknown>, schema: unknown): string[] => {
  const known = Object.keys(objectSchemaFor(schema, fields)?.shape ?? {});
  const others = Object.keys(fields)
    .filter((key) => !known.includes(key))
    .sort();
  return [...known, ...others].filter((key) => fields[key] !== undefined);
};
