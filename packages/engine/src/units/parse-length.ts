import { type Millimetres, mm } from './brands.ts';
import { ok, type Result } from './fault.ts';
import { LENGTH, type LengthUnit, PRINTED_AS } from './length-units.ts';
import { asResult } from './problem.ts';
import { readQuantity } from './quantity.ts';
import { toNumber } from './rational.ts';

export interface ParsedLength {
  readonly value: Millimetres;
  /** Unit to print it back in. */
  readonly unit: LengthUnit;
  /** How finely it was written: 3.175 mm for `13 3/8 in`, 1 mm for `34,5 cm`, 10 mm for `34 cm`. */
  readonly resolution: Millimetres;
}

export interface LengthOptions {
  /** Name of the field, for the fault. */
  readonly field: string;
  /** Unit of a bare number; without it a bare number is a fault that asks for the unit. */
  readonly unit?: LengthUnit | undefined;
  /** Allows zero and a sign, as in ease: `-2 in`, `−5 cm`, `+4`. */
  readonly signed?: boolean | undefined;
}

/**
 * Reads a length as people write it: `13 3/8`, `13⅜"`, `13-3/8 inches`, `34,5cm`, `1' 2"`, `1.2 m`.
 * The value is the double nearest to the exact length. Range 0.001 mm to 100 m; never throws.
 */
export function parseLength(text: string, options: LengthOptions): Result<ParsedLength> {
  const quantity = readQuantity(text, LENGTH, options);
  if (!quantity.ok)
    return asResult(quantity, { field: options.field, given: text, noun: 'length' });
  const { value, step, unit } = quantity.value;
  return ok({ value: mm(toNumber(value)), unit: PRINTED_AS[unit], resolution: mm(toNumber(step)) });
}
