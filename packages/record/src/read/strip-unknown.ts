import { garmentRecord } from '../schema/garment.ts';
import { type Path, pathText, valueAt } from './path.ts';

/**
 * Removes the keys that the current schema does not know, as a newer version may have added them.
 * Returns a copy and the paths of what was left out.
 */
export const stripUnknown = (plain: unknown): { plain: unknown; stripped: string[] } => {
  const copy = structuredClone(plain);
  const stripped: string[] = [];
  for (let found = unknownKeys(copy); found.length > 0; found = unknownKeys(copy)) {
    for (const path of found) {
      stripped.push(pathText(path));
      remove(copy, path);
    }
  }
  return { plain: copy, stripped };
};

const unknownKeys = (plain: unknown): Path[] =>
  (garmentRecord.safeParse(plain).error?.issues ?? []).flatMap((issue) =>
    issue.code === 'unrecognized_keys' ? issue.keys.map((key) => [...issue.path, key]) : [],
  );

const remove = (root: unknown, path: Path): void => {
  const holder = valueAt(root, path.slice(0, -1)) as Record<PropertyKey, unknown>;
  delete holder[path.at(-1) ?? ''];
};
