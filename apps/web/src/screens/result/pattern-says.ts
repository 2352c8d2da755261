import { type GarmentRecord, mayGoAround, type PatternMeasurement } from '@dryflat/record';

export const goesAround = mayGoAround;

/** `The pattern says 104 cm around, 52 cm flat.`; says so where it gives no number. */
export const targetText = (
  { pattern }: GarmentRecord,
  place: PatternMeasurement,
  length: (valueMm: number) => string,
): string => {
  const at = pattern.chosen === undefined ? 0 : pattern.sizes.indexOf(pattern.chosen);
  const value = place.values[at] ?? null;
  if (value === null) return 'The pattern gives no number here.';
  if (!mayGoAround(place)) return `The pattern says ${length(value)}.`;
  if (place.span === undefined)
    return `The pattern says ${length(value)}, flat or around is not said yet.`;
  const around = place.span === 'flat' ? 2 * value : value;
  return `The pattern says ${length(around)} around, ${length(around / 2)} flat.`;
};
