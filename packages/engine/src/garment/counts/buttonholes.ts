import { type Fault, fail, ok, type Result } from '../../units/index.ts';
import type { Notice } from '../forecast-types.ts';
import { evenGaps } from './even-gaps.ts';
import { lengthFaults, wholeFaults } from './whole.ts';

export interface ButtonholeQuestion {
  /** Stitches (or rows) of the band. */
  readonly total: number;
  readonly holes: number;
  /** Stitches (or rows) that a hole takes. */
  readonly size: number;
  /** Stitches (or rows) before the first hole and after the last. */
  readonly margin: { readonly start: number; readonly end: number };
  readonly pitchMm: number;
}

export interface Buttonholes {
  /** Plain stitches before each hole, and after the last: one more than holes. */
  readonly gaps: readonly number[];
  /** Middle of each hole from the start of the band. */
  readonly centresMm: readonly number[];
  /** From middle to middle, were it possible to be exact; null for one hole. */
  readonly idealMm: number | null;
  /** How far the worst hole is from where it would ideally be. */
  readonly worstErrorMm: number;
}

const noRoom = (q: ButtonholeQuestion, room: number): Fault => ({
  code: 'buttonholes-do-not-fit',
  field: 'holes',
  given: String(q.holes),
  problem: `${q.holes} buttonholes of ${q.size} need ${q.holes * q.size + q.holes - 1}, with one between them; there are ${Math.max(0, room)} between the margins`,
  mend: 'Use fewer or smaller buttonholes, or smaller margins.',
});

const faultsOf = (q: ButtonholeQuestion): Fault[] => [
  ...wholeFaults([
    ['total', q.total, 'the length of the band', 1],
    ['holes', q.holes, 'the number of buttonholes', 1],
    ['size', q.size, 'the size of a buttonhole', 1],
    ['margin.start', q.margin.start, 'the margin at the start', 0],
    ['margin.end', q.margin.end, 'the margin at the end', 0],
  ]),
  ...lengthFaults([['pitchMm', q.pitchMm, 'the width of a stitch']]),
];

/** One hole goes to the middle of its room, several to both ends of it. */
const gapsOf = ({ holes, margin }: ButtonholeQuestion, plain: number): number[] => {
  if (holes > 1) return [margin.start, ...evenGaps(plain, holes - 1), margin.end];
  const [before = 0, after = 0] = evenGaps(plain, 2);
  return [margin.start + before, margin.end + after];
};

/** Buttonholes over a band, as even as whole stitches allow, alike from both ends where that is possible. */
export const buttonholes = (q: ButtonholeQuestion): Result<Buttonholes> => {
  const faults = faultsOf(q);
  if (faults.length > 0) return fail(...faults);
  const room = q.total - q.margin.start - q.margin.end;
  const plain = room - q.holes * q.size;
  if (plain < q.holes - 1) return fail(noRoom(q, room));
  const gaps = gapsOf(q, plain);
  let at = 0;
  const centres = gaps.slice(0, -1).map((gap) => {
    const centre = at + gap + q.size / 2;
    at += gap + q.size;
    return centre;
  });
  const apart = q.holes > 1 ? plain / (q.holes - 1) + q.size : null;
  const ideal = (i: number) =>
    q.margin.start + (apart === null ? room / 2 : q.size / 2 + i * apart);
  return ok({
    gaps,
    centresMm: centres.map((centre) => centre * q.pitchMm),
    idealMm: apart === null ? null : apart * q.pitchMm,
    worstErrorMm: Math.max(...centres.map((c, i) => Math.abs(c - ideal(i)))) * q.pitchMm,
  });
};

/** What to heed before sewing buttons on, for those who put small things into their mouths; else null. */
export const buttonNotice = (wearer: string): Notice | null =>
  wearer === 'baby' || wearer === 'child'
    ? {
        code: 'small-parts',
        text: 'Buttons are small parts: for a child’s garment follow the safety rules of where you live, sew each on so that it cannot come off, and pull at each before every wear.',
      }
    : null;
