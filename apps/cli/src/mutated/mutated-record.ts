import { CURRENT_VERSION, EXAMPLES } from '@dryflat/record';
import { anyRecord } from '@dryflat/record/arbitrary';
import fc from 'fast-check';

type Step = string | number;
type Holder = Record<Step, unknown>;

/** Ways to every value of a record, the record itself left out. */
const waysIn = (value: unknown, way: readonly Step[] = []): (readonly Step[])[] => {
  if (typeof value !== 'object' || value === null) return [way];
  const below = Object.entries(value).flatMap(([key, each]) =>
    waysIn(each, [...way, Array.isArray(value) ? Number(key) : key]),
  );
  return way.length === 0 ? below : [way, ...below];
};

const holderOf = (root: unknown, way: readonly Step[]): Holder =>
  way.slice(0, -1).reduce((at, step) => at[step] as Holder, root as Holder);

const NUMBERS = [
  0,
  -0,
  -1,
  0.001,
  0.3,
  0.5,
  1,
  7,
  59.9,
  99,
  100,
  101,
  300,
  5_000,
  9_999.5,
  10_000,
  50_000,
  99_999,
  100_000,
  100_001,
  5e-324,
  1e-9,
  2 ** 31,
  2 ** 53,
  1e300,
  1.797e308,
];

const TEXTS = [
  '',
  ' ',
  'a'.repeat(200),
  'a'.repeat(4_001),
  'toString',
  '__proto__',
  'constructor',
  'hasOwnProperty',
  'chest',
  'custom',
  'back',
  '\u0000\u001b[31m\u0007',
  'a\nb\r\tc',
  '\u202egnirts\u2066',
  '\u2028\u0085',
  '\u061c\u200b\u2060\u{e0041}',
  '{mm:12}',
  '{mm:1e999}',
  '{mm:x}',
  '<script>alert(1)</script>',
  ']]>&amp;"\'',
  '../../etc',
  '🧶🧶',
  'e\u0301\u0301\u0301',
  '\ud800',
  'אבג',
  '9999-12-31',
  '0001-01-01',
  '2031-02-29',
  '2031-04-09',
  '2031-04-09T18:30:00Z',
  '9999-12-31T23:59:59Z',
  '1970-01-01T00:00:00Z',
  'NaN',
  '12,5',
];

const OTHERS: readonly unknown[] = [null, true, false, [], {}, [[]], { kind: 'count' }];

const anything = fc.oneof(
  { weight: 5, arbitrary: fc.constantFrom<unknown>(...NUMBERS) },
  { weight: 2, arbitrary: fc.double({ noNaN: true, noDefaultInfinity: true }) },
  { weight: 4, arbitrary: fc.constantFrom<unknown>(...TEXTS) },
  { weight: 1, arbitrary: fc.constantFrom(...OTHERS) },
);

/** One way to spoil a record; `at` picks the place among all that there are. */
type Change = (root: unknown, at: number) => void;

const put =
  (value: unknown): Change =>
  (root, at) => {
    const ways = waysIn(root);
    const way = ways[at % ways.length];
    if (way !== undefined) holderOf(root, way)[way.at(-1)!] = value;
  };

/** Another value of the same type, so that most changes leave a record that can still be read. */
const alter =
  <T>(type: 'number' | 'string', other: (value: T) => T): Change =>
  (root, at) => {
    const ways = waysIn(root).filter(
      (way) =>
        typeof holderOf(root, way)[way.at(-1)!] === type &&
        !['version', 'format', 'data'].includes(String(way.at(-1))),
    );
    const way = ways[at % ways.length];
    if (way === undefined) return;
    const holder = holderOf(root, way);
    holder[way.at(-1)!] = other(holder[way.at(-1)!] as T);
  };

const FACTORS = [0.01, 0.1, 0.3, 0.5, 0.7, 0.9, 1.1, 1.4, 2, 3, 5, 10, 100, -1];

const remove: Change = (root, at) => {
  const ways = waysIn(root);
  const way = ways[at % ways.length];
  if (way === undefined) return;
  const holder = holderOf(root, way);
  const last = way.at(-1)!;
  if (Array.isArray(holder)) holder.splice(Number(last), 1);
  else delete holder[last];
};

