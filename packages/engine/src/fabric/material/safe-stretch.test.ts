import { expect, test } from 'vitest';
import { type Fibre, STITCHES, type Stitch } from '../../textile/index.ts';
import { fabricMaterial } from './fabric-material.ts';
import { SAFE_STRETCH, safeStretchOf } from './safe-stretch.ts';
import { drawnMaterial } from './scaled-material.ts';

const limitOf = (stitch: Stitch, fibres: Partial<Record<Fibre, number>> = { wool: 1 }) =>
  safeStretchOf({
    stitch,
    fibres: Object.entries(fibres).map(([fibre, share]) => ({ fibre: fibre as Fibre, share })),
  });

test('MA16: plain knitting keeps to the 5 % that were published of wool, more than one garment size', () => {
  // Wool training notes: no more than 5 % in each direction when steaming. Course notes: 3 % is a size.
  expect(limitOf('stockinette')).toEqual({ limit: 0.05, origin: 'published' });
  expect(SAFE_STRETCH.steaming.source).toBe('wool-training-notes');
  expect(limitOf('stockinette').limit).toBeGreaterThan(SAFE_STRETCH.oneSize.high);
});

test('MA16: lace is pinned hard and what stands up barely, by the practice of the trade', () => {
  // Common practice, no source: lace 15 to 30 % over its wet size.
  expect(limitOf('lace').limit).toBeGreaterThanOrEqual(0.15);
  expect(limitOf('lace').limit).toBeLessThanOrEqual(0.3);
  expect(limitOf('lace').origin).toBe('common-practice');
  for (const stitch of ['rib-1x1', 'cables', 'seed'] as const)
    expect(limitOf(stitch).limit).toBeLessThan(limitOf('stockinette').limit);
});

test('MA16: fibres that are weak when wet are pulled less, by their share', () => {
  const lace = (fibres: Partial<Record<Fibre, number>>) => limitOf('lace', fibres);
  expect(lace({ viscose: 1 }).limit).toBeLessThan(lace({ silk: 1 }).limit);
  expect(lace({ silk: 1 }).limit).toBeLessThan(lace({ wool: 1 }).limit);
  expect(lace({ wool: 0.5, silk: 0.5 }).limit).toBeCloseTo(
    (lace({ wool: 1 }).limit + lace({ silk: 1 }).limit) / 2,
    12,
  );
  expect(lace({ silk: 1 }).origin).toBe('from-memory');
});

test('MA16: every fabric can do more than what is called safe, also a stiff one', () => {
  for (const stitch of STITCHES) {
    const fabric = fabricMaterial(
      {
        stitch,
        fibres: [{ fibre: 'wool', share: 1 }],
        treatment: 'untreated',
        washing: 'by-hand',
        specimens: [],
      },
      'wet',
    );
    // Two log-SDs stiffer in both directions.
    const { constants } = drawnMaterial(fabric, {
      give: { width: -2, length: -2 },
      limit: { width: -2, length: -2 },
      coupling: 0,
      shear: 0,
      jam: 0,
    });
    const { limit } = limitOf(stitch);
    expect(constants.width.limit).toBeGreaterThan(limit);
    expect(constants.length.limit).toBeGreaterThan(limit);
  }
});
