import type { GarmentKind } from '../kinds.ts';
import { guessLandmark } from './synonyms.ts';
import type { ValuePiece } from './value-pieces.ts';

/** `Row 3 (RS):`, `Next rnd:`, but not `Round yoke depth`. */
const ROWS_OF =
  /^[^\p{L}]*(?:(?:next|set-?up|first|last|following|inc|dec|increase|decrease|foundation|all|every)\s+)?(?:rows?|rnds?|rounds?)(?=\s*(?:\d|[(:*,]|$))/iu;
/** Words that a sentence about knitting begins with, and no name of a measurement does. */
const IMPERATIVE =
  /^[^\p{L}]*(?:work|continue|cont|knit|purl|co|bo|rep|repeat|turn|slip|sl|place|remove|join|begin|beg|using|with|change|decrease|dec|increase|inc|pick|sew|weave|cut|break|leave|divide|soak|wash|press|then|note|if|when|once)(?![\p{L}-])/iu;
/** Words that no name of a measurement has in it. */
const WORKED =
  /\b(?:until|measures|cast(?:ing)? on(?! edge)|bind(?:ing)? off|cast(?:ing)? off(?! edge)|pick(?:ing)? up|times|[kp]\d+|[kp]2tog|ssk|yo|pm|m1|ending with|only)\b/i;

/** Is this what to knit rather than what to measure? Told by the words of the trade, American and British. */
export const isInstruction = (plain: string): boolean =>
  ROWS_OF.test(plain) || IMPERATIVE.test(plain) || WORKED.test(plain);

/** What is counted over no length: its number is no measurement. */
const COUNTED = /^(?:sts?|stitch(?:es)?|rows?|rnds?|rounds?|x)$/i;
/** Things that have sizes of their own. */
const THINGS =
  /\b(?:needles?|dpns?|hook|yarn|skeins?|balls?|hanks?|buttons|markers?|ease|pages?|charts?)\b/i;
/** Words in the longest name of a place that a pattern prints; a longer one is a sentence. */
const LONGEST_NAME = 12;

interface Line {
  readonly plain: string;
  readonly name: string;
  /** What the numbers were read from, and the word that ended them. */
  readonly pieces: readonly ValuePiece[];
  readonly after: ValuePiece | undefined;
  /** Whether the name, or the text as a whole, says the unit. */
  readonly unitSaid: boolean;
  readonly sizes: number | null;
  readonly kind: GarmentKind | undefined;
}

/**
 * Do the numbers of a line measure the garment? Not where they count stitches or things, nor in a
 * sentence about what to knit. A name that is no known place needs a unit, or a number for each size.
 */
export function measures({ plain, name, pieces, after, unitSaid, sizes, kind }: Line): boolean {
  if (isInstruction(plain) || (after && COUNTED.test(after.text))) return false;
  const numbers = pieces.filter((piece) => piece.kind === 'number' || piece.kind === 'none').length;
  const unit = unitSaid || pieces.some((piece) => piece.kind === 'unit');
  if (name === '') return after === undefined && (unit || numbers > 1);
  if (guessLandmark(name, kind) !== 'custom') return true;
  if (THINGS.test(plain) || name.split(/\s+/).length > LONGEST_NAME) return false;
  return unit || (after === undefined && numbers > 1 && numbers === (sizes ?? numbers));
}
