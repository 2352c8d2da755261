import { expect, test } from 'vitest';
import type { GarmentKind } from '../../garment/index.ts';
import { mm } from '../../units/index.ts';
import { QUESTION } from '../check/questions.ts';
import { routes } from '../routes.ts';

/** Reasons of blocking it to the schematic, a span of so many times its wet size. */
const reasons = (kind: GarmentKind, by: number): string => {
  const [chest] = QUESTION.forecast.measurements;
  const span = { ...chest!, id: 'span', landmark: 'span', span: 'flat' } as const;
  const wanted = [
    { landmark: 'span', body: null, bodyFrom: null, kind: 'finished', min: mm(900), max: mm(1300) },
  ] as const;
  const pinTo = [{ measurement: 'span', value: mm(1000 * by) }];
  const drying = 'pin' as const;
  const asked = {
    ...QUESTION.forecast,
    kind,
    drying,
    measurements: [span],
    measured: [],
    wanted,
    pinTo,
  };
  const result = routes({ ...QUESTION, progress: [], forecast: asked }, { draws: 200 });
  if (!result.ok) throw new Error('it cannot be asked');
  return result.value.routes.find(({ id }) => id === 'schematic')!.reasons.join(' ');
};

test('F32: blocking a length that ends in points does not call it reached', () => {
  expect(reasons('shawl-triangle', 1.3)).toMatch(/the ends of the span hang on one pin each/);
  expect(reasons('shawl-triangle', 0.8)).not.toMatch(/one pin/);
  expect(reasons('shawl-rectangle', 1.3)).not.toMatch(/one pin/);
});
