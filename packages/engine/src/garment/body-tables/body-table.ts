import type { Cited } from '../../textile/index.ts';
import { type Millimetres, mm } from '../../units/index.ts';

/** A body measurement of one size: a range where the table prints one, else low equals high. */
export interface BodyRange {
  readonly low: Millimetres;
  readonly high: Millimetres;
}

/** One measurement over all sizes of a table; null where the table leaves a size out. */
export type BodyRow = Cited & {
  /** The `body` id of the landmarks that are compared with it, or an id of its own. */
  readonly body: string;
  readonly name: string;
  /** Girths are around the body; everything else is along it. */
  readonly girth: boolean;
  readonly values: readonly (BodyRange | null)[];
};

export interface BodyTable {
  readonly id: string;
  readonly name: string;
  readonly group: 'woman' | 'man' | 'child' | 'baby' | 'anyone';
  readonly sizes: readonly string[];
  readonly rows: readonly BodyRow[];
  /** What to tell the reader about where it comes from. */
  readonly note: string;
}

/** A number, or a low and a high. */
export type Entry = number | readonly [number, number];

const range = (entry: Entry, unit: number): BodyRange => {
  const [low, high] = typeof entry === 'number' ? [entry, entry] : entry;
  return { low: mm(low * unit), high: mm(high * unit) };
};

/** Printed in inches, kept in millimetres. */
export const inches = (...entries: readonly Entry[]): readonly BodyRange[] =>
  entries.map((entry) => range(entry, 25.4));

/** Printed in centimetres, kept in millimetres. */
export const centimetres = (...entries: readonly Entry[]): readonly BodyRange[] =>
  entries.map((entry) => range(entry, 10));

/** Names of the body measurements, and which of them go around. */
export const BODY_NAMES = {
  chest: { name: 'chest or bust', girth: true },
  waist: { name: 'waist', girth: true },
  hip: { name: 'hips', girth: true },
  'upper-arm': { name: 'upper arm', girth: true },
  head: { name: 'head', girth: true },
  'cross-back': { name: 'cross back, shoulder to shoulder', girth: false },
  'back-length': { name: 'back of the neck to the waist', girth: false },
  'back-hip-length': { name: 'back of the neck to the hips', girth: false },
  'arm-length': { name: 'arm to the underarm', girth: false },
  'armhole-depth': { name: 'armhole depth', girth: false },
  'neck-to-wrist': { name: 'centre back of the neck to the wrist', girth: false },
} as const;

export type BodyId = keyof typeof BODY_NAMES;

export const bodyRow = (body: BodyId, values: readonly BodyRange[], cited: Cited): BodyRow => ({
  body,
  ...BODY_NAMES[body],
  values,
  ...cited,
});

/** The whole of a table that was remembered and not read. */
export const REMEMBERED: Cited = { source: 'cyc-body-sizes', standing: 'from-memory' };
/** Read in a page that quotes the table. */
export const QUOTED: Cited = { source: 'cyc-body-sizes', standing: 'read-second-hand' };
