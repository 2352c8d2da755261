import { formatExact } from './format-exact.ts';
import {
  formatLength,
  type LengthFormat,
  minusSign,
  nearestStep,
  printedStep,
} from './format-length.ts';
import { MM_PER_UNIT } from './length-units.ts';
import { withUnit } from './length-words.ts';
import { toNumber } from './rational.ts';

const MOST_PLACES = 9;

/** Enough decimals that the last one is no coarser than `resolution`. */
function decimals(length: number, resolution: number, format: LengthFormat): string {
  const unit = toNumber(MM_PER_UNIT[format.unit]);
  const places = Math.min(MOST_PLACES, Math.max(0, Math.ceil(Math.log10(unit / resolution))));
  const sign = length < 0 ? minusSign(format.style) : '';
  const number = `${Number((Math.abs(length) / unit).toFixed(places))}`;
  return withUnit(`${sign}${number.replace('.', format.decimalMark ?? '.')}`, format);
}

/**
 * A length that is known to `resolution` millimetres (above zero): on the tape where the tape's step
 * moves it by less than half of that, as a decimal fine enough otherwise. So printing a 34.5 cm in
 * inches gives `13.58 in`, not `13⅝ in`, and nothing that was written is hidden.
 */
export function formatKnown(length: number, resolution: number, format: LengthFormat): string {
  if (!(resolution > 0)) throw new RangeError(`a resolution of ${resolution} is not above zero`);
  const step = printedStep(format);
  const hidden = Math.abs(Math.abs(length) - nearestStep(Math.abs(length), step) * step);
  if (hidden * 2 < resolution) return formatLength(length, format);
  const exact = formatExact(length, format);
  const rounded = decimals(length, resolution, format);
  return exact.length <= rounded.length ? exact : rounded;
}
