import type { LengthUnit } from './length-units.ts';

export type Style = 'glyph' | 'ascii' | 'spoken';
export type DecimalMark = '.' | ',';

const ONE = {
  us: { in: 'inch', cm: 'centimeter', mm: 'millimeter' },
  uk: { in: 'inch', cm: 'centimetre', mm: 'millimetre' },
} as const;
const MANY = {
  us: { in: 'inches', cm: 'centimeters', mm: 'millimeters' },
  uk: { in: 'inches', cm: 'centimetres', mm: 'millimetres' },
} as const;

interface UnitStyle {
  readonly unit: LengthUnit;
  readonly style?: Style | undefined;
  readonly words?: 'us' | 'uk' | undefined;
  readonly bare?: boolean | undefined;
}

/** `1 inch`, `13 and 3 eighths inches`, `3 eighths of an inch`, `half an inch`. */
function spoken(number: string, { unit, words = 'us' }: UnitStyle): string {
  const bare = number.replace(/^(minus|plus) /, '');
  const sign = number.slice(0, number.length - bare.length);
  if (bare === '1') return `${number} ${ONE[words][unit]}`;
  if (bare === 'a half') return `${sign}half an inch`;
  if (/^\d+ [a-z-]+$/.test(bare)) return `${number} of an inch`;
  return `${number} ${MANY[words][unit]}`;
}

/** Adds the unit in the style asked for. */
export function withUnit(number: string, format: UnitStyle): string {
  if (format.bare) return number;
  return format.style === 'spoken' ? spoken(number, format) : `${number} ${format.unit}`;
}

/** Keeps a printed quantity on one line of running text: its spaces become no-break spaces. */
export const unbroken = (printed: string): string => printed.replaceAll(' ', '\u00a0');
