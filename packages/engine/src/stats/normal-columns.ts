import { fillNormals, randomSource } from './normal-source.ts';

/**
 * Columns of standard normals, one per doubt, each known by its name: what is compared on the same
 * columns is compared on the same luck. A name gives the same column each time, whatever was asked
 * before, and two names give independent ones.
 */
export interface NormalColumns {
  /** Length of each column. */
  readonly n: number;
  normal(name: string): Float64Array;
}

/** FNV-1a over UTF-16 units: spreads names over 32 bits. */
const hash = (text: string): number => {
  let h = 0x811c9dc5;
  for (let i = 0; i < text.length; i++) h = Math.imul(h ^ text.charCodeAt(i), 0x01000193);
  return h;
};

/** Columns from a seed. Made when first asked for, then kept. */
export const normalColumns = (seed: number, n: number): NormalColumns => {
  const made = new Map<string, Float64Array>();
  return {
    n,
    normal: (name) => {
      const column =
        made.get(name) ?? fillNormals(randomSource(hash(`${seed}:${name}`)), new Float64Array(n));
      made.set(name, column);
      return column;
    },
  };
};
