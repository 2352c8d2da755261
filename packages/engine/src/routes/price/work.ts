import type { PartName } from '../../garment/index.ts';
import type { Stitch } from '../../textile/index.ts';
import type { KnitPiece } from '../knit/pieces.ts';
import type { PieceProgress } from '../types.ts';

/** Stitches of a piece. */
export interface Fabric {
  readonly name: string;
  readonly stitches: number;
}

/** How the garment is handled after the last stitch: left as it is, laid flat, or pinned. */
export type Mat = 'none' | 'lay' | 'pin';

/** Everything that is done until a route is done. */
export interface Work {
  readonly knit: readonly Fabric[];
  readonly rip: readonly Fabric[];
  readonly castOn: number;
  readonly bindOff: number;
  /** Length of seams, mm. */
  readonly seamsMm: number;
  readonly ends: number;
  readonly mat: Mat;
  readonly stitch: Stitch;
}

export const NO_WORK: Omit<Work, 'stitch'> = {
  knit: [],
  rip: [],
  castOn: 0,
  bindOff: 0,
  seamsMm: 0,
  ends: 0,
  mat: 'none',
};

/** Share of a piece that is knit, 0 to 1. */
export const shareOf = (progress: readonly PieceProgress[], name: string): number =>
  progress.find(({ piece }) => piece === name)?.share ?? 0;

/** How much of each copy is knit: one is taken to be done before the other is begun. */
export const sharesOfCopies = (
  progress: readonly PieceProgress[],
  { name, copies }: Pick<KnitPiece, 'name' | 'copies'>,
): number[] => {
  const all = copies * shareOf(progress, name);
  return Array.from({ length: copies }, (_, k) => Math.min(1, Math.max(0, all - k)));
};

/** Tails of a piece: its first and last yarn, and the ends of a new ball or two. Common practice, no source. */
const ENDS_PER_PIECE = 4;

const sum = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0);
const mean = (values: readonly number[]): number => sum(values) / values.length;
const something = ({ stitches }: Fabric): boolean => stitches > 0.5;

/** What is left of each piece when some of it stays: `stays` is a share of its stitches. */
export const workOf = (
  pieces: readonly KnitPiece[],
  progress: readonly PieceProgress[],
  options: {
    readonly stitch: Stitch;
    readonly mat: Mat;
    readonly sewn: boolean;
    /** Pieces as they are now; those of the route itself where they stay as they are. */
    readonly now?: readonly KnitPiece[];
    /** Share of a copy that may stay; all of it where left out. */
    readonly stays?: (piece: KnitPiece) => number;
  },
): Work => {
  const { now = pieces, stays = () => 1, stitch, mat, sewn } = options;
  const rows = pieces.map((piece) => {
    const had = now.find(({ name }) => name === piece.name);
    const shares = sharesOfCopies(progress, piece);
    const most = stays(had ?? piece);
    const share = mean(shares);
    const kept = mean(shares.map((each) => Math.min(each, most)));
    return { piece, old: had?.stitches ?? 0, share, kept };
  });
  const open = rows.filter(({ kept }) => kept < 1);
  return {
    stitch,
    mat,
    knit: rows
      .map(({ piece, old, kept }) => ({
        name: piece.name,
        stitches: Math.max(0, piece.stitches - kept * old),
      }))
      .map((each, k) => (rows[k]!.kept >= 1 ? { ...each, stitches: 0 } : each))
      .filter(something),
    rip: rows
      .map(({ piece, old, share, kept }) => ({
        name: piece.name,
        stitches: (share - kept) * old,
      }))
      .filter(something),
    castOn: sum(rows.filter(({ kept }) => kept === 0).map(({ piece }) => piece.castOn)),
    bindOff: sum(open.map(({ piece }) => piece.bindOff)),
    seamsMm: sewn ? 0 : sum(pieces.map(({ seamEdgesMm }) => seamEdgesMm)) / 2,
    ends: ENDS_PER_PIECE * (sewn ? open.length : pieces.length),
  };
};

/** Stitches that are knit now. */
export const knitNow = (
  pieces: readonly KnitPiece[],
  progress: readonly PieceProgress[],
): Fabric[] =>
  pieces
    .map(({ name, stitches }) => ({ name, stitches: stitches * shareOf(progress, name) }))
    .filter(something);

/** Share of a part that is knit, by stitches. */
export const shareOfPart = (
  pieces: readonly KnitPiece[],
  progress: readonly PieceProgress[],
  part: PartName,
): number => {
  const own = pieces.filter((piece) => piece.part === part);
  const all = sum(own.map(({ stitches }) => stitches));
  return all === 0 ? 0 : sum(own.map((p) => p.stitches * shareOf(progress, p.name))) / all;
};
