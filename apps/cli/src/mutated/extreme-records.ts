import { findExample, type GarmentRecord } from '@dryflat/record';

type Loose = GarmentRecord & { [key: string]: unknown };

const example = (slug: string): Loose => {
  const found = findExample(slug);
  if (found === null || found === undefined) throw new Error(`no example ${slug}`);
  return structuredClone(found.record) as Loose;
};

/** Without what was measured, so that nothing contradicts the new numbers. */
const bare = (record: Loose): Loose => {
  record.evidence = [];
  record.pieces = [];
  record.outcomes = [];
  record.forecasts = [];
  return record;
};

const withValues = (record: Loose, value: (mm: number) => number): Loose => {
  for (const row of record.pattern.measurements) {
    row.values = row.values.map((mm) => (mm === null ? null : value(mm)));
    delete row.counts;
  }
  return record;
};

const many = <T>(count: number, each: (k: number) => T): T[] =>
  Array.from({ length: count }, (_, k) => each(k));

const fine = (): Loose => {
  const record = withValues(bare(example('yoke-pullover')), (mm) => Math.min(10_000, mm * 9));
  record.pattern.gauge = { stitches: 300, rows: 300, overMm: 100, state: 'dried' };
  return record;
};

const coarse = (): Loose => {
  const record = withValues(bare(example('waistcoat')), (mm) => Math.max(0.5, mm / 500));
  record.pattern.gauge = { stitches: 1, rows: 1, overMm: 99, state: 'dried' };
  return record;
};

const sizes = (): Loose => {
  const record = example('waistcoat');
  const { pattern } = record;
  const [row] = pattern.measurements.slice(4);
  pattern.sizes = many(60, (k) => `s${k}`);
  pattern.chosen = 's3';
  for (let k = pattern.measurements.length; k < 150 && row; k++)
    pattern.measurements.push({ ...structuredClone(row), id: `x${k}`, name: `X${k}` });
  for (const each of pattern.measurements) {
    const third = each.values[3] ?? null;
    each.values = many(60, (k) => (third === null ? null : third * (1 + k / 100)));
    delete each.counts;
  }
  return record;
};

const readings = (): Loose => {
  const record = example('yoke-pullover');
  const [first] = record.evidence;
  if (first === undefined) return record;
  record.evidence = many(100, (k) => ({
    ...structuredClone(first),
    id: `s${k}`,
    name: `S${k}`,
    readings: many(200, (j) => ({
      ...structuredClone(first.readings[j % first.readings.length]!),
      id: `r${j}`,
    })),
  }));
  return record;
};

const stock = (): Loose => {
  const record = example('waistcoat');
  record.plan.drying = 'pin';
  record.plan.stock = {
    straight: 10_000,
    tPins: 10_000,
    combs: many(100, (k) => ({ lengthMm: 20 + 5 * k, count: 10_000 })),
    wires: many(100, (k) => ({ lengthMm: 100 + 20 * k, count: 10_000 })),
  };
  return record;
};

const moved = (): Loose => {
  const record = example('waistcoat');
  record.plan.pins = many(1_000, (k) => ({
    piece: 'back',
    at: { xMm: k % 500, yMm: (7 * k) % 600 },
    to: { xMm: k % 520, yMm: (7 * k) % 620 },
    around: true,
  }));
  return record;
};

const onMat = (slug: string, sideMm: number): Loose => {
  const record = example(slug);
  record.plan.mat = { widthMm: sideMm, heightMm: sideMm, tileMm: 20 };
  return record;
};

const endless = (): Loose => {
  const record = example('waistcoat');
  record.plan.finishBy = '9999-12-31';
  if (record.pace) record.pace.hours = [1e-9, 0, 0, 0, 0, 0, 0];
  return record;
};

const away = (): Loose => {
  const record = example('waistcoat');
  if (record.pace) {
    record.pace.log = [{ id: 'a', minutes: 10_000, stitches: 1, fabric: 'plain' }];
    record.pace.away = many(1_000, (k) =>
      new Date(Date.UTC(2031, 0, 14 + k)).toISOString().slice(0, 10),
    );
  }
  return record;
};

const repeat = (): Loose => {
  const record = example('waistcoat');
  record.pattern.repeat = { stitches: 1_000, plus: 1_000, rows: 1_000 };
  return record;
};

const weighings = (): Loose => {
  const record = example('hayloft-pullover');
  const drying = record.dryings?.at(-1);
  if (drying === undefined) return record;
  const begun = Date.parse(drying.begun);
  drying.weighings = many(200, (k) => ({
    id: `w${k}`,
    at: new Date(begun + 600_000 * k).toISOString().replace('.000', ''),
    massG: 617 - k,
  }));
  drying.thick = many(20, (k) => ({ id: `t${k}`, name: `t${k}`, share: 0.04, times: 1.5 + k }));
  return record;
};

const people = (): Loose => {
  const record = example('waistcoat');
  record.people = many(50, (k) => ({
    id: `p${k}`,
    name: `P${k}`,
    group: 'woman' as const,
    body: many(20, (j) => ({
      landmark: `b${j}`,
      mm: 300 + j,
      from: { kind: 'measured' as const },
    })),
  }));
  return record;
};

const texts = (): Loose => {
  const record = example('waistcoat');
  record.instructions = many(50, (k) => ({
    id: `i${k}`,
    piece: 'back',
    text: '(k1, p1) '.repeat(440),
  }));
  return record;
};

/** Records at the very bounds of what is taken for one, by what they have too much of. */
export const EXTREME_RECORDS: readonly (readonly [what: string, make: () => GarmentRecord])[] = [
  ['fine stitches and ten metres', fine],
  ['stitches as wide as a hand', coarse],
  ['sixty sizes and 150 rows', sizes],
  ['20,000 readings', readings],
  ['40,000 pins', stock],
  ['1,000 moved pins', moved],
  ['a mat of a million tiles', () => onMat('waistcoat', 20_000)],
  ['a mat as small as a hand', () => onMat('lace-shawl', 50)],
  ['no time to knit', endless],
  ['a slow hand and 1,000 days away', away],
  ['a repeat of 1,000 stitches', repeat],
  ['200 weighings of 20 thick places', weighings],
  ['50 people', people],
  ['200,000 letters of instructions', texts],
];
