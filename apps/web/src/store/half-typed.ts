/**
 * Texts that are kept as typed and are in no record yet, of the drafts of a garment by path. What stands
 * under `aside/` is kept beside the record and never becomes part of it.
 */
export const halfTyped = (drafts: Readonly<Record<string, string>>): readonly string[] =>
  Object.entries(drafts).flatMap(([path, text]) => (path.startsWith('aside/') ? [] : [text]));
