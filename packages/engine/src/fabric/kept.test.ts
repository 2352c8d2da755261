import { expect, test } from 'vitest';
import { unitMean, unitSd } from '../stats/index.ts';
import { mm } from '../units/index.ts';
import type { FabricKind } from './growth-priors.ts';
import { keptShare } from './kept.ts';
import type { Specimen } from './specimen.ts';

const kind = (fibre: 'wool' | 'acrylic'): FabricKind => ({
  fibres: [{ fibre, share: 1 }],
  treatment: 'untreated',
  stitch: 'stockinette',
  washing: 'by-hand',
});

const strip = (rest: number, pinned: number, dried: number): Specimen => ({
  id: 'strip',
  name: 'Strip',
  kind: 'swatch',
  stitch: 'stockinette',
  workedAsGarment: true,
  washed: 'as-garment',
  width: null,
  height: null,
  readings: [
    {
      kind: 'set',
      id: 'r',
      direction: 'length',
      rest: mm(rest),
      pinned: mm(pinned),
      dried: mm(dried),
    },
  ],
});

test('K9: the share that stays is wide until a strip is pinned, then near what the strip kept', () => {
  const before = keptShare(kind('wool'), []).density;
  const after = keptShare(kind('wool'), [strip(200, 240, 212)]).density;
  // The strip kept (212 − 200)/(240 − 200) = 0.3.
  expect(unitMean(before)).toBeCloseTo(0.6, 2);
  expect(Math.abs(unitMean(after) - 0.3)).toBeLessThan(0.08);
  expect(unitSd(after)).toBeLessThan(unitSd(before) / 2);
});

test('K10: a strip that was hardly stretched says hardly anything', () => {
  const little = keptShare(kind('wool'), [strip(200, 203, 200)]).density;
  const much = keptShare(kind('wool'), [strip(200, 240, 200)]).density;
  expect(unitSd(little)).toBeGreaterThan(unitSd(much));
});

test('acrylic keeps less of a wet block than wool (common practice, no source)', () => {
  const share = (fibre: 'wool' | 'acrylic') => unitMean(keptShare(kind(fibre), []).density);
  expect(share('acrylic')).toBeLessThan(share('wool') / 2);
  expect(keptShare(kind('wool'), []).bases[0]).toMatchObject({
    id: 'kept-share',
    kind: 'assumption',
  });
});
