/** A record as plain JSON, of whatever version; nothing about its shape is promised. */
export type PlainRecord = { readonly [key: string]: unknown };

/** Something that an older version has no place for. */
export interface Loss {
  /** Path of the value that is dropped. */
  readonly field: string;
  /** The value, as text. */
  readonly given: string;
  /** What its loss means, one sentence. */
  readonly problem: string;
}

/**
 * One step between neighbouring versions. Both ways are pure and leave alone what they do not
 * understand: a malformed record stays malformed in the same place, so that reading can report it.
 */
export interface MigrationStep {
  readonly from: number;
  readonly to: number;
  readonly up: (plain: PlainRecord) => PlainRecord;
  /** Says what it had to drop; nothing lost means that `up` gives the same record back. */
  readonly down: (plain: PlainRecord) => { readonly plain: PlainRecord; readonly lost: Loss[] };
}

export const isPlain = (value: unknown): value is PlainRecord =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** Parts that an older version has no place for, each with what its loss means. */
export type Parts = Readonly<Record<string, string>>;

/** What a holder would lose of them; `before` is its path. */
export const lostOf = (holder: unknown, parts: Parts, before: string): Loss[] =>
  isPlain(holder)
    ? Object.entries(parts).flatMap(([part, problem]) =>
        holder[part] === undefined
          ? []
          : [{ field: `${before}${part}`, given: JSON.stringify(holder[part]), problem }],
      )
    : [];

export const without = (holder: PlainRecord, parts: Parts): PlainRecord =>
  Object.fromEntries(Object.entries(holder).filter(([part]) => !Object.hasOwn(parts, part)));
