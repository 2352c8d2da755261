import { STITCHES } from '@dryflat/engine/textile';
import fc from 'fast-check';
import type { Reading, Specimen } from '../schema/index.ts';
import { direction, id, label, list, partial, positive } from './parts.ts';

const restState = fc.constantFrom('asKnit' as const, 'wet', 'dried', 'rewashed');
const read = fc.constantFrom('flat' as const, 'stretched');

const reading: fc.Arbitrary<Reading> = fc.oneof(
  partial<Extract<Reading, { kind: 'count' }>>(
    {
      kind: fc.constant('count'),
      id,
      direction,
      count: positive,
      overMm: positive,
      state: restState,
      pinned: fc.boolean(),
      read,
      place: label,
    },
    ['kind', 'id', 'direction', 'count', 'overMm', 'state', 'read'],
  ),
  partial<Extract<Reading, { kind: 'extent' }>>(
    {
      kind: fc.constant('extent'),
      id,
      direction,
      mm: positive,
      count: positive,
      state: restState,
      pinned: fc.boolean(),
      read,
      place: label,
    },
    ['kind', 'id', 'direction', 'mm', 'state', 'read'],
  ),
  fc.record({
    kind: fc.constant('hang' as const),
    id,
    direction,
    massG: positive,
    clippedMm: positive,
    beforeMm: positive,
    afterMm: positive,
    state: restState,
  }),
  fc.record({
    kind: fc.constant('set' as const),
    id,
    direction,
    restMm: positive,
    pinnedMm: positive,
    driedMm: positive,
  }),
);

export const specimen = partial<Specimen>(
  {
    id,
    name: label,
    kind: fc.constantFrom('swatch', 'part', 'piece', 'past-garment'),
    piece: fc.constantFrom('back', 'front', 'sleeve', 'hood'),
    stitch: fc.constantFrom(...STITCHES),
    needleMm: positive,
    workedAsGarment: fc.boolean(),
    widthMm: positive,
    heightMm: positive,
    massG: positive,
    washed: fc.constantFrom('not', 'as-garment', 'otherwise'),
    readings: list(reading),
  },
  ['id', 'name', 'kind', 'stitch', 'workedAsGarment', 'washed', 'readings'],
);
