import { type Celsius, celsius } from './brands.ts';
import { ok, type Result } from './fault.ts';
import { lexemes } from './lexemes.ts';
import { readNumber } from './number.ts';
import { asResult, type Read, read, unread } from './problem.ts';
import { add, isAbove, negate, type Rational, ratio, times, toNumber } from './rational.ts';

export type TemperatureUnit = 'C' | 'F';

export interface ParsedTemperature {
  readonly value: Celsius;
  readonly unit: TemperatureUnit;
}

const WORDS: Readonly<Record<TemperatureUnit, readonly string[]>> = {
  C: ['c', '°c', 'celsius', 'centigrade'],
  F: ['f', '°f', 'fahrenheit'],
};
const COLDEST = ratio(-60n);
const HOTTEST = ratio(300n);

const toCelsius = (value: Rational, unit: TemperatureUnit): Rational =>
  unit === 'C' ? value : times(add(value, ratio(-32n)), ratio(5n, 9n));

function readUnit(word: string, understood: TemperatureUnit | undefined): Read<TemperatureUnit> {
  if (WORDS.C.includes(word)) return read('C');
  if (WORDS.F.includes(word)) return read('F');
  if ((word === '' || word === '°') && understood) return read(understood);
  if (word === '' || word === '°')
    return unread('unit-missing', 'the number has no unit', 'Add °C or °F.');
  return unread('unit-unknown', `“${word}” is not a unit of temperature`, 'Use °C or °F.');
}

function readTemperature(
  text: string,
  understood: TemperatureUnit | undefined,
): Read<{ value: Rational; unit: TemperatureUnit }> {
  const pieces = text.length > 60 ? [] : lexemes(text);
  const signed = pieces[0]?.text === '-' || pieces[0]?.text === '+' ? 1 : 0;
  if (text.trim() === '')
    return unread('empty', 'the temperature is missing', 'Write it like 21 °C or 70 °F.');
  if (pieces[signed]?.kind !== 'number')
    return unread('unreadable', 'this is not a temperature', 'Write it like 21 °C or 70 °F.');
  const number = readNumber(pieces, signed);
  if (!number.ok) return number;
  const rest = pieces.slice(number.value.next).map((piece) => piece.text);
  const unit = readUnit(rest.filter((word) => !/^degrees?$|^deg$/.test(word)).join(''), understood);
  if (!unit.ok) return unit;
  const written = pieces[0]?.text === '-' ? negate(number.value.value) : number.value.value;
  const value = toCelsius(written, unit.value);
  if (isAbove(COLDEST, value) || isAbove(value, HOTTEST))
    return unread(
      'out-of-range',
      'this is outside −60 to 300 °C',
      'Check the number and its unit.',
    );
  return read({ value, unit: unit.value });
}

/** Reads `21 °C`, `70F`, `-5 c`, `68 degrees Fahrenheit`. Range −60 to 300 °C; never throws. */
export function parseTemperature(
  text: string,
  options: { readonly field: string; readonly unit?: TemperatureUnit | undefined },
): Result<ParsedTemperature> {
  const outcome = readTemperature(text, options.unit);
  if (!outcome.ok)
    return asResult(outcome, { field: options.field, given: text, noun: 'temperature' });
  return ok({ value: celsius(toNumber(outcome.value.value)), unit: outcome.value.unit });
}
