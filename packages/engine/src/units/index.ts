export * from './brands.ts';
export {
  COUNT_SPANS,
  type CountOver,
  type CountSpan,
  countAcross,
  countOfPitch,
  formatCountOver,
  pitchOf,
} from './count-over.ts';
export type { Counted } from './count-words.ts';
export * from './fault.ts';
export * from './fill-lengths.ts';
export { formatExact } from './format-exact.ts';
export { formatKnown } from './format-known.ts';
export { formatLength, type LengthFormat, printedStep } from './format-length.ts';
export * from './format-quantities.ts';
export * from './format-range.ts';
export { formatOffBy, formatSigned } from './format-signed.ts';
export type { LengthUnit } from './length-units.ts';
export { type DecimalMark, type Style, unbroken } from './length-words.ts';
export { ownValue } from './own-value.ts';
export { type CountOptions, type ParsedCounts, parseCountOver } from './parse-count-over.ts';
export { type LengthOptions, type ParsedLength, parseLength } from './parse-length.ts';
export { type MassUnit, type ParsedMass, parseMass } from './parse-mass.ts';
export {
  type ParsedTemperature,
  parseTemperature,
  type TemperatureUnit,
} from './parse-temperature.ts';
export {
  type ParsedYarnLength,
  parseYarnLength,
  type YarnLengthUnit,
} from './parse-yarn-length.ts';
export { type PlainText, toPlain } from './plain.ts';
export type { TapeFraction } from './tape-fractions.ts';
