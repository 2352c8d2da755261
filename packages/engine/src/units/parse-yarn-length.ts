import { type Metres, metres } from './brands.ts';
import { ok, type Result } from './fault.ts';
import { asResult } from './problem.ts';
import { type QuantityKind, readQuantity } from './quantity.ts';
import { ratio, toNumber } from './rational.ts';

export type YarnLengthUnit = 'm' | 'yd';

/** Lengths of yarn in metres. A yard is 0.9144 m exactly (international yard and pound, 1959). */
export const YARN_LENGTH: QuantityKind<YarnLengthUnit> = {
  noun: 'yarn length',
  units: [
    {
      id: 'm',
      words: ['m', 'mt', 'mts', 'metre', 'metres', 'meter', 'meters'],
      factor: ratio(1n),
      system: 'metric',
    },
    {
      id: 'yd',
      words: ['yd', 'yds', 'yard', 'yards'],
      factor: ratio(1143n, 1250n),
      system: 'inch',
    },
  ],
  choices: 'm or yd',
  example: '210 m or 230 yd',
  smallest: ratio(1n, 100n),
  largest: ratio(1_000_000n),
  limits: '0.01 m and 1000 km',
};

export interface ParsedYarnLength {
  readonly value: Metres;
  readonly unit: YarnLengthUnit;
  readonly resolution: Metres;
}

/** Reads `210 m`, `230 yds`, `187,5 metres`. Range 0.01 m to 1000 km; never throws. */
export function parseYarnLength(
  text: string,
  options: { readonly field: string; readonly unit?: YarnLengthUnit | undefined },
): Result<ParsedYarnLength> {
  const quantity = readQuantity(text, YARN_LENGTH, { unit: options.unit });
  if (!quantity.ok)
    return asResult(quantity, { field: options.field, given: text, noun: 'yarn length' });
  const { value, step, unit } = quantity.value;
  return ok({ value: metres(toNumber(value)), unit, resolution: metres(toNumber(step)) });
}
