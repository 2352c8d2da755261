import type { OutlinePiece } from '../outline/index.ts';
import type { Form } from './fabric-rows.ts';
import { type Profile, profileOf } from './profile.ts';
import type { Finish, Pitch } from './types.ts';

/**
 * A piece in stitches and rows, before anything is rounded but its heights: rows are stretched so that
 * ribbing, ledge, neck, top and what is measured come after whole, even numbers of them. Places are stitches from x = 0,
 * as in `KnitRow`.
 */
export interface PieceShape {
  readonly form: Form;
  readonly profile: Profile;
  readonly rows: number;
  readonly ribs: number;
  /** Height in rows of a place of the drawing. */
  readonly heightOf: (y: number) => number;
  readonly outer: (height: number) => number;
  readonly inner: (height: number) => number | null;
  /** Height at which stitches are bound off or held at once below the top, else the top. */
  readonly ledge: number;
  /** Height at which the neck begins; the top where there is none. */
  readonly neck: number;
  readonly finish: Finish['by'];
}

const formOf = (piece: OutlinePiece): Form => {
  if (piece.name === 'hat' || piece.name === 'mitten' || piece.name === 'sock') return 'round';
  return piece.name === 'front' && piece.copies === 2 ? 'half' : 'whole';
};

/** The half of a piece that is shaped: a mitten's side without the thumb, a sleeve from its fold. */
const shapedHalf = (piece: OutlinePiece): Profile => {
  const profile = profileOf(piece);
  if (piece.name !== 'mitten') return profile;
  return {
    heightMm: profile.heightMm,
    at: (height) => ({ inner: null, outer: -(profile.at(height).inner ?? 0) }),
  };
};

const evenRows = (mm: number, row: number, least: number): number =>
  Math.max(least, 2 * Math.round(mm / row / 2));

const topOfRib = (piece: OutlinePiece): number | null =>
  piece.details.find((detail) => detail.kind === 'ribbing' || detail.kind === 'wrist')?.path[0]
    ?.from.y ?? null;

const ledgeOf = (piece: OutlinePiece, top: number, bottom: number): number | null => {
  const level = piece.path.find(
    (s) =>
      (s.edge === 'bound-off' || s.edge === 'join') &&
      s.from.y === s.to.y &&
      s.from.y > top &&
      s.from.y < bottom,
  );
  return level?.from.y ?? null;
};

/** Live stitches go on from a level top that joins; a tube that closes is drawn up. */
const finishOf = (piece: OutlinePiece, form: Form, top: number): Finish['by'] => {
  const joins = piece.path.some((s) => s.edge === 'join' && s.from.y === top && s.to.y === top);
  if (joins) return 'hold';
  return form === 'round' ? 'gather' : 'bind-off';
};

/** Lowest place of the neckline; null where there is none, or where it is the top. */
const neckOf = (piece: OutlinePiece, top: number): number | null => {
  const ys = piece.path.filter((s) => s.edge === 'neckline').flatMap((s) => [s.from.y, s.to.y]);
  const lowest = Math.max(top, ...ys);
  return lowest > top ? lowest : null;
};

interface Knot {
  readonly mm: number;
  readonly rows: number;
}

/** Heights that have to be even numbers of rows, rising; those too near to the one below are left out. */
const knotsOf = (heights: readonly number[], ribs: Knot, top: Knot, row: number): Knot[] => {
  const knots: Knot[] = ribs.rows > 0 ? [{ mm: 0, rows: 0 }, ribs] : [ribs];
  for (const mm of [...heights].sort((a, b) => a - b)) {
    const below = knots.at(-1)!;
    const rows = evenRows(mm, row, 0);
    if (rows > below.rows && rows < top.rows && mm > below.mm && mm < top.mm)
      knots.push({ mm, rows });
  }
  return [...knots, top];
};

/** From one column of the knots to the other, straight between them. */
const between =
  (knots: readonly Knot[], from: 'mm' | 'rows', to: 'mm' | 'rows') => (at: number) => {
    const next = knots.findIndex((knot, i) => i > 0 && at <= knot[from]);
    const b = knots[next < 0 ? knots.length - 1 : next]!;
    const a = knots[(next < 0 ? knots.length - 1 : next) - 1]!;
    return a[to] + ((at - a[from]) / (b[from] - a[from])) * (b[to] - a[to]);
  };

export const pieceShape = (piece: OutlinePiece, pitch: Pitch): PieceShape => {
  const form = formOf(piece);
  const profile = shapedHalf(piece);
  const ys = piece.path.flatMap((s) => [s.from.y, s.to.y]);
  const [top, bottom] = [Math.min(...ys), Math.max(...ys)];
  const ribTop = topOfRib(piece);
  const ribMm = ribTop === null ? 0 : bottom - ribTop;
  const ribs = ribTop === null ? 0 : evenRows(ribMm, pitch.row, 2);
  const rows = evenRows(profile.heightMm, pitch.row, ribs + 4);
  const perMm = (form === 'round' ? 2 : 1) / pitch.stitch;
  const [ledge, neck] = [ledgeOf(piece, top, bottom), neckOf(piece, top)];
  const measured = piece.dimensions
    .filter((d) => d.direction === 'length' && d.from.x === d.to.x)
    .flatMap((d) => [d.from.y, d.to.y]);
  const heights = [ledge, neck, ...measured].flatMap((y) => (y === null ? [] : [bottom - y]));
  const knots = knotsOf(heights, { mm: ribMm, rows: ribs }, { mm: bottom - top, rows }, pitch.row);
  const mmOf = between(knots, 'rows', 'mm');
  const rowsOf = between(knots, 'mm', 'rows');
  const heightOf = (y: number) => rowsOf(bottom - y);
  const folded = piece.name === 'sleeve';
  return {
    form,
    profile,
    rows,
    ribs,
    heightOf,
    outer: (height) => profile.at(mmOf(height)).outer * perMm,
    inner: (height) => {
      if (folded) return null;
      const { inner } = profile.at(mmOf(height));
      return inner === null ? null : inner * perMm;
    },
    ledge: ledge === null ? rows : heightOf(ledge),
    neck: neck === null ? rows : heightOf(neck),
    finish: finishOf(piece, form, top),
  };
};
