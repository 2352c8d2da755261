import type { MeasurementForecast } from '@dryflat/engine/garment';

type Spanned = Pick<MeasurementForecast, 'span' | 'direction'>;

/** How a number lies: a girth goes around, a width lies across; a length needs no word. */
export const spanWord = ({ span, direction }: Spanned): string =>
  span === 'around' ? 'around' : direction === 'width' ? 'across' : '';

/** `Chest, around`; the pattern's own name where it needs no word. */
export const spannedName = (measurement: Spanned & { readonly name: string }): string => {
  const word = spanWord(measurement);
  return word === '' ? measurement.name : `${measurement.name}, ${word}`;
};
