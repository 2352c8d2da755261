import { FIBRES, STITCHES, TREATMENTS } from '@dryflat/engine/textile';
import fc from 'fast-check';
import type { Pattern, PatternGauge, PatternMeasurement, Repeat, Yarn } from '../schema/index.ts';
import {
  between,
  direction,
  id,
  label,
  landmark,
  list,
  partial,
  positive,
  span,
  whole,
} from './parts.ts';

const patternMeasurement = partial<PatternMeasurement>(
  {
    id,
    name: label,
    landmark,
    direction,
    span,
    worked: fc.constantFrom('counted', 'to-length'),
    values: list(fc.option(positive)),
    counts: list(fc.option(positive)),
    stitch: fc.constantFrom(...STITCHES),
  },
  ['id', 'name', 'landmark', 'worked', 'values'],
);

export const pattern = partial<Pattern>(
  {
    name: label,
    gauge: partial<PatternGauge>(
      {
        stitches: positive,
        rows: positive,
        overMm: positive,
        state: fc.constantFrom('asKnit', 'dried'),
      },
      ['stitches', 'overMm', 'state'],
    ),
    needleMm: positive,
    sizes: list(label),
    chosen: label,
    measurements: list(patternMeasurement),
    repeat: partial<Repeat>(
      { stitches: whole(1, 1000), plus: whole(0, 1000), rows: whole(1, 1000) },
      ['stitches', 'plus'],
    ),
  },
  ['name', 'sizes', 'measurements'],
);

export const yarn = partial<Yarn>(
  {
    id,
    name: label,
    fibres: list(fc.record({ fibre: fc.constantFrom(...FIBRES), percent: between(0.01, 100) })),
    treatment: fc.constantFrom(...TREATMENTS),
    weightClass: whole(0, 7),
    metresPer100g: positive,
    lots: list(
      partial<Yarn['lots'][number]>(
        { dyeLot: label, skeins: positive, gramsEach: positive, metresEach: positive },
        ['dyeLot', 'skeins'],
      ),
    ),
  },
  ['id', 'name', 'fibres', 'treatment', 'lots'],
);
