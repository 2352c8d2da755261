const tenth = (value: number): number => Math.round(value * 10) / 10;

/** A length inside a sentence, left for the view to print in the knitter's unit: `{mm:914.4}`. */
export const lengthToken = (mm: number): string => `{mm:${tenth(mm)}}`;

/** A length as a fault names it, in the file's unit with inches beside it: `508 mm (20 in)`. */
export const lengthText = (mm: number): string => `${tenth(mm)} mm (${tenth(mm / 25.4)} in)`;
