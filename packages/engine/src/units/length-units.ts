import type { QuantityKind } from './quantity.ts';
import { ratio } from './rational.ts';

/** Units that lengths are printed in. An inch is 25.4 mm exactly (international yard and pound, 1959). */
export type LengthUnit = 'mm' | 'cm' | 'in';
export type WrittenLengthUnit = LengthUnit | 'm' | 'ft' | 'yd';

export const MM_PER_UNIT = { mm: ratio(1n), cm: ratio(10n), in: ratio(127n, 5n) } as const;

/** Lengths on a garment, in millimetres. Largest: 100 m, more than any piece of knitting. */
export const LENGTH: QuantityKind<WrittenLengthUnit> = {
  noun: 'length',
  units: [
    {
      id: 'in',
      words: ['in', 'ins', 'inch', 'inches', '"'],
      factor: MM_PER_UNIT.in,
      system: 'inch',
    },
    { id: 'ft', words: ['ft', 'foot', 'feet', "'"], factor: ratio(1524n, 5n), system: 'inch' },
    { id: 'yd', words: ['yd', 'yds', 'yard', 'yards'], factor: ratio(4572n, 5n), system: 'inch' },
    {
      id: 'mm',
      words: ['mm', 'millimetre', 'millimetres', 'millimeter', 'millimeters'],
      factor: MM_PER_UNIT.mm,
      system: 'metric',
    },
    {
      id: 'cm',
      words: ['cm', 'cms', 'centimetre', 'centimetres', 'centimeter', 'centimeters'],
      factor: MM_PER_UNIT.cm,
      system: 'metric',
    },
    {
      id: 'm',
      words: ['m', 'metre', 'metres', 'meter', 'meters'],
      factor: ratio(1000n),
      system: 'metric',
    },
  ],
  choices: 'cm, mm or in',
  example: '34.5 cm or 13 3/8 in',
  after: { ft: 'in', m: 'cm' },
  smallest: ratio(1n, 1000n),
  largest: ratio(100_000n),
  limits: '0.001 mm and 100 m',
};

/** The unit that a length is printed back in: feet and yards as inches, metres as centimetres. */
export const PRINTED_AS: Readonly<Record<WrittenLengthUnit, LengthUnit>> = {
  mm: 'mm',
  cm: 'cm',
  m: 'cm',
  in: 'in',
  ft: 'in',
  yd: 'in',
};
