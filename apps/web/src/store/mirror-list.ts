import type * as Y from 'yjs';
import { isObject, type Json, sameJson } from './json.ts';

/** What list edits need of the mirror, handed in so that the two files do not need each other. */
export interface Mirror {
  readonly toShared: (value: Json) => unknown;
  readonly editWithin: (child: unknown, before: unknown, after: Json) => boolean;
}

type SharedList = Y.Array<unknown>;

/** Lists whose members all carry distinct ids are matched by id; other lists by place. */
export const editList = (
  target: SharedList,
  before: readonly Json[],
  after: readonly Json[],
  mirror: Mirror,
): void => {
  const edit = keyed(before) && keyed(after) ? editById : editByPlace;
  edit(target, before, after, mirror);
};

const idOf = (value: Json | undefined): string | null =>
  isObject(value) && typeof value.id === 'string' ? value.id : null;

const keyed = (list: readonly Json[]): boolean => {
  const ids = list.map(idOf);
  return !ids.includes(null) && new Set(ids).size === ids.length;
};

/**
 * Members keep their shared value while they keep their order; one that moved is taken out and put
 * in again at its new place.
 */
const editById = (
  target: SharedList,
  before: readonly Json[],
  after: readonly Json[],
  mirror: Mirror,
): void => {
  const wanted = new Set(after.map(idOf));
  const now = [...before];
  const remove = (at: number): void => {
    target.delete(at, 1);
    now.splice(at, 1);
  };
  for (let at = now.length - 1; at >= 0; at--) if (!wanted.has(idOf(now[at]))) remove(at);
  after.forEach((value, at) => {
    const id = idOf(value);
    if (idOf(now[at]) !== id && idOf(now[at + 1]) === id) remove(at);
    if (idOf(now[at]) === id) {
      replaceAt(target, at, now[at] as Json, value, mirror);
      return;
    }
    const later = now.findIndex((each, i) => i > at && idOf(each) === id);
    if (later >= 0) remove(later);
    target.insert(at, [mirror.toShared(value)]);
    now.splice(at, 0, value);
  });
  while (now.length > after.length) remove(now.length - 1);
};

/** The equal head and tail stay; the middle is edited member by member, then cut or filled up. */
const editByPlace = (
  target: SharedList,
  before: readonly Json[],
  after: readonly Json[],
  mirror: Mirror,
): void => {
  const head = commonHead(before, after);
  const tail = commonTail(before, after, head);
  const old = before.slice(head, before.length - tail);
  const wanted = after.slice(head, after.length - tail);
  const both = Math.min(old.length, wanted.length);
  for (let i = 0; i < both; i++)
    replaceAt(target, head + i, old[i] as Json, wanted[i] as Json, mirror);
  if (old.length > both) target.delete(head + both, old.length - both);
  if (wanted.length > both) target.insert(head + both, wanted.slice(both).map(mirror.toShared));
};

const replaceAt = (
  target: SharedList,
  at: number,
  before: Json,
  after: Json,
  mirror: Mirror,
): void => {
  if (sameJson(before, after) || mirror.editWithin(target.get(at), before, after)) return;
  target.delete(at, 1);
  target.insert(at, [mirror.toShared(after)]);
};

const commonHead = (a: readonly Json[], b: readonly Json[]): number => {
  let n = 0;
  while (n < a.length && n < b.length && sameJson(a[n], b[n])) n++;
  return n;
};

const commonTail = (a: readonly Json[], b: readonly Json[], head: number): number => {
  let n = 0;
  while (
    n < a.length - head &&
    n < b.length - head &&
    sameJson(a[a.length - 1 - n], b[b.length - 1 - n])
  )
    n++;
  return n;
};
