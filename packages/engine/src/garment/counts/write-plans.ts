import type { Buttonholes } from './buttonholes.ts';
import type { Spacing } from './even-gaps.ts';
import type { Ratio } from './pick-up.ts';
import type { ShortRows } from './short-rows.ts';
import type { RowSpacing } from './space-rows.ts';
import { capital, counted, ordinal, VOCABULARY, type Words } from './words.ts';

const times = (n: number): string => (n === 2 ? 'twice' : `${n} times`);

/** A block at the front of a list that repeats: how long it is, and how often it comes. */
const blockOf = (parts: readonly string[]): { length: number; repeats: number } => {
  let best = { length: 1, repeats: 1 };
  for (let length = 1; length <= Math.min(6, parts.length / 2); length++) {
    let repeats = 1;
    const same = (i: number) => parts[i] === parts[i - length];
    while (
      (repeats + 1) * length <= parts.length &&
      Array.from({ length }, (_, i) => i + repeats * length).every(same)
    )
      repeats++;
    if (repeats > 1 && repeats * length > best.length * best.repeats) best = { length, repeats };
  }
  return best;
};

/** `(knit 8, decrease 1) 6 times, knit 8`: what repeats is said once. */
const folded = (parts: readonly string[]): string => {
  const said: string[] = [];
  for (let i = 0; i < parts.length; ) {
    const { length, repeats } = blockOf(parts.slice(i));
    const block = parts.slice(i, i + length).join(', ');
    said.push(repeats > 1 ? `(${block}) ${times(repeats)}` : block);
    i += length * repeats;
  }
  return said.join(', ');
};

const start = (text: string): string => `${capital(text)}.`;

/** A row of evenly spread increases or decreases in words: `Knit 8, decrease 1, …`. */
export const writeSpacing = (
  { gaps }: Spacing,
  change: 'increase' | 'decrease',
  layout: 'flat' | 'round',
): string => {
  const knit = gaps.map((gap) => (gap > 0 ? `knit ${gap}` : ''));
  const parts = knit.map((gap, i) => {
    const last = layout === 'flat' && i === knit.length - 1;
    return [gap, last ? '' : `${change} 1`].filter((part) => part !== '').join(', ');
  });
  return start(folded(parts.filter((part) => part !== '')));
};

/** `Every 6th row 3 times, then every 8th row 4 times, then 2 rows.` */
export const writeRowSpacing = ({ runs, rest }: RowSpacing, words: Words): string => {
  const often = (n: number) => (n === 1 ? 'once' : times(n));
  const every = (n: number) => {
    if (n === 1) return 'every row';
    return n === 2 ? `${VOCABULARY[words].other} row` : `every ${ordinal(n)} row`;
  };
  const said = runs.map((run) => `${every(run.every)} ${often(run.times)}`);
  return start([...said, ...(rest > 0 ? [counted(rest, 'row')] : [])].join(', then '));
};

/** `Pick up 3 stitches for every 4 rows.` */
export const writePickUp = ({ pick, of }: Ratio): string =>
  `Pick up ${counted(pick, 'stitch')} for every ${of === 1 ? 'row' : `${of} rows`}.`;

/** A buttonhole row: `Work 4, (bind off 2, work 16) 5 times, …`. `size` stitches each. */
export const writeBand = ({ gaps }: Buttonholes, size: number, words: Words): string => {
  const { bindOff } = VOCABULARY[words];
  const parts = gaps.map((gap, i) =>
    i === gaps.length - 1 ? `work ${gap}` : `work ${gap}, ${bindOff} ${size}`,
  );
  return start(folded(parts));
};

/** Short rows at one end: how many stitches are left at each turn. */
export const writeShortRows = ({ turns, flat }: ShortRows): string =>
  `Work short rows, leaving ${turns.join(', ')} stitches more unworked at each turn, until ${counted(flat, 'stitch')} ${flat === 1 ? 'is' : 'are'} worked; then work across all.`;

/** A heel of short rows over half the stitches, out and back. */
export const writeHeel = ({
  turns,
  flat,
  stitches,
}: ShortRows & { readonly stitches: number }): string =>
  `Heel, over ${stitches} stitches: work short rows, leaving ${[...new Set(turns)].join(' or ')} more unworked at each end, ${turns.length} turns at each, until ${counted(flat, 'stitch')} ${flat === 1 ? 'is' : 'are'} worked; then take the same back in, one turn after the other.`;
