import { joined, lettersAt, viewOf } from './bytes.ts';

/** ICC.1:2022, sections 7.2 and 7.3: lengths of the header and of an entry of the table of tags. */
const HEADER = 128;
const ENTRY = 12;

/** What the header says of colours: version, class, spaces; intent and white. The rest (day, device, maker) is left 0. */
const OF_COLOURS = [
  [8, 24],
  [36, 40],
  [64, 80],
] as const;

/** Numbers behind the head of a `para`, by its kind of function: section 10.18. */
const PARAMETERS = [1, 3, 4, 5, 7];

/** Length of an element from what it says itself, by its type: sections 10.5, 10.6, 10.18, 10.22, 10.31. */
const LENGTHS: Readonly<Record<string, (element: DataView) => number>> = {
  'XYZ ': () => 20,
  sf32: () => 44,
  cicp: () => 12,
  curv: (element) => 12 + 2 * element.getUint32(8),
  para: (element) => 12 + 4 * (PARAMETERS[element.getUint16(8)] ?? Number.NaN),
};

/** Tags that a colour on a screen is worked out from. */
const KEPT: ReadonlySet<string> = new Set([
  ...['rXYZ', 'gXYZ', 'bXYZ', 'wtpt', 'chad'],
  ...['rTRC', 'gTRC', 'bTRC', 'kTRC', 'cicp'],
]);
const NEEDED = [['kTRC'], ['rXYZ', 'gXYZ', 'bXYZ', 'rTRC', 'gTRC', 'bTRC']] as const;

/** Texts that every profile must have: here a `mluc` with no text in any language. */
const NAMES: readonly string[] = ['desc', 'cprt'];
const NO_TEXT = Uint8Array.from([...'mluc\0\0\0\0\0\0\0\0\0\0\0\x0c'].map((c) => c.charCodeAt(0)));

interface Tag {
  readonly name: string;
  readonly element: Uint8Array;
}

const tagAt = (profile: Uint8Array, view: DataView, at: number): Tag[] => {
  const name = lettersAt(profile, at, 4);
  if (NAMES.includes(name)) return [{ name, element: NO_TEXT }];
  const [from, length] = [view.getUint32(at + 4), view.getUint32(at + 8)];
  if (!KEPT.has(name) || length < 12 || from + length > profile.length) return [];
  const whole = profile.subarray(from, from + length);
  const own = LENGTHS[lettersAt(whole, 0, 4)]?.(viewOf(whole)) ?? Number.NaN;
  return own <= length ? [{ name, element: whole.subarray(0, own) }] : [];
};

const tagsOf = (profile: Uint8Array): Tag[] => {
  const view = viewOf(profile);
  const count = view.getUint32(HEADER);
  if (count > (profile.length - HEADER - 4) / ENTRY) return [];
  return Array.from({ length: count }, (_, k) =>
    tagAt(profile, view, HEADER + 4 + ENTRY * k),
  ).flat();
};

/** Elements each once, on whole words, with where each begins: many profiles share one curve. */
const laidOut = (tags: readonly Tag[]) => {
  const places = new Map<string, number>();
  const parts: Uint8Array[] = [];
  let end = HEADER + 4 + ENTRY * tags.length;
  const begins = tags.map(({ element }) => {
    const key = element.join();
    const known = places.get(key);
    if (known !== undefined) return known;
    const begin = end;
    const words = new Uint8Array(4 * Math.ceil(element.length / 4));
    words.set(element);
    parts.push(words);
    places.set(key, begin);
    end += words.length;
    return begin;
  });
  return { begins, parts, end };
};

/**
 * Of a colour profile (ICC.1) only what colours are worked out from: no name, no maker, no device and
 * no day. Null where it is no profile, has no such numbers, or would grow.
 */
export const onlyColours = (given: Uint8Array): Uint8Array | null => {
  if (given.length < HEADER + 4 || lettersAt(given, 36, 4) !== 'acsp') return null;
  const size = viewOf(given).getUint32(0);
  if (size > given.length || size < HEADER + 4) return null;
  const tags = tagsOf(given.subarray(0, size));
  const has = (name: string): boolean => tags.some((tag) => tag.name === name);
  if (!NEEDED.some((names) => names.every(has))) return null;
  const { begins, parts, end } = laidOut(tags);
  if (end > given.length) return null;
  const head = new Uint8Array(HEADER + 4 + ENTRY * tags.length);
  const view = viewOf(head);
  for (const [from, to] of OF_COLOURS) head.set(given.subarray(from, to), from);
  view.setUint32(0, end);
  view.setUint32(HEADER, tags.length);
  tags.forEach(({ name, element }, k) => {
    const at = HEADER + 4 + ENTRY * k;
    for (let letter = 0; letter < 4; letter += 1) head[at + letter] = name.charCodeAt(letter);
    view.setUint32(at + 4, begins[k]!);
    view.setUint32(at + 8, element.length);
  });
  return joined([head, ...parts]);
};
