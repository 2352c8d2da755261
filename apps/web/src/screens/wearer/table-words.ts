import { BODY_TABLES, type BodyTable } from '@dryflat/engine/garment';
import { type Cited, REFERENCES } from '@dryflat/engine/textile';
import type { BodyMeasure, Wearer } from '@dryflat/record';

/** How a row of a published table was seen, in plain words. */
export const standingOf = ({ standing }: Pick<Cited, 'standing'>): string => {
  if (standing === 'read') return 'published';
  if (standing === 'read-second-hand') return 'published, seen in a quotation';
  return 'from memory of the table';
};

/** Who published it; null for a row that rests on no work. */
export const publisherOf = ({ source }: Cited): string | null =>
  source === null ? null : REFERENCES[source].authors;

const tableOf = (id: string): BodyTable | undefined => BODY_TABLES.find((each) => each.id === id);

/** Where a body measurement comes from, as said beside it. */
export const sourceOf = (from: BodyMeasure['from']): string =>
  from.kind === 'measured'
    ? 'Measured'
    : `A start from a table, not this body: ${tableOf(from.table)?.name ?? from.table}, size ${from.size}`;

/** Tables that suit a wearer, the likeliest first. */
export const tablesFor = (group: Wearer['group'], places: readonly string[]): BodyTable[] => {
  const useful = BODY_TABLES.filter(({ rows }) => rows.some(({ body }) => places.includes(body)));
  const rank = (table: BodyTable): number => (table.group === group ? 0 : 1);
  return [...useful].sort((a, b) => rank(a) - rank(b));
};
