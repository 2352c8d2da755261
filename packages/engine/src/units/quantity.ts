import { type Lexeme, lexemes } from './lexemes.ts';
import { readNumber } from './number.ts';
import { type Read, read, unread } from './problem.ts';
import { add, isAbove, negate, type Rational, times, toNumber, ZERO } from './rational.ts';

export interface Unit<Id extends string = string> {
  readonly id: Id;
  readonly words: readonly string[];
  /** How many of the base unit one of these is, exactly. */
  readonly factor: Rational;
  /** Only parts of one system add up: `1 ft 2 in`, `1 m 20 cm`. */
  readonly system: 'metric' | 'inch';
}

/** What the reader has to know of a kind of quantity. */
export interface QuantityKind<Id extends string = string> {
  /** `length`, `mass`: in messages, and before the code of a fault. */
  readonly noun: string;
  readonly units: readonly Unit<Id>[];
  /** Units to choose from in a message, and a number written well. */
  readonly choices: string;
  readonly example: string;
  /** The part that follows without a unit of its own: inches after feet. */
  readonly after?: Readonly<Partial<Record<Id, Id>>>;
  readonly smallest: Rational;
  readonly largest: Rational;
  readonly limits: string;
}

export interface QuantityOptions<Id extends string = string> {
  /** Unit of a bare number. Without it a bare number is a fault. */
  readonly unit?: Id | undefined;
  /** Allows a sign and zero. */
  readonly signed?: boolean | undefined;
}

export interface Quantity<Id extends string = string> {
  readonly value: Rational;
  /** Smallest step that the writing tells apart, in the base unit. */
  readonly step: Rational;
  /** Unit of the last part. */
  readonly unit: Id;
}

interface Part<Id extends string> {
  readonly value: Rational;
  readonly step: Rational;
  readonly unit: Unit<Id>;
  readonly next: number;
}

type Kind<Id extends string> = QuantityKind<Id>;
const LONGEST = 200;
const BETWEEN = new Set(['and', '&', ',', '+']);

const unreadable = <Id extends string>(kind: Kind<Id>): Read<never> =>
  unread('unreadable', `this is not a ${kind.noun}`, `Write it like ${kind.example}.`);

const unitNamed = <Id extends string>(kind: Kind<Id>, word: string): Unit<Id> | undefined =>
  kind.units.find(({ words }) => words.includes(word));

const unitById = <Id extends string>(kind: Kind<Id>, id: Id): Unit<Id> | undefined =>
  kind.units.find((unit) => unit.id === id);

function range<Id extends string>(kind: Kind<Id>): Read<never> {
  return unread(
    'two-values',
    `these are two numbers where one ${kind.noun} is wanted`,
    'Keep the one that counts.',
  );
}

/** The unit at `i`, or the one that is understood there. */
function readUnit<Id extends string>(
  kind: Kind<Id>,
  piece: Lexeme | undefined,
  understood: Unit<Id> | undefined,
): Read<{ unit: Unit<Id>; taken: 0 | 1 }> {
  const named = piece && unitNamed(kind, piece.text);
  if (named) return read({ unit: named, taken: 1 });
  if (piece?.kind === 'word' && piece.text !== 'to' && !BETWEEN.has(piece.text))
    return unread(
      'unit-unknown',
      `“${piece.text}” is not a unit of ${kind.noun} known here`,
      `Use ${kind.choices}.`,
    );
  if (piece && !BETWEEN.has(piece.text))
    return piece.kind === 'number' ||
      piece.text === '-' ||
      piece.text === 'to' ||
      piece.text === '/'
      ? range(kind)
      : unreadable(kind);
  if (understood) return read({ unit: understood, taken: 0 });
  return unread('unit-missing', 'the number has no unit', `Add ${kind.choices}.`);
}

function readPart<Id extends string>(
  kind: Kind<Id>,
  pieces: readonly Lexeme[],
  at: number,
  understood: Unit<Id> | undefined,
): Read<Part<Id>> {
  if (pieces[at]?.kind !== 'number') return unreadable(kind);
  const number = readNumber(pieces, at);
  if (!number.ok) return number;
  const { next } = number.value;
  const unit = readUnit(kind, pieces[next], understood);
  if (!unit.ok) return unit;
  const { factor } = unit.value.unit;
  return read({
    value: times(number.value.value, factor),
    step: times(number.value.step, factor),
    unit: unit.value.unit,
    next: next + unit.value.taken,
  });
}

const follows = <Id extends string>(larger: Unit<Id>, smaller: Unit<Id>): boolean =>
  larger.system === smaller.system && isAbove(larger.factor, smaller.factor);

/** All parts from `at`, largest unit first; they add up. */
function readParts<Id extends string>(
  kind: Kind<Id>,
  pieces: readonly Lexeme[],
  at: number,
  options: QuantityOptions<Id>,
): Read<Quantity<Id>> {
  let last: Part<Id> | undefined;
  let total = ZERO;
  let i = at;
  while (i < pieces.length || last === undefined) {
    if (last && BETWEEN.has(pieces[i]?.text ?? '')) i++;
    const bare = last ? kind.after?.[last.unit.id] : options.unit;
    const part = readPart(kind, pieces, i, bare && unitById(kind, bare));
    if (!part.ok) return last && part.problem.code === 'unreadable' ? range(kind) : part;
    if (last && !follows(last.unit, part.value.unit)) return range(kind);
    last = part.value;
    total = add(total, last.value);
    i = last.next;
  }
  return read({ value: total, step: last.step, unit: last.unit.id });
}

function checkSize<Id extends string>(
  kind: Kind<Id>,
  quantity: Quantity<Id>,
  signed: boolean,
): Read<Quantity<Id>> {
  const { value } = quantity;
  // As doubles, for the printed form of a limit may lie a hair beside it and must read back.
  const magnitude = Math.abs(toNumber(value));
  if (value.n === 0n && !signed)
    return unread('zero', `a ${kind.noun} of zero was given`, 'Leave it empty if there is none.');
  const [least, most] = [toNumber(kind.smallest), toNumber(kind.largest)];
  if (magnitude > most || (value.n !== 0n && magnitude < least))
    return unread(
      'out-of-range',
      `the ${kind.noun} is not between ${kind.limits}`,
      'Check the number and its unit.',
    );
  return read(quantity);
}

/** Reads a quantity as people write it. Pure; never throws, whatever the text. */
export function readQuantity<Id extends string>(
  text: string,
  kind: Kind<Id>,
  options: QuantityOptions<Id> = {},
): Read<Quantity<Id>> {
  const pieces = text.length > LONGEST ? [] : lexemes(text);
  if (text.trim() === '')
    return unread('empty', `the ${kind.noun} is missing`, `Write it like ${kind.example}.`);
  const sign = pieces[0]?.text === '-' || pieces[0]?.text === '+' ? pieces[0].text : '';
  if (sign === '-' && pieces[1]?.kind === 'number' && !options.signed)
    return unread('negative', `a ${kind.noun} cannot be below zero`, 'Leave the minus sign out.');
  const parts = readParts(kind, pieces, sign ? 1 : 0, options);
  if (!parts.ok) return parts;
  const { value } = parts.value;
  const quantity = sign === '-' ? { ...parts.value, value: negate(value) } : parts.value;
  return checkSize(kind, quantity, options.signed ?? false);
}
