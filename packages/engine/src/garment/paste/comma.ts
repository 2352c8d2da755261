import { unitNamed, type ValuePiece } from './value-pieces.ts';

/** What a comma between two digits without a space means in a line. */
export type CommaMeaning = 'decimal' | 'separator' | 'unclear';

const QUARTERS = new Set(['0', '00', '5', '25', '50', '75']);
const isRise = ([low, high]: readonly string[]): boolean => {
  const times = Number(high) / Number(low);
  return times >= 1 && times < 1.6;
};

/** How many numbers a line has when its tight commas separate; when they do not, one a piece. */
const separated = (numbers: readonly string[]): number =>
  numbers.reduce((sum, text) => sum + text.split(',').length, 0);

/** `wanted`: numbers that the line should hold, one for each size in each unit that it names. */
function byCount(numbers: readonly string[], wanted: number | null): CommaMeaning | null {
  const asSeparator = separated(numbers) === wanted;
  const asDecimal = numbers.length === wanted;
  if (asSeparator === asDecimal) return null;
  return asDecimal ? 'decimal' : 'separator';
}

const unitsNamed = (pieces: readonly ValuePiece[]): number =>
  new Set(pieces.filter(({ kind }) => kind === 'unit').map(({ text }) => unitNamed(text))).size;

/** By how the numbers look: `34,5` is a decimal, `96,106` goes up by a size, `34,25` is a quarter. */
function byLooks(pairs: readonly (readonly string[])[]): CommaMeaning {
  if (pairs.every(([, after = '']) => after.length === 1)) return 'decimal';
  if (pairs.every(isRise)) return 'separator';
  return pairs.every(([, after = '']) => QUARTERS.has(after)) ? 'decimal' : 'unclear';
}

/**
 * Commas with a space, semicolons and colons separate for certain, so beside them a tight comma is
 * a decimal one. Without them the number of sizes decides, then how the numbers look. `sizes`: how
 * many there are, null where that is not known.
 */
export function commaMeaning(pieces: readonly ValuePiece[], sizes: number | null): CommaMeaning {
  const numbers = pieces.filter(({ kind }) => kind === 'number').map(({ text }) => text);
  const tight = numbers.filter((text) => text.includes(','));
  if (tight.length === 0) return 'decimal';
  const separators = pieces.filter(({ kind }) => kind === 'separator').map(({ text }) => text);
  const pairs = tight.map((text) => text.split(','));
  const chained =
    pairs.some((parts) => parts.length > 2) || tight.some((text) => text.includes('.'));
  if (separators.some((text) => ';:'.includes(text))) return chained ? 'unclear' : 'decimal';
  if (chained) return 'separator';
  if (separators.includes(',')) return 'decimal';
  const wanted = sizes === null ? null : sizes * Math.max(1, unitsNamed(pieces));
  return byCount(numbers, wanted) ?? byLooks(pairs);
}
