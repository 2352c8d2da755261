import * as Y from 'yjs';
import { isList, isObject, type Json, type JsonObject, presentKeys, sameJson } from './json.ts';
import { editList } from './mirror-list.ts';

/** What a shared list or map may hold, as far as records need it. */
type Shared = null | boolean | number | string | Y.Map<unknown> | Y.Array<unknown>;

/** A fresh shared value that mirrors `value`: maps for objects, arrays for lists, else the value. */
export const toShared = (value: Json): Shared => {
  if (isList(value)) return sharedList(value);
  if (isObject(value))
    return new Y.Map(presentKeys(value).map((key) => [key, toShared(value[key] as Json)]));
  return value as null | boolean | number | string;
};

const sharedList = (value: readonly Json[]): Y.Array<unknown> => {
  const list = new Y.Array<unknown>();
  list.push(value.map(toShared));
  return list;
};

/**
 * Edits `target`, which mirrors `before`, until it mirrors `after`: only what differs is touched,
 * so that edits made elsewhere to other fields survive a merge. Call inside one transaction.
 */
export const editMap = (target: Y.Map<unknown>, before: JsonObject, after: JsonObject): void => {
  for (const key of presentKeys(before)) if (after[key] === undefined) target.delete(key);
  for (const key of presentKeys(after)) {
    const old = before[key];
    const wanted = after[key] as Json;
    if (!sameJson(old, wanted) && !editWithin(target.get(key), old, wanted))
      target.set(key, toShared(wanted));
  }
};

/** Edits a shared child in place; false where it has to be replaced whole. */
const editWithin = (child: unknown, before: unknown, after: Json): boolean => {
  if (child instanceof Y.Map && isObject(before) && isObject(after)) {
    editMap(child, before, after);
    return true;
  }
  if (child instanceof Y.Array && isList(before) && isList(after)) {
    editList(child, before, after, { toShared, editWithin });
    return true;
  }
  return false;
};
