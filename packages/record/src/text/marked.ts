import type { GarmentRecord } from '../schema/index.ts';

/**
 * Signs that steer a terminal or a line of text and show nothing: controls (general category Cc), line
 * and paragraph separators (Zl, Zp), those that turn the direction of writing, spaces without width, the
 * byte-order mark and tags. Those that join letters or keep them apart stay: scripts and emoji need them.
 * Unicode 16, sections 4.5, 23.1, 23.2 and 23.9.
 */
const UNSEEN =
  /[\p{Cc}\p{Zl}\p{Zp}\u061c\u200b\u200e\u200f\u202a-\u202e\u2060\u2066-\u2069\ufeff\u{e0000}-\u{e007f}]/gu;

/** Fields that may run over several lines. */
const MANY_LINES = new Set(['text', 'remark', 'changes', 'fitNotes']);

const pictureOf = (sign: string): string => {
  const code = sign.codePointAt(0) ?? 0;
  // Control pictures: U+2400 to U+2421 stand for U+0000 to U+0020 and for delete.
  if (code < 0x20) return String.fromCharCode(0x2400 + code);
  return code === 0x7f ? '\u2421' : `‹U+${code.toString(16).toUpperCase().padStart(4, '0')}›`;
};

/** A text with a mark in place of every sign that would not be seen. */
export const markedText = (text: string, manyLines = false): string =>
  text.replace(UNSEEN, (sign) =>
    manyLines && (sign === '\n' || sign === '\t') ? sign : pictureOf(sign),
  );

const markedValue = (value: unknown, key: string): unknown => {
  if (typeof value === 'string') return markedText(value, MANY_LINES.has(key));
  if (Array.isArray(value)) return value.map((each) => markedValue(each, key));
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value).map(([below, each]) => [below, markedValue(each, below)]),
  );
};

/** A record to be shown: control characters in anything typed have become marks. */
export const marked = (record: GarmentRecord): GarmentRecord =>
  markedValue(record, '') as GarmentRecord;
