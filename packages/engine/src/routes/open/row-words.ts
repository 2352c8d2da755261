import type { PartName } from '../../garment/index.ts';
import type { PieceRows, RipTo, RowMark, RowStretch } from '../types.ts';
import { type Bench, mmToken, partWord } from './draft.ts';

/** Pieces of a part, each with its rows. */
export interface ToldRows {
  readonly part: PartName;
  readonly pieces: readonly PieceRows[];
}

const ENDS: Readonly<Partial<Record<RowMark, string>>> = {
  crown: 'the crown',
  heel: 'the heel',
  toe: 'the toe',
  tip: 'the tip',
};

const isYoked = ({ forecast: { kind } }: Bench): boolean => /-(raglan|yoke)$/.test(kind);
const isDropped = ({ forecast: { kind } }: Bench): boolean => kind.endsWith('-drop-shoulder');

/** What is begun at a mark: `the armholes`, `the crown`; null where it is bound off. */
const begunAt = (bench: Bench, part: PartName, mark: RowMark): string | null => {
  if (mark !== 'underarm') return ENDS[mark] ?? null;
  if (part === 'sleeve') return isDropped(bench) ? null : 'the top shaping';
  return isYoked(bench) ? 'the yoke' : 'the armholes';
};

/** `1 row`, `11 rows`, whichever way. */
export const rowsWord = (by: number): string =>
  Math.abs(by) === 1 ? '1 row' : `${Math.abs(by)} rows`;
const moreWord = (by: number): string => (by > 0 ? 'more' : 'fewer');
const than = (by: number): string =>
  by === 0 ? 'as planned' : `${Math.abs(by)} ${moreWord(by)} than planned`;

const plural = ({ piece, copies }: Pick<PieceRows, 'piece' | 'copies'>): string =>
  copies === 2 ? `${piece}s` : piece;

/** `the back`, `the back and the front`, `the body` where it is all of it. */
const who = (bench: Bench, part: PartName, pieces: readonly PieceRows[]): string => {
  const all = bench.pieces.filter((each) => each.part === part);
  return pieces.length === all.length && pieces.length > 1
    ? `the ${partWord(bench, part)}`
    : pieces.map((each) => `the ${plural(each)}`).join(' and ');
};

/** `row 105`, `6 rows below where the crown begins`. */
const placeOf = (bench: Bench, part: PartName, { row, mark, below }: RipTo): string => {
  if (mark === 'cast-on') return 'the first row';
  if (row !== null) return `row ${row}`;
  const what = begunAt(bench, part, mark);
  const place =
    what === null ? 'the end' : `where ${what} ${what.endsWith('s') ? 'begin' : 'begins'}`;
  return below === 0 ? place : `${rowsWord(below)} below ${place}`;
};

const topOf = (bench: Bench, by: number): string =>
  `${isYoked(bench) ? 'the yoke' : 'the armholes'} ${rowsWord(by)} ${by > 0 ? 'deeper' : 'less deep'}`;

/** In a few words: what is ripped how far, and what then comes sooner or later. */
export const rowsName = (bench: Bench, { part, pieces }: ToldRows): string => {
  const ripped = pieces.filter(({ ripTo }) => ripTo !== null);
  const ripTo = ripped[0]?.ripTo ?? null;
  const first = pieces[0]?.stretches.find(({ by }) => by !== 0);
  if (first === undefined) return '';
  const { to, by } = first;
  const what = begunAt(bench, part, to);
  const before = what === null ? 'before binding off' : `before ${what}`;
  if (ripTo === null)
    return to === 'shoulder'
      ? `Knit the ${partWord(bench, part)} with ${topOf(bench, by)}`
      : `Knit the ${partWord(bench, part)} with ${rowsWord(by)} ${moreWord(by)} ${before}`;
  const down = `Rip ${who(bench, part, ripped)} down to ${placeOf(bench, part, ripTo)}`;
  if (to === 'shoulder') return `${down}, the underarm, and knit ${topOf(bench, by)}`;
  if (by > 0) return `${down} and knit ${rowsWord(by)} more ${before}`;
  return `${down} and ${what === null ? 'bind off' : `begin ${what}`} there, ${rowsWord(by)} lower`;
};

const fromCastOn = (bench: Bench, row: number): string =>
  `row ${row} from the cast-on edge (${mmToken(row * bench.luck.pitch.length.median)} up as knit)`;

