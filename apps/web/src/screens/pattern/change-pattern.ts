import { findLandmark } from '@dryflat/engine/garment';
import type { GarmentRecord, Pattern, PatternMeasurement } from '@dryflat/record';

/** An id for a place of the knitter's own, made from its name; never that of a known landmark. */
export const ownLandmark = (name: string): string => {
  const slug = name
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, 70);
  if (slug === '' || slug === 'custom') return 'own-place';
  return findLandmark(slug) === null ? slug : `${slug}-own`;
};

/** Where nobody said a size, the pattern has one. */
const ONE_SIZE = 'One size';

/** Adds a row without numbers at a landmark; `custom` makes a place of its own. */
export const addRow = (
  draft: GarmentRecord,
  row: {
    id: string;
    name: string;
    landmark: string;
    direction?: 'width' | 'length';
  },
): void => {
  const { pattern } = draft;
  if (pattern.sizes.length === 0) setSizes(pattern, [ONE_SIZE]);
  const known = findLandmark(row.landmark);
  pattern.measurements.push({
    id: row.id,
    name: row.name,
    landmark: known ? row.landmark : ownLandmark(row.name),
    ...(!known && row.direction && { direction: row.direction }),
    worked: known?.worked ?? (row.direction === 'length' ? 'to-length' : 'counted'),
    values: pattern.sizes.map(() => null),
  });
};

/** Puts sizes where there are none; a single one is the one that is knit. */
export const setSizes = (pattern: Pattern, sizes: readonly string[]): void => {
  pattern.sizes = [...sizes];
  const [only] = sizes;
  if (sizes.length === 1 && only !== undefined) pattern.chosen = only;
};

/** Adds a size at the end; every row gets an empty place for it. */
export const addSize = (pattern: Pattern, label: string): void => {
  pattern.sizes.push(label);
  for (const row of pattern.measurements) {
    row.values.push(null);
    row.counts?.push(null);
  }
};

/** A name for a size that is not taken yet: `2`, `3`. */
export const freeSize = (sizes: readonly string[]): string => {
  let n = sizes.length + 1;
  while (sizes.includes(`${n}`)) n++;
  return `${n}`;
};

export const renameSize = (pattern: Pattern, at: number, label: string): void => {
  const old = pattern.sizes[at];
  pattern.sizes[at] = label;
  if (pattern.chosen === old) pattern.chosen = label;
};

/** Takes a size away with its column; a choice that falls on it becomes open again. */
export const removeSize = (pattern: Pattern, at: number): void => {
  const [gone] = pattern.sizes.splice(at, 1);
  if (pattern.chosen === gone) delete pattern.chosen;
  for (const row of pattern.measurements) {
    row.values.splice(at, 1);
    row.counts?.splice(at, 1);
  }
};

/** The row of an id in a draft; throws where it is gone, since only rows in sight are changed. */
export const rowOf = (draft: GarmentRecord, id: string): PatternMeasurement => {
  const row = draft.pattern.measurements.find((each) => each.id === id);
  if (!row) throw new Error(`no row ${id}`);
  return row;
};

/** Sets a count; a row without any count loses its list. */
export const setCount = (row: PatternMeasurement, at: number, count: number | null): void => {
  const counts = row.values.map((_, i) => (i === at ? count : (row.counts?.[i] ?? null)));
  if (counts.some((each) => each !== null)) row.counts = counts;
  else delete row.counts;
};

/** Moves a row to another place of the garment; what no longer applies there is left out. */
export const setLandmark = (row: PatternMeasurement, landmark: string): void => {
  const known = findLandmark(landmark);
  if (known) {
    row.landmark = known.id;
    delete row.direction;
    if (!known.girth) delete row.span;
    return;
  }
  const direction = findLandmark(row.landmark)?.direction ?? row.direction;
  row.landmark = ownLandmark(row.name);
  if (direction) row.direction = direction;
};

/** What hangs on a row elsewhere in the record goes with it. */
export const removeRow = (draft: GarmentRecord, id: string): void => {
  const isOther = ({ measurement }: { measurement: string }): boolean => measurement !== id;
  draft.pattern.measurements = draft.pattern.measurements.filter((each) => each.id !== id);
  draft.plan.pinTo = draft.plan.pinTo.filter(isOther);
  for (const each of draft.pieces) each.measured = each.measured.filter(isOther);
  for (const each of draft.outcomes) each.measured = each.measured.filter(isOther);
  for (const each of draft.forecasts) each.measurements = each.measurements.filter(isOther);
};

/** How many tape measurements and pins hang on a row. */
export const hangingOn = (record: GarmentRecord, id: string): number =>
  [
    ...record.plan.pinTo,
    ...record.pieces.flatMap(({ measured }) => measured),
    ...record.outcomes.flatMap(({ measured }) => measured),
  ].filter(({ measurement }) => measurement === id).length;

/** Whether the row's number may be flat or around: a girth, or a width at a place of one's own. */
export const mayGoAround = ({
  landmark,
  direction,
}: Pick<PatternMeasurement, 'landmark' | 'direction'>): boolean =>
  findLandmark(landmark)?.girth ?? direction === 'width';
