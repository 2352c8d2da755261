import { type Grams, grams } from './brands.ts';
import { ok, type Result } from './fault.ts';
import { asResult } from './problem.ts';
import { type QuantityKind, readQuantity } from './quantity.ts';
import { ratio, toNumber } from './rational.ts';

export type MassUnit = 'g' | 'kg' | 'oz' | 'lb';

const POUND = ratio(45_359_237n, 100_000n);

/** Masses in grams. A pound is 453.59237 g exactly (international yard and pound, 1959), an ounce a sixteenth. */
export const MASS: QuantityKind<MassUnit> = {
  noun: 'mass',
  units: [
    {
      id: 'g',
      words: ['g', 'gr', 'gm', 'gms', 'gram', 'grams', 'gramme', 'grammes'],
      factor: ratio(1n),
      system: 'metric',
    },
    {
      id: 'kg',
      words: ['kg', 'kgs', 'kilo', 'kilos', 'kilogram', 'kilograms'],
      factor: ratio(1000n),
      system: 'metric',
    },
    {
      id: 'oz',
      words: ['oz', 'ozs', 'ounce', 'ounces'],
      factor: ratio(POUND.n, POUND.d * 16n),
      system: 'inch',
    },
    { id: 'lb', words: ['lb', 'lbs', 'pound', 'pounds'], factor: POUND, system: 'inch' },
  ],
  choices: 'g, kg, oz or lb',
  example: '350 g or 12 1/4 oz',
  after: { lb: 'oz' },
  smallest: ratio(1n, 1000n),
  largest: ratio(100_000n),
  limits: '0.001 g and 100 kg',
};

export interface ParsedMass {
  readonly value: Grams;
  readonly unit: MassUnit;
  readonly resolution: Grams;
}

/** Reads `350 g`, `0,4 kg`, `12¼ oz`, `1 lb 2 oz`. Range 0.001 g to 100 kg; never throws. */
export function parseMass(
  text: string,
  options: { readonly field: string; readonly unit?: MassUnit | undefined },
): Result<ParsedMass> {
  const quantity = readQuantity(text, MASS, { unit: options.unit });
  if (!quantity.ok) return asResult(quantity, { field: options.field, given: text, noun: 'mass' });
  const { value, step, unit } = quantity.value;
  return ok({ value: grams(toNumber(value)), unit, resolution: grams(toNumber(step)) });
}
