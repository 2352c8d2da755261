import { findLandmark, type SizeTable } from '@dryflat/engine/garment';
import {
  type GarmentRecord,
  mayGoAround,
  type Pattern,
  type PatternMeasurement,
  questionsOf,
} from '@dryflat/record';
import { addSize, ownLandmark, setSizes } from './change-pattern.ts';
import { asGauge } from './gauge-text.ts';
import type { ReadRow, WholeGauge } from './reading.ts';

/** Where each size of a reading goes among the pattern's sizes; -1 for a size that is new. */
export const columnsOf = (
  pattern: Pattern,
  table: Pick<SizeTable, 'sizes' | 'sizesFrom'>,
): number[] => {
  const alike = table.sizes.length === pattern.sizes.length;
  if (alike && table.sizesFrom === 'counted') return table.sizes.map((_, at) => at);
  return table.sizes.map((label) => pattern.sizes.indexOf(label));
};

/** Sizes that carry no number yet give way to those that were read. */
const isBlank = ({ measurements }: Pattern): boolean =>
  measurements.every(({ values }) => values.every((value) => value === null));

/** Sizes of the reading that the pattern does not have yet. */
export const newSizes = (
  pattern: Pattern,
  table: Pick<SizeTable, 'sizes' | 'sizesFrom'>,
): string[] => {
  if (isBlank(pattern)) return [];
  const columns = columnsOf(pattern, table);
  return table.sizes.filter((_, at) => columns[at] === -1);
};

/**
 * Takes a reading over into the record. A row at a landmark that the pattern has already gives it
 * its numbers, and keeps its own where the reading has none; other rows are added. Sizes are matched by
 * place where they were only counted, else by name. Words such as `circumference` answer flat or around,
 * unless the number gives them away: then it is asked. Gives the number of rows taken over.
 */
export const mergeReading = (
  draft: GarmentRecord,
  table: Pick<SizeTable, 'sizes' | 'sizesFrom'>,
  rows: readonly ReadRow[],
  makeId: () => string,
): number => {
  const { pattern } = draft;
  const taken = rows.filter(({ out }) => !out);
  if (isBlank(pattern)) clearSizes(pattern, table.sizes);
  for (const label of newSizes(pattern, table)) addSize(pattern, label);
  const columns = columnsOf(pattern, table);
  const used = new Set<string>();
  for (const read of taken) {
    const row = matching(pattern, read, taken, used) ?? added(pattern, read, makeId());
    used.add(row.id);
    columns.forEach((column, at) => {
      row.values[column] = read.values[at] ?? row.values[column] ?? null;
    });
    if (read.row.span !== undefined && mayGoAround(row)) answerSpan(draft, row, read.row.span);
  }
  return taken.length;
};

/** Takes what the words say of flat or around, unless only the other makes sense: then nobody has said it. */
const answerSpan = (
  draft: GarmentRecord,
  row: PatternMeasurement,
  said: 'flat' | 'around',
): void => {
  delete row.span;
  const field = `pattern.measurements[${draft.pattern.measurements.indexOf(row)}].span`;
  const likely = questionsOf(draft).find((each) => each.field === field)?.likely ?? null;
  if (likely === null || likely === said) row.span = said;
};

/** Takes over a gauge; where it does not say its state, that which was said before, or washed and dried. */
export const mergeGauge = (pattern: Pattern, { stitches, rows, state }: WholeGauge): void => {
  pattern.gauge = {
    ...asGauge(stitches, rows),
    state: state ?? pattern.gauge?.state ?? 'dried',
  };
};

const clearSizes = (pattern: Pattern, sizes: readonly string[]): void => {
  const { chosen } = pattern;
  delete pattern.chosen;
  setSizes(pattern, sizes);
  if (chosen !== undefined && sizes.includes(chosen)) pattern.chosen = chosen;
  for (const row of pattern.measurements) {
    row.values = sizes.map(() => null);
    delete row.counts;
  }
};

const landmarkOf = ({ landmark, row }: ReadRow): string =>
  findLandmark(landmark) === null ? ownLandmark(row.name) : landmark;

const sameName = (a: string, b: string): boolean => a.toLowerCase() === b.toLowerCase();

/** The pattern's row for a read one: at its landmark, and of its name where several share the landmark. */
const matching = (
  pattern: Pattern,
  read: ReadRow,
  all: readonly ReadRow[],
  used: ReadonlySet<string>,
): PatternMeasurement | undefined => {
  const landmark = landmarkOf(read);
  const alone = all.filter((each) => landmarkOf(each) === landmark).length === 1;
  const there = pattern.measurements.filter(
    (each) => each.landmark === landmark && !used.has(each.id),
  );
  return (
    there.find(({ name }) => sameName(name, read.row.name)) ??
    (alone && there.length === 1 ? there[0] : undefined)
  );
};

const added = (pattern: Pattern, read: ReadRow, id: string): PatternMeasurement => {
  const known = findLandmark(read.landmark);
  const direction = known?.direction ?? read.row.direction;
  const row: PatternMeasurement = {
    id,
    name: read.row.name,
    landmark: landmarkOf(read),
    ...(!known && direction && { direction }),
    worked: known?.worked ?? (direction === 'length' ? 'to-length' : 'counted'),
    values: pattern.sizes.map(() => null),
  };
  pattern.measurements.push(row);
  return row;
};