const ripText = (bench: Bench, part: PartName, rows: PieceRows): string[] => {
  const { ripTo, copies, piece } = rows;
  if (ripTo === null) return [];
  if (ripTo.mark === 'cast-on' && ripTo.row === 0) return ['Rip all of it and cast on again.'];
  const place =
    ripTo.row === null || ripTo.mark === 'cast-on'
      ? placeOf(bench, part, ripTo)
      : fromCastOn(bench, ripTo.row);
  return [
    copies === 2
      ? `Rip down to ${place} each ${piece} that is beyond it.`
      : `Rip down to ${place}.`,
  ];
};

const topText = (bench: Bench, { rows, by }: RowStretch): string => {
  const where = isYoked(bench) ? 'For the yoke knit' : 'From there to the shoulder knit';
  return rows === null ? `${where} ${than(by)}.` : `${where} ${rowsWord(rows)}, ${than(by)}.`;
};

const stretchText = (
  bench: Bench,
  part: PartName,
  { ripTo, stands }: PieceRows,
  stretch: RowStretch,
): string => {
  const { to, rows, by } = stretch;
  if (to === 'shoulder') return topText(bench, stretch);
  const what = begunAt(bench, part, to);
  const begin = what === null ? 'bind off' : `begin ${what}`;
  const shift = by === 0 ? '' : `, ${rowsWord(by)} ${by > 0 ? 'later' : 'sooner'} than planned`;
  const isThere =
    ripTo !== null && (rows === null ? by <= 0 && ripTo.mark === to : rows === ripTo.row);
  if (isThere) return `${begin.slice(0, 1).toUpperCase()}${begin.slice(1)} there${shift}.`;
  const on = stands === 'not-begun' || ripTo?.mark === 'cast-on' ? 'Knit' : 'Knit on';
  return rows === null
    ? `${on} as planned, but ${begin} ${rowsWord(by)} ${by > 0 ? 'later' : 'sooner'}.`
    : `${on} to ${ripTo?.row == null ? fromCastOn(bench, rows) : `row ${rows}`} and ${begin} there${shift}.`;
};

/** Both underarms are shared out, whether over one piece or over two that open. */
const widerText = ({ wider, copies }: PieceRows): string[] => {
  if (wider === 0) return [];
  const [many, word] = [Math.abs(wider), moreWord(wider)];
  return [
    `Cast on ${many / copies} stitches ${word} than planned${copies === 2 ? ' for each' : ''}, and bind off ${many / 2} ${word} at ${copies === 2 ? 'its' : 'each'} underarm.`,
  ];
};

/** Stretches that are knit anew, or at all; those of which nothing is known and nothing changes are not told. */
const stretchesAbove = ({ stretches, ripTo }: PieceRows): RowStretch[] => {
  const from = stretches.findIndex(({ to }) => to === ripTo?.mark);
  return stretches.filter(({ rows, by }, k) => k >= from && (rows !== null || by !== 0));
};

/** What is done to pieces that are told alike: `Back: rip down to row 105 …`. `between`: after ripping. */
export const rowSteps = (
  bench: Bench,
  { part, pieces }: ToldRows,
  between: readonly string[] = [],
): string[] => {
  const told = new Map<string, string[]>();
  // What is ripped comes first.
  const inOrder = [...pieces].sort((a, b) => Number(a.ripTo === null) - Number(b.ripTo === null));
  for (const rows of inOrder) {
    const said = [
      ...ripText(bench, part, rows),
      ...widerText(rows),
      ...between,
      ...stretchesAbove(rows).map((stretch) => stretchText(bench, part, rows, stretch)),
    ].join(' ');
    told.set(said, [...(told.get(said) ?? []), plural(rows)]);
  }
  return [...told].flatMap(([said, names]) => {
    const label = names.join(' and ');
    return said === '' ? [] : [`${label.slice(0, 1).toUpperCase()}${label.slice(1)}: ${said}`];
  });
};

/** Said where the rows of a body with shoulders change: what is shaped from the top keeps its place there. */
export const fromTheTop = (bench: Bench, part: PartName): string[] =>
  part === 'sleeve' || bench.pieces.length === 1 || isYoked(bench)
    ? []
    : ['Neck and shoulders are shaped as planned, their rows counted down from the top.'];
