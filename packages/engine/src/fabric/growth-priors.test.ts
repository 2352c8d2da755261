import { expect, test } from 'vitest';
import { type FabricKind, growthPrior } from './growth-priors.ts';
import { changeBetween } from './loop-geometry.ts';

const WOOL: FabricKind = {
  fibres: [{ fibre: 'wool', share: 1 }],
  treatment: 'untreated',
  stitch: 'stockinette',
  washing: 'by-hand',
};
const of = (change: Partial<FabricKind>) => growthPrior({ ...WOOL, ...change }).dried;

test('K5: the assumption for wool is wide enough to hold the published relaxation of plain knit', () => {
  // Munden 1959: dry to wet relaxed −5.66 % in length, −7.32 % in width at equal loop length.
  const published = changeBetween('dryRelaxed', 'wetRelaxed');
  for (const [direction, change] of [
    ['length', published.length],
    ['width', published.width],
  ] as const) {
    const { mean, sd } = of({})[direction];
    // Within 2.5 SD: not the expectation for a hand knit that was rested, but nothing it rules out.
    expect(Math.abs(Math.log1p(change) - mean) / sd).toBeLessThan(2.5);
  }
});

test('K6: machine-washable wool grows more in length than untreated; cotton shrinks in length and widens', () => {
  // The first is common practice without a source; the second was read in Fletcher and Roberts 1952.
  expect(of({ treatment: 'superwash' }).length.mean).toBeGreaterThan(of({}).length.mean);
  const cotton = of({ fibres: [{ fibre: 'cotton', share: 1 }] });
  expect(cotton.length.mean).toBeLessThan(0);
  expect(cotton.width.mean).toBeGreaterThan(0);
});

test('K7: a blend lies between its fibres, and a warm machine felts untreated wool only', () => {
  const half = of({
    fibres: [
      { fibre: 'wool', share: 0.5 },
      { fibre: 'cotton', share: 0.5 },
    ],
  });
  const cotton = of({ fibres: [{ fibre: 'cotton', share: 1 }] });
  expect(half.length.mean).toBeCloseTo((of({}).length.mean + cotton.length.mean) / 2, 12);
  expect(of({ washing: 'machine-warm' }).length.mean).toBeLessThan(of({}).length.mean - 0.05);
  const treated = { treatment: 'superwash', washing: 'machine-warm' } as const;
  expect(of(treated).length.mean).toBe(of({ treatment: 'superwash' }).length.mean);
});

test('K8: what is known less is wider: other stitches, unsaid treatment, unsaid washing', () => {
  const plain = of({}).width.sd;
  expect(of({ stitch: 'lace' }).width.sd).toBeGreaterThan(plain);
  expect(of({ treatment: 'unknown' }).width.sd).toBeGreaterThan(plain);
  expect(of({ washing: 'not-said' }).width.sd).toBeGreaterThan(plain);
});

test('every growth is labelled an assumption with its number', () => {
  const { bases } = growthPrior(WOOL);
  expect(bases.map((b) => [b.id, b.kind])).toEqual([
    ['growth-width', 'assumption'],
    ['growth-length', 'assumption'],
  ]);
  expect(bases[1]!.text).toContain('+1.0 %');
});
