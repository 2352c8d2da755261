/** Plain JSON, as records and settings are made of. */
export type Json = null | boolean | number | string | readonly Json[] | JsonObject;
export interface JsonObject {
  readonly [key: string]: Json;
}

export const isObject = (value: unknown): value is JsonObject =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

export const isList = (value: unknown): value is readonly Json[] => Array.isArray(value);

/** Deep equality of JSON; a key that holds `undefined` counts as absent. */
export const sameJson = (a: unknown, b: unknown): boolean => {
  if (Object.is(a, b)) return true;
  if (isList(a) && isList(b))
    return a.length === b.length && a.every((each, i) => sameJson(each, b[i]));
  if (isObject(a) && isObject(b)) return sameObject(a, b);
  return false;
};

const sameObject = (a: JsonObject, b: JsonObject): boolean => {
  const keys = presentKeys(a);
  return (
    keys.length === presentKeys(b).length &&
    keys.every((key) => b[key] !== undefined && sameJson(a[key], b[key]))
  );
};

/** Keys that hold something: `undefined` is how a draft says "left out". */
export const presentKeys = (value: JsonObject): string[] =>
  Object.keys(value).filter((key) => value[key] !== undefined);

/**
 * `next`, with every part that equals its counterpart in `previous` taken from `previous`, so that
 * a view of one part of a record is not drawn again when another part changes.
 */
export const shareStructure = <T>(previous: unknown, next: T): T => {
  if (sameJson(previous, next)) return previous as T;
  if (isList(previous) && isList(next))
    return next.map((each, i) => shareStructure(previous[i], each)) as T;
  if (isObject(previous) && isObject(next))
    return Object.fromEntries(
      Object.entries(next).map(([key, each]) => [key, shareStructure(previous[key], each)]),
    ) as T;
  return next;
};
