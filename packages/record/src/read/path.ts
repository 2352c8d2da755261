/** A path through a record: keys and indices from the root. */
export type Path = readonly PropertyKey[];

/** `['evidence', 0, 'count']` as the file's reader knows it: `evidence[0].count`; the root is `record`. */
export const pathText = (path: Path): string =>
  path.length === 0
    ? 'record'
    : path
        .map((step, at) =>
          typeof step === 'number' ? `[${step}]` : at === 0 ? String(step) : `.${String(step)}`,
        )
        .join('');

/** What lies at a path of a plain value, or undefined. */
export const valueAt = (root: unknown, path: Path): unknown =>
  path.reduce<unknown>(
    (value, step) =>
      typeof value === 'object' && value !== null
        ? (value as Record<PropertyKey, unknown>)[step]
        : undefined,
    root,
  );

/** Longest text of a given value that a message repeats. */
const LONGEST = 60;

/** A given value as a message repeats it: text in quotes, the rest as JSON, cut to 60 signs. */
export const givenText = (value: unknown): string => {
  const text = value === undefined ? '' : (JSON.stringify(value) ?? String(value));
  return text.length > LONGEST ? `${text.slice(0, LONGEST - 1)}…` : text;
};
