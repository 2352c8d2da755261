import type { PartName } from '../../garment/index.ts';
import type { Make } from '../knit/luck.ts';
import { times } from '../knit/makes.ts';
import type { KnitPiece } from '../knit/pieces.ts';
import { sharesOfCopies } from '../price/work.ts';
import type { PieceRows, RipTo, RowMark, RowStretch } from '../types.ts';
import { indexOf, withFactors } from './aim.ts';
import type { Bench } from './draft.ts';

/** A length that is to be longer by so many mm as knit; negative is shorter. */
export interface Ask {
  readonly landmark: string;
  readonly byMm: number;
}

/** Rows up to a mark, and the length that they make. `counted`: from the cast-on, or from the mark before. */
interface Stretch {
  readonly to: RowMark;
  readonly lengths: readonly string[];
  readonly counted: boolean;
}

const UNDERARM: Stretch = { to: 'underarm', lengths: ['underarm-length'], counted: true };
const SHOULDER: Stretch = {
  to: 'shoulder',
  lengths: ['armhole-depth', 'yoke-depth'],
  counted: true,
};
/** Crown, tip and toe end where a length ends; at which row they begin nobody says. */
const STRETCHES: Readonly<Record<PartName, readonly Stretch[]>> = {
  body: [
    UNDERARM,
    SHOULDER,
    { to: 'heel', lengths: ['leg-length'], counted: true },
    { to: 'toe', lengths: ['foot-length'], counted: false },
    { to: 'crown', lengths: ['hat-height'], counted: false },
    { to: 'tip', lengths: ['hand-length'], counted: false },
    { to: 'end', lengths: ['length', 'depth'], counted: true },
  ],
  sleeve: [{ to: 'underarm', lengths: ['sleeve-length'], counted: true }],
};

const BY_ROWS: ReadonlySet<string> = new Set([
  'body-length',
  ...Object.values(STRETCHES).flatMap((all) => all.flatMap(({ lengths }) => lengths)),
]);

/** Whether rows can be put in or left out for a length, at a place that a knitter finds. */
export const isKnitByRows = (landmark: string): boolean => BY_ROWS.has(landmark);

/** A measurement as knit, mm; null where the pattern has none. */
const lengthIn = (bench: Bench, makes: readonly Make[], landmark: string): number | null => {
  const at = indexOf(bench, landmark);
  if (at < 0) return null;
  const { from, factor } = makes[at]!;
  return bench.luck.median[from][at]! * factor;
};

/** A stretch in whole rows, and by how much its length changes. */
interface Changed {
  readonly stretch: RowStretch;
  readonly landmark: string | null;
  readonly byMm: number;
}

/** The least that is left of a length. */
const LEAST = 0.05;

const changed = (
  bench: Bench,
  makes: readonly Make[],
  { to, lengths, counted }: Stretch,
  byMm: number,
): Changed => {
  const row = bench.luck.pitch.length.median;
  const landmark = lengths.find((each) => indexOf(bench, each) >= 0) ?? null;
  const now = landmark === null ? null : lengthIn(bench, makes, landmark);
  if (now === null || !counted) {
    const most = now === null ? Number.POSITIVE_INFINITY : (1 - LEAST) * now;
    const by = Math.round(Math.max(-most, byMm) / row) + 0;
    return { stretch: { to, rows: null, by }, landmark, byMm: by * row };
  }
  const rows = Math.max(1, Math.round((now + byMm) / row));
  const by = rows - Math.max(1, Math.round(now / row));
  return { stretch: { to, rows, by }, landmark, byMm: by === 0 ? 0 : rows * row - now };
};

/** What each stretch of a part is asked to grow by. What is left below the underarm makes up the whole. */
const changesOf = (
  bench: Bench,
  makes: readonly Make[],
  part: PartName,
  asks: readonly Ask[],
): Changed[] => {
  const asked = (landmarks: readonly string[]): number =>
    asks.find(({ landmark }) => landmarks.includes(landmark))?.byMm ?? 0;
  const one = (stretch: Stretch, byMm: number) => changed(bench, makes, stretch, byMm);
  if (part === 'sleeve' || lengthIn(bench, makes, 'body-length') === null)
    return STRETCHES[part].map((stretch) => one(stretch, asked(stretch.lengths)));
  const top = one(SHOULDER, asked(SHOULDER.lengths));
  const whole = asks.find(({ landmark }) => landmark === 'body-length');
  const wanted = bench.own.targets.some((target) => target.wanted.landmark === 'body-length');
  const below = asked(UNDERARM.lengths);
  const keeps = whole !== undefined || (below === 0 && wanted);
  return [one(UNDERARM, keeps ? (whole?.byMm ?? 0) - top.byMm : below), top];
};

