import { type Fault, fail, mm, ok, type Result } from '../../units/index.ts';
import { cubic, line, point, withMirror } from '../outline/path.ts';
import type { Dimension, OutlinePiece } from '../outline/types.ts';
import { countsOfPiece, type PieceCounts, type PieceQuestion } from './piece-counts.ts';
import { type ShortRows, shortRows } from './short-rows.ts';

export interface SockCounts {
  /** From the cuff down to the heel. */
  readonly leg: PieceCounts;
  /** Short rows over half of the stitches, out and back again: these turns, then the same in reverse. */
  readonly heel: ShortRows & { readonly stitches: number };
  /** From the heel to the tip. */
  readonly foot: PieceCounts;
}

/** The heel takes as much of the foot as half its width, or a turn at each stitch: common practice, no source. */
const HEEL_SHARE = 0.5;
/** The toe is as long as half the width of the foot, as the outline draws it. */
const TOE_SHARE = 0.5;

const sizeOf = (piece: OutlinePiece, landmark: string): number | null =>
  piece.dimensions.find((d) => d.landmark === landmark)?.mm ?? null;

const across = (landmark: string, wide: number, y: number): Dimension => ({
  landmark,
  direction: 'width',
  from: point(-wide / 2, y),
  to: point(wide / 2, y),
  side: 'bottom',
  outside: true,
  mm: mm(wide),
  assumed: false,
});

const up = (landmark: string, wide: number, from: number, to: number): Dimension => ({
  ...across(landmark, wide, 0),
  direction: 'length',
  from: point(wide / 2, to),
  to: point(wide / 2, from),
  side: 'right',
  mm: mm(from - to),
});

const tube = (
  path: OutlinePiece['path'],
  details: OutlinePiece['details'],
  dimensions: readonly Dimension[],
): OutlinePiece => ({
  name: 'sock',
  copies: 2,
  symmetric: true,
  path: withMirror(path),
  details,
  dimensions,
  shownOn: null,
});

const legOf = (wide: number, tall: number, rib: number): OutlinePiece =>
  tube(
    [
      line(point(0, 0), point(wide / 2, 0), 'join'),
      line(point(wide / 2, 0), point(wide / 2, tall), 'fold'),
      line(point(wide / 2, tall), point(0, tall), 'cast-on'),
    ],
    rib > 0
      ? [
          {
            kind: 'ribbing',
            path: [line(point(-wide / 2, tall - rib), point(wide / 2, tall - rib), 'cast-on')],
          },
        ]
      : [],
    [
      across('leg', wide, tall),
      up('leg-length', wide, tall, 0),
      ...(rib > 0 ? [up('rib-depth', wide, tall, tall - rib)] : []),
    ],
  );

const footOf = (wide: number, long: number): OutlinePiece => {
  const [half, toe] = [wide / 2, TOE_SHARE * wide];
  return tube(
    [
      cubic(
        point(0, 0),
        point(0.5 * half, 0),
        point(half, 0.3 * toe),
        point(half, toe),
        'gathered',
      ),
      line(point(half, toe), point(half, long), 'fold'),
      line(point(half, long), point(0, long), 'cast-on'),
    ],
    [],
    [across('foot', wide, long)],
  );
};

const noSock = (piece: OutlinePiece): Fault => ({
  code: 'piece-no-sock',
  field: piece.name,
  given: piece.name,
  problem: 'the piece is not a sock with leg and foot',
  mend: 'Ask for the counts of the piece itself.',
});

/**
 * A sock in its three parts. The foot is counted without the heel, which takes half the foot's width of
 * its length. Fails where the piece is no sock, or is too small for its heel.
 */
export const sockCounts = (piece: OutlinePiece, question: PieceQuestion): Result<SockCounts> => {
  const [leg, tall, foot, long] = ['leg', 'leg-length', 'foot', 'foot-length'].map((id) =>
    sizeOf(piece, id),
  );
  if (leg == null || tall == null || foot == null || long == null) return fail(noSock(piece));
  const legCounts = countsOfPiece(legOf(leg, tall, sizeOf(piece, 'rib-depth') ?? 0), question);
  if (!legCounts.ok) return legCounts;
  const footCounts = countsOfPiece(footOf(foot, long - HEEL_SHARE * foot), question);
  if (!footCounts.ok) return footCounts;
  const stitches = Math.round(footCounts.value.measures[0]!.count / 2);
  const { row } = question.pitch;
  const deepest = 2 * Math.floor(stitches / 3) * row;
  const depthMm = Math.min(HEEL_SHARE * foot, deepest);
  const heel = shortRows({ stitches, depthMm, rowMm: row, ends: 'both' });
  if (!heel.ok) return heel;
  return ok({
    leg: legCounts.value,
    heel: { ...heel.value, stitches },
    foot: footCounts.value,
  });
};
