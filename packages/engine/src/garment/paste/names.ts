import type { Direction } from '../../fabric/index.ts';
import { findLandmark } from '../landmarks.ts';
import type { PrintedUnit } from './types.ts';

/** `(cm)`, `in inches`, `, cm` at the end of a name: the unit of the numbers after it. */
const UNIT_AT_END =
  /[\s,]*(?:[([]\s*(?:all |measured )?(?:in )?(cm|mm|in|inch|inches|centimetres|centimeters|")\.?\s*[)\]]|(?:,|\bin)\s+(cm|mm|inch|inches|centimetres|centimeters)|\s(cm|mm|in|inches))\.?\s*$/i;

export interface NameAndUnit {
  readonly name: string;
  readonly unit: PrintedUnit | null;
}

/** Parts the unit from a name: `Chest (cm)` → `Chest`, cm. */
export function splitNameUnit(name: string): NameAndUnit {
  const match = UNIT_AT_END.exec(name);
  const word = (match?.[1] ?? match?.[2] ?? match?.[3])?.toLowerCase();
  if (!match || !word) return { name: name.trim(), unit: null };
  const unit = word.startsWith('c') ? 'cm' : word === 'mm' ? 'mm' : 'in';
  return {
    name: name
      .slice(0, match.index)
      .replace(/[\s:]+$/, '')
      .trim(),
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
