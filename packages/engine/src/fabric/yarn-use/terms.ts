import { type Affine, add, constant } from '../../stats/index.ts';
import type { Stitch } from '../../textile/index.ts';
import type { Doubt, YarnModel } from './model.ts';
import type { YarnPart, YarnWork } from './types.ts';

/**
 * One summand of the yarn that is needed: so many times something whose logarithm is the sum of some
 * doubts. Yarn is linear in counts of stitches (Ohlson et al. 2023, SCF '23, doi
 * 10.1145/3623263.3623355), and in lengths of seams and ends.
 */
export interface Term {
  /** Index of the part, or −1 for edges, seams and ends. */
  readonly part: number;
  readonly count: number;
  readonly doubts: readonly Doubt[];
}

/** Pattern of the edges: that of the first part. */
const edgeStitch = ({ parts }: YarnWork): Stitch => parts[0]?.stitch ?? 'stockinette';

const partTerm = ({ stitch, stitches }: YarnPart, part: number): Term => ({
  part,
  count: stitches,
  doubts: [stitch, 'drift'],
});

/** Ends: two for each piece of yarn, one piece for each part and each ball joined. */
const ends = ({ parts, joins }: YarnWork): number =>
  2 * (parts.filter(({ stitches }) => stitches > 0).length + joins);

/** Yarn for all the work, mm; terms of nothing are left out. */
export const neededTerms = (work: YarnWork): Term[] =>
  [
    ...work.parts.map(partTerm),
    { part: -1, count: work.castOn + work.bindOff, doubts: ['edge', edgeStitch(work)] as const },
    { part: -1, count: work.seamsMm, doubts: ['seam'] as const },
    { part: -1, count: ends(work), doubts: ['tail'] as const },
  ].filter(({ count }) => count > 0);

/** Yarn that ripping gives back, mm. */
export const returnedTerms = ({ ripped }: YarnWork): Term[] =>
  ripped
    .map(
      ({ stitch, stitches }, part): Term => ({
        part,
        count: stitches,
        doubts: [stitch, 'drift', 'returned'],
      }),
    )
    .filter(({ count }) => count > 0);

/** The term's logarithm, mm. */
export const formOf = ({ forms }: YarnModel, { count, doubts }: Term): Affine =>
  add(constant(Math.log(count)), ...doubts.map((doubt) => forms[doubt]));
