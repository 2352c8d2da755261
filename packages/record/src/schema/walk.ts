import * as z from 'zod';

/** The schema under optional and nullable wrappers. */
export const bare = (schema: unknown): unknown =>
  schema instanceof z.ZodOptional || schema instanceof z.ZodNullable
    ? bare(schema.unwrap())
    : schema;

/** The object schema that a value belongs to: the object itself, or the branch of a union that its `kind` names. */
export const objectSchemaFor = (schema: unknown, value: unknown): z.ZodObject | null => {
  const inner = bare(schema);
  if (inner instanceof z.ZodObject) return inner;
  if (!(inner instanceof z.ZodDiscriminatedUnion)) return null;
  const key = inner.def.discriminator;
  const given = (value as Record<string, unknown> | null | undefined)?.[key];
  const branch = inner.options.find(
    (option) => option instanceof z.ZodObject && option.shape[key]?.safeParse(given).success,
  );
  return branch instanceof z.ZodObject ? branch : null;
};

/** The schema of one step below: a field of an object or an element of a list; null where there is none. */
export const schemaBelow = (schema: unknown, value: unknown, step: PropertyKey): unknown => {
  const inner = bare(schema);
  if (inner instanceof z.ZodArray) return inner.element;
  return objectSchemaFor(inner, value)?.shape[String(step)] ?? null;
};