/** Lengths of a part in whole rows. */
export interface InRows {
  readonly makes: Make[];
  readonly stretches: readonly RowStretch[];
  /** The lowest place where anything is knit otherwise; null where nothing is. */
  readonly ripTo: RipTo | null;
}

/**
 * The lengths of a part made longer or shorter by whole rows: what a knitter who counts them gets, to which the
 * makes hold. An armhole or a yoke is shaped all along, so it is knit again from the underarm.
 */
export const inRows = (
  bench: Bench,
  makes: readonly Make[],
  part: PartName,
  asks: readonly Ask[],
): InRows => {
  const changes = changesOf(bench, makes, part, asks);
  const growth = new Map<string, number>();
  for (const { landmark, byMm } of changes)
    if (landmark !== null && byMm !== 0) growth.set(landmark, byMm);
  const whole = changes.reduce((sum, { byMm }) => sum + byMm, 0);
  if (part === 'body' && whole !== 0) growth.set('body-length', whole);
  const factors = new Map<number, number>();
  for (const [landmark, byMm] of growth) {
    const now = lengthIn(bench, makes, landmark);
    if (now === null) continue;
    const factor = 1 + byMm / now;
    factors.set(indexOf(bench, landmark), factor);
    // A shawl that grows outwards keeps its shape.
    const span = landmark === 'depth' ? indexOf(bench, 'span') : -1;
    if (span >= 0) factors.set(span, factor);
  }
  return {
    makes: withFactors(makes, factors, times),
    stretches: changes
      .filter(({ stretch, landmark }) => landmark !== null || stretch.by !== 0)
      .map(({ stretch }) => stretch),
    ripTo: ripToOf(changes.map(({ stretch }) => stretch)),
  };
};

const ripToOf = (stretches: readonly RowStretch[]): RipTo | null => {
  const first = stretches.find(({ by }) => by !== 0);
  if (first === undefined) return null;
  const { to, rows, by } = first;
  if (to === 'shoulder') {
    const under = stretches.find((each) => each.to === 'underarm');
    return { mark: 'underarm', below: 0, row: under?.rows ?? null };
  }
  return {
    mark: to,
    below: Math.max(0, -by),
    row: rows === null ? null : Math.min(rows, rows - by),
  };
};

/** What is left of a copy that is ripped so far, as a share of its stitches; a bound-off edge gives up a row. */
export const staysOf =
  (bench: Bench, ripTo: RipTo) =>
  (piece: KnitPiece): number => {
    const row = bench.luck.pitch.length.median;
    const mark = ripTo.mark === 'cast-on' ? 0 : (piece.marks[ripTo.mark] ?? 0);
    const mm = ripTo.row === null ? mark - ripTo.below * row : ripTo.row * row;
    const share = piece.shareTo(mm);
    return share < 1 ? share : piece.shareTo((piece.marks.end ?? mark) - row);
  };

/** Shares come of areas: equal but for rounding is equal. */
const ROUNDING = 1e-9;

const standsOf = (shares: readonly number[], stays: number): PieceRows['stands'] => {
  if (shares.every((share) => share === 0)) return 'not-begun';
  return shares.some((share) => share > stays + ROUNDING) ? 'beyond' : 'below';
};

/** The pieces of a part with what is done to each; `wider` by their names. */
export const piecesInRows = (
  bench: Bench,
  part: PartName,
  { stretches, ripTo }: Pick<InRows, 'stretches' | 'ripTo'>,
  wider: Readonly<Record<string, number>> = {},
): PieceRows[] =>
  bench.pieces
    .filter((piece) => piece.part === part)
    .map((piece) => {
      const shares = sharesOfCopies(bench.question.progress, piece);
      const stands = standsOf(shares, ripTo === null ? 1 : staysOf(bench, ripTo)(piece));
      return {
        piece: piece.name,
        copies: piece.copies,
        stands,
        ripTo: stands === 'beyond' ? ripTo : null,
        stretches,
        wider: wider[piece.name] ?? 0,
      };
    });