const listAt = (root: unknown, at: number): unknown[] | undefined => {
  const lists = waysIn(root).flatMap((way) => {
    const value = holderOf(root, way)[way.at(-1)!];
    return Array.isArray(value) ? [value as unknown[]] : [];
  });
  return lists[at % lists.length];
};

const empty: Change = (root, at) => {
  listAt(root, at)?.splice(0);
};

/** The last entry again and again, under ids of their own where entries have one. */
const lengthen =
  (times: number): Change =>
  (root, at) => {
    const list = listAt(root, at);
    const last = list?.at(-1);
    if (list === undefined || last === undefined) return;
    for (let k = 0; k < times; k++) {
      const copy = structuredClone(last);
      if (typeof copy === 'object' && copy !== null && 'id' in copy) copy.id = `again-${k}`;
      list.push(copy);
    }
  };

const swap: Change = (root, at) => {
  const ways = waysIn(root);
  const [a, b] = [ways[at % ways.length], ways[(at * 7 + 3) % ways.length]];
  if (a === undefined || b === undefined) return;
  const [left, right] = [holderOf(root, a), holderOf(root, b)];
  const was = left[a.at(-1)!];
  left[a.at(-1)!] = structuredClone(right[b.at(-1)!]);
  right[b.at(-1)!] = structuredClone(was);
};

const strange =
  (key: string): Change =>
  (root, at) => {
    const ways = waysIn(root);
    const way = ways[at % ways.length];
    if (way === undefined) return;
    const holder = holderOf(root, way);
    if (!Array.isArray(holder)) holder[key] = { [key]: [1, { [key]: key }] };
  };

const change: fc.Arbitrary<Change> = fc.oneof(
  {
    weight: 12,
    arbitrary: fc.constantFrom(...FACTORS).map((by) => alter<number>('number', (n) => n * by)),
  },
  {
    weight: 4,
    arbitrary: fc.constantFrom(...NUMBERS).map((to) => alter<number>('number', () => to)),
  },
  {
    weight: 4,
    arbitrary: fc.constantFrom(...TEXTS).map((to) => alter<string>('string', () => to)),
  },
  { weight: 1, arbitrary: anything.map(put) },
  { weight: 2, arbitrary: fc.constant(remove) },
  { weight: 1, arbitrary: fc.constant(empty) },
  { weight: 1, arbitrary: fc.constantFrom(1, 3, 30, 400).map(lengthen) },
  { weight: 1, arbitrary: fc.constant(swap) },
  {
    weight: 1,
    arbitrary: fc.constantFrom('moons', 'toString', 'constructor', 'a\u0007b').map(strange),
  },
);

const base = fc.oneof(
  { weight: 3, arbitrary: fc.constantFrom(...EXAMPLES.map(({ record }) => record)) },
  { weight: 1, arbitrary: anyRecord },
);

/** The text of a record after one to three changes; now and then of a newer version, or cut off. */
export const mutatedRecord: fc.Arbitrary<string> = fc
  .record({
    base,
    changes: fc.array(fc.tuple(change, fc.nat(100_000)), { minLength: 1, maxLength: 3 }),
    version: fc.oneof(
      { weight: 9, arbitrary: fc.constant(CURRENT_VERSION) },
      { weight: 1, arbitrary: fc.constant(CURRENT_VERSION + 1) },
    ),
    cut: fc.oneof(
      { weight: 40, arbitrary: fc.constant(null) },
      { weight: 1, arbitrary: fc.double({ min: 0, max: 1, noNaN: true }) },
    ),
  })
  .map(({ base: from, changes, version, cut }) => {
    const root: unknown = structuredClone(from);
    for (const [apply, at] of changes) apply(root, at);
    // A change may have turned the version, or all that holds it, into something else.
    const whole = root as { version?: unknown };
    if (whole.version === CURRENT_VERSION) whole.version = version;
    const text = JSON.stringify(root);
    return cut === null ? text : text.slice(0, Math.floor(cut * text.length));
  });
