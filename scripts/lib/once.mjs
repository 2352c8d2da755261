// @ts-check

/**
 * What is made when it is first asked for, and then kept: tests of one file share what takes long, and
 * importing the file makes none of it.
 * @template T
 * @param {() => T} make
 * @returns {() => T}
 */
export const once = (make) => {
  /** @type {{ value: T } | null} */
  let made = null;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
};
