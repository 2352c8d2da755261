import { findLandmark } from '../../garment/index.ts';
import type { PieceRows, Route } from '../types.ts';

/** Width of a stitch and height of a row as knit, mm. */
export interface KnitPitch {
  readonly stitch: number;
  readonly row: number;
}

/** What comes of a route that is carried out: lengths as knit by landmark, mm, and what could not be done. */
export interface Followed {
  readonly lengths: ReadonlyMap<string, number>;
  readonly broken: readonly string[];
}

type Lengths = Map<string, number>;

/** Which lengths end at a mark, measured from the mark before it. */
const LENGTH_OF: Readonly<Record<string, readonly string[]>> = {
  shoulder: ['armhole-depth', 'yoke-depth'],
  heel: ['leg-length'],
  toe: ['foot-length'],
  crown: ['hat-height'],
  tip: ['hand-length'],
  end: ['length', 'depth'],
};

const lengthsTo = (piece: string, mark: string): readonly string[] =>
  mark === 'underarm'
    ? [piece === 'sleeve' ? 'sleeve-length' : 'underarm-length']
    : (LENGTH_OF[mark] ?? []);

/**
 * Knits one piece row by row: what is on the needles is ripped to where the route says, and from there rows are
 * knit up to each mark in turn. Returns the rows between marks, and what a knitter would stumble on.
 */
const knitPiece = (
  { piece, stands, ripTo, stretches }: PieceRows,
  broken: string[],
): ReadonlyMap<string, number> => {
  const rows = new Map<string, number>();
  let row = ripTo?.row ?? 0;
  let mark = 0;
  for (const { to, rows: count, by } of stretches) {
    if (count === null) continue;
    const end = mark + count;
    const before = mark + count - by;
    if (by !== 0 && stands === 'beyond' && ripTo === null)
      broken.push(`${piece}: nothing is ripped, and ${to} lies elsewhere`);
    // A mark that moves must not lie in what stays.
    if (by !== 0 && ripTo?.row != null && Math.min(end, before) < ripTo.row)
      broken.push(`${piece}: row ${ripTo.row} stays, above ${to}`);
    while (row < end) row += 1;
    rows.set(to, end - mark);
    mark = to === 'heel' ? 0 : end;
  }
  return rows;
};

const grow = (lengths: Lengths, landmark: string, byMm: number): void => {
  const had = lengths.get(landmark);
  if (had !== undefined) lengths.set(landmark, had + byMm);
};

/** The lengths of a piece as its rows make them; what is knit as planned is as long as planned. */
const ofPiece = (
  rows: PieceRows,
  planned: ReadonlyMap<string, number>,
  pitch: KnitPitch,
  broken: string[],
): Lengths => {
  const made = new Map(planned);
  const knit = knitPiece(rows, broken);
  let whole = 0;
  for (const { to, by } of rows.stretches) {
    if (by === 0) continue;
    const count = knit.get(to);
    const landmark = lengthsTo(rows.piece, to).find((each) => planned.has(each));
    const had = landmark === undefined ? undefined : planned.get(landmark)!;
    const byMm =
      count === undefined || had === undefined ? by * pitch.row : count * pitch.row - had;
    whole += byMm;
    if (landmark !== undefined) grow(made, landmark, byMm);
    if (landmark === 'depth' && planned.has('span'))
      made.set('span', (planned.get('span')! * made.get('depth')!) / planned.get('depth')!);
  }
  if (rows.piece !== 'sleeve') grow(made, 'body-length', whole);
  return made;
};

const GIRTHS = ['chest', 'waist', 'hip', 'hem'] as const;
const FROM_EDGE = {
  hem: ['body-length', 'underarm-length', 'hat-height', 'leg-length', 'length'],
  cuff: ['sleeve-length'],
} as const;

const isOn = (landmark: string, piece: string): boolean =>
  ['sleeve-length', 'upper-arm', 'cuff'].includes(landmark) === (piece === 'sleeve');

/**
 * Carries out what a route says to knit, and reads nothing but its numbers. `start`: lengths as knit by landmark,
 * mm, of what is there, or of the size that is begun again.
 */
export const followed = (
  { knitting }: Pick<Route, 'knitting'>,
  start: ReadonlyMap<string, number>,
  pitch: KnitPitch,
): Followed => {
  const broken: string[] = [];
  if (knitting === null) return { lengths: start, broken };
  const lengths: Lengths = new Map(start);
  const { pieces, edge, stitches, sides } = knitting;
  for (const rows of pieces) {
    const made = ofPiece(rows, start, pitch, broken);
    for (const [landmark, mm] of made)
      if (findLandmark(landmark)?.direction === 'length' || landmark === 'span')
        if (isOn(landmark, rows.piece)) lengths.set(landmark, mm);
  }
  const wider = pieces.reduce((sum, each) => sum + each.wider, 0) * pitch.stitch;
  for (const each of GIRTHS) grow(lengths, each, wider + 2 * (sides?.mm ?? 0));
  for (const { landmark, count } of stitches) lengths.set(landmark, count * pitch.stitch);
  if (edge !== null)
    for (const each of FROM_EDGE[edge.at]) grow(lengths, each, edge.rows * pitch.row);
  return { lengths, broken };
};
