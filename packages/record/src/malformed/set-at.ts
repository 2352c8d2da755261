/** The steps of a path as messages write it: `evidence[0].count` is `evidence`, 0, `count`. */
const steps = (path: string): (string | number)[] =>
  [...path.matchAll(/\[(\d+)\]|([^.[\]]+)/g)].map(([, index, key]) =>
    index === undefined ? (key ?? '') : Number(index),
  );

/** A copy of a plain value that differs at one path; `undefined` removes what is there. */
export const setAt = (root: unknown, path: string, value: unknown): unknown => {
  const copy = structuredClone(root) as Record<string | number, unknown>;
  const way = steps(path);
  const last = way.pop() ?? '';
  const holder = way.reduce((at, step) => at[step] as Record<string | number, unknown>, copy);
  if (value === undefined) delete holder[last];
  else holder[last] = value;
  return copy;
};
