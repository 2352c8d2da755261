import type { DecimalMark } from './length-words.ts';
import type { MassUnit } from './parse-mass.ts';
import { MASS } from './parse-mass.ts';
import type { TemperatureUnit } from './parse-temperature.ts';
import { YARN_LENGTH, type YarnLengthUnit } from './parse-yarn-length.ts';
import type { QuantityKind } from './quantity.ts';
import { toNumber } from './rational.ts';

interface QuantityFormat<Id extends string> {
  readonly unit: Id;
  /** Digits after the mark; a kitchen scale's or a ball band's step by default. */
  readonly places?: number | undefined;
  readonly decimalMark?: DecimalMark | undefined;
}

/** Steps that scales and ball bands show: 1 g, 0.01 kg, 0.1 oz, 0.01 lb, 1 m, 1 yd (common practice, no source). */
const PLACES = { g: 0, kg: 2, oz: 1, lb: 2, m: 0, yd: 0, C: 0, F: 0 } as const;

function fixed(value: number, places: number, mark: DecimalMark = '.'): string {
  if (!Number.isFinite(value)) throw new RangeError(`${value} cannot be printed`);
  const text = `${Number(value.toFixed(places))}`;
  return text.replace('-', '−').replace('.', mark);
}

function inUnit<Id extends string>(value: number, kind: QuantityKind<Id>, id: Id): number {
  const unit = kind.units.find((each) => each.id === id);
  return unit ? value / toNumber(unit.factor) : Number.NaN;
}

/** `350 g`, `0.35 kg`, `12.3 oz`. `mass` in grams. */
export const formatMass = (mass: number, format: QuantityFormat<MassUnit>): string =>
  `${fixed(inUnit(mass, MASS, format.unit), format.places ?? PLACES[format.unit], format.decimalMark)} ${format.unit}`;

/** `210 m`, `230 yd`. `length` in metres. */
export const formatYarnLength = (length: number, format: QuantityFormat<YarnLengthUnit>): string =>
  `${fixed(inUnit(length, YARN_LENGTH, format.unit), format.places ?? PLACES[format.unit], format.decimalMark)} ${format.unit}`;

/** `21 °C`, `70 °F`. `temperature` in degrees Celsius. */
export function formatTemperature(
  temperature: number,
  format: QuantityFormat<TemperatureUnit>,
): string {
  const value = format.unit === 'C' ? temperature : (temperature * 9) / 5 + 32;
  return `${fixed(value, format.places ?? PLACES[format.unit], format.decimalMark)} °${format.unit}`;
}
