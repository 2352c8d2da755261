import fc from 'fast-check';
import type { MatStep, MatTold, MatWork } from '../schema/index.ts';
import {
  between,
  id,
  label,
  list,
  moment,
  partial,
  pinCounts,
  positive,
  signed,
  stock,
  whole,
} from './parts.ts';

const cosine = between(-1, 1).map((value) => value + 0);
const pair = <T>(of: fc.Arbitrary<T>) => fc.array(of, { minLength: 2, maxLength: 2 });

const step = partial<MatStep>(
  {
    xMm: signed,
    yMm: signed,
    kind: fc.constantFrom('straight', 't-pin', 'comb', 'wire'),
    edge: fc.constantFrom(
      'cast-on',
      'bound-off',
      'selvedge',
      'seam',
      'picked-up',
      'rib',
      'fold',
      'open',
    ),
    on: fc.record({ from: between(0, 99_999), to: between(0, 99_999) }),
    from: pair(fc.record({ name: label, mm: between(0, 99_999) })),
    along: fc.record({ lengthMm: positive, dx: cosine, dy: cosine }),
    pullN: between(0, 9999),
    done: fc.constantFrom('in', 'passed'),
  },
  ['xMm', 'yMm', 'kind', 'edge', 'from', 'pullN'],
);

const told: fc.Arbitrary<MatTold> = fc.record({
  id,
  step: whole(0, 10_000),
  at: moment,
  tapeMm: pair(fc.option(positive)),
  felt: fc.constantFrom('right' as const, 'at-limit', 'slack'),
  measured: list(fc.record({ landmark: id, mm: positive })),
});

export const matWork = partial<MatWork>(
  {
    id,
    piece: label,
    copy: label,
    mirrored: fc.boolean(),
    layers: fc.constantFrom(1, 2),
    gentle: fc.boolean(),
    begun: moment,
    steps: list(step),
    lies: fc.record({
      mat: fc.record({ widthMm: positive, heightMm: positive, tileMm: between(0, 99_999) }),
      outline: fc.array(signed, { minLength: 6, maxLength: 12 }),
      reaches: list(
        fc.record({
          landmark: id,
          targetMm: positive,
          pinnedMm: positive,
          dryLowMm: positive,
          dryHighMm: positive,
        }),
      ),
    }),
    at: whole(0, 10_000),
    told: list(told),
    left: stock,
    extra: pinCounts,
    pinsForWires: whole(0, 10_000),
    pinned: moment,
    out: pinCounts,
  },
  [
    'id',
    'piece',
    'copy',
    'mirrored',
    'layers',
    'gentle',
    'begun',
    'steps',
    'at',
    'told',
    'pinsForWires',
  ],
);
