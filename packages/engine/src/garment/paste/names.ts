import type { Direction } from '../../fabric/index.ts';
import { findLandmark } from '../landmarks.ts';
import type { PrintedUnit } from './types.ts';

/** `(cm)`, `in inches`, `, cm` at the end of a name: the unit of the numbers after it. */
const UNIT_AT_END =
  /(?:[([] ?(?:all |measured )?(?:in )?(cm|mm|in|inch|inches|centimetres|centimeters|")\.? ?[)\]]|(?:,|\bin) (cm|mm|inch|inches|centimetres|centimeters)| (cm|mm|in|inches))\.?$/i;

export interface NameAndUnit {
  readonly name: string;
  readonly unit: PrintedUnit | null;
}

/** Without the letters of `off` at its end; linear, as an expression anchored there is not. */
export function trimmedEnd(text: string, off: string): string {
  let end = text.length;
  while (end > 0 && off.includes(text[end - 1]!)) end--;
  return text.slice(0, end);
}

/** Parts the unit from a name: `Chest (cm)` → `Chest`, cm. */
export function splitNameUnit(text: string): NameAndUnit {
  const name = text.replace(/\s+/g, ' ').trim();
  const match = UNIT_AT_END.exec(name);
  const word = (match?.[1] ?? match?.[2] ?? match?.[3])?.toLowerCase();
  if (!match || !word) return { name, unit: null };
  const unit = word.startsWith('c') ? 'cm' : word === 'mm' ? 'mm' : 'in';
  return {
    name: trimmedEnd(name.slice(0, match.index), ' ,:'),
    unit,
  };
}

const FLAT = /\b(?:flat|half|pit to pit|armpit to armpit|one side|across)\b|½|(?<!\d)1\/2/i;
const AROUND = /\b(?:circumference|circ|around|girth|all round|all the way)\b/i;

/** What the words say about flat or around; undefined where they say nothing, or both. */
export function spanFromWords(name: string): 'flat' | 'around' | undefined {
  const [flat, around] = [FLAT.test(name), AROUND.test(name)];
  if (flat === around) return undefined;
  return flat ? 'flat' : 'around';
}

const WIDTHS = /\b(?:width|wide|circumference|circ|around|girth|across)\b/i;
const LENGTHS = /\b(?:length|long|depth|deep|height|high|drop)\b/i;

export function directionFromWords(name: string, landmark: string): Direction | null {
  const known = findLandmark(landmark);
  if (known) return known.direction;
  const [width, length] = [WIDTHS.test(name), LENGTHS.test(name)];
  if (width === length) return null;
  return width ? 'width' : 'length';
}

const BODY =
  /\bto fit\b|^\s*fits\b|^\s*body (?:bust|chest|waist|hips?|head)\b|\b(?:actual|your) (?:bust|chest) of\b/i;

/** `To fit bust` measures the body that the size is for, not the garment. */
export const measuresWhat = (name: string): 'garment' | 'body' =>
  BODY.test(name) ? 'body' : 'garment';
