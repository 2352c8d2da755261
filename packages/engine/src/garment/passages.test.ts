import { expect, test } from 'vitest';
import { fabricMaterial } from '../fabric/index.ts';
import { FIBRES, STITCHES } from '../textile/index.ts';
import { mm } from '../units/index.ts';
import { PULLOVER } from './check/questions.ts';
import { forecast } from './forecast.ts';
import { learn } from './known.ts';

const PINNED = { ...PULLOVER, drying: 'pin' } as const;

test.each(STITCHES)('F32: pins stretch no %s further than the fabric of the mat goes', (stitch) => {
  for (const fibre of FIBRES) {
    const question = { ...PINNED, stitch, fibres: [{ fibre, share: 1 }] };
    const measurements = PULLOVER.measurements.map((each) => ({ ...each, stitch }));
    const { constants } = fabricMaterial(question, 'wet');
    for (const { direction, pinLimit } of learn({ ...question, measurements }).passages)
      expect(pinLimit).toBeLessThan(constants[direction].limit);
  }
});

test('F32: edges in ribbing are left to draw in, where there is ribbing', () => {
  const [chest, , , , length] = PULLOVER.measurements;
  const hem = { ...chest!, id: 'hem', landmark: 'hem' };
  const rib = { ...length!, id: 'rib', landmark: 'rib-depth', stitch: 'rib-1x1' } as const;
  const pinned = (measurements: typeof PULLOVER.measurements) =>
    forecast(
      { ...PINNED, measurements: [chest!, ...measurements] },
      { draws: 100 },
    ).measurements.map(({ pinnedMm }) => pinnedMm);
  expect(pinned([hem])).toEqual([1040, 1040]);
  expect(pinned([hem, rib])).toEqual([1040, null, null]);
});

test('F32: a length that ends in points is not called sure', () => {
  const span = {
    ...PULLOVER.measurements[0]!,
    id: 'span',
    landmark: 'span',
    span: 'flat',
  } as const;
  const codes = (kind: 'shawl-triangle' | 'shawl-rectangle', by: number) => {
    const pinTo = [{ measurement: 'span', value: mm(1040 * by) }];
    const question = { ...PINNED, kind, measurements: [span], pinTo };
    return forecast(question, { draws: 100 }).notices.map(({ code }) => code);
  };
  expect(codes('shawl-triangle', 1.2)).toContain('pinned-to-points');
  expect(codes('shawl-triangle', 0.9)).not.toContain('pinned-to-points');
  expect(codes('shawl-rectangle', 1.2)).not.toContain('pinned-to-points');
});
