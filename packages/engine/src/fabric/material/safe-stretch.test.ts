import { expect, test } from 'vitest';
import { STITCHES } from '../../textile/index.ts';
import { fabricMaterial } from './fabric-material.ts';
import { SAFE_STRETCH, safeStretch } from './safe-stretch.ts';
import { drawnMaterial } from './scaled-material.ts';

test('MA16: what is called safe is 5 %, more than one garment size, with its source', () => {
  // Wool training notes: no more than 5 % in each direction when steaming. Course notes: 3 % is a size.
  expect(safeStretch).toBe(0.05);
  expect(SAFE_STRETCH.steaming.source).toBe('wool-training-notes');
  expect(SAFE_STRETCH.oneSize.low).toBe(0.03);
  expect(safeStretch).toBeGreaterThan(SAFE_STRETCH.oneSize.high);
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
    expect(constants.width.limit).toBeGreaterThan(safeStretch);
    expect(constants.length.limit).toBeGreaterThan(safeStretch);
  }
});
