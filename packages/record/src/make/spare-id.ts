const SIGNS = '23456789abcdefghjkmnpqrstuvwxyz';
const LENGTH = 10;

/**
 * An id that is not taken: ten signs without those that look alike, after an optional prefix.
 * `random` gives numbers from 0 up to but not including 1; it is handed in, so that this is pure.
 */
export const spareId = (
  random: () => number,
  options: { prefix?: string; taken?: Iterable<string> } = {},
): string => {
  const taken = new Set(options.taken ?? []);
  const draw = () => SIGNS[Math.floor(random() * SIGNS.length)] ?? '2';
  const candidate = () => `${options.prefix ?? ''}${Array.from({ length: LENGTH }, draw).join('')}`;
  let id = candidate();
  for (let more = 2; taken.has(id); more += 1) id = `${candidate()}-${more}`;
  return id;
};
