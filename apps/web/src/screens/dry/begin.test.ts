import { emptyRecord, type GarmentRecord, type MatWork } from '@dryflat/record';
import { expect, test } from 'vitest';
import { beginDrying } from './begin.ts';

const NOW = Date.parse('2031-03-05T10:00:00Z');
const record = (part: Partial<GarmentRecord> = {}): GarmentRecord => ({
  ...emptyRecord({ id: 'g', name: 'Vest', kind: 'vest' }),
  ...part,
});
const pinnedPiece: MatWork = {
  id: 'w',
  piece: 'front',
  copy: '',
  mirrored: false,
  layers: 2,
  gentle: true,
  begun: '2031-03-05T09:00:00Z',
  steps: [],
  at: 0,
  told: [],
  extra: { straight: 3, tPins: 0, combs: 0, wires: 0 },
  pinsForWires: 0,
  pinned: '2031-03-05T09:30:00Z',
};

test('DR6: a first drying begins now, with the mass that the garment has', () => {
  const begun = beginDrying(record({ massG: 390 }), 'd', NOW);
  expect(begun).toMatchObject({
    id: 'd',
    begun: '2031-03-05T10:00:00.000Z',
    dry: { massG: 390, air: 'here' },
    wet: 'towel',
    pinned: false,
    layers: 1,
  });
});

test('DR6: without one the balls’ labels tell it, and nothing where a lot does not say', () => {
  const yarn = (gramsEach: number | undefined) =>
    [{ lots: [{ skeins: 3, ...(gramsEach && { gramsEach }) }] }] as GarmentRecord['yarns'];
  expect(beginDrying(record({ yarns: yarn(50) }), 'd', NOW).dry).toEqual({
    massG: 150,
    air: 'label',
  });
  expect('dry' in beginDrying(record({ yarns: yarn(undefined) }), 'd', NOW)).toBe(false);
  expect('dry' in beginDrying(record(), 'd', NOW)).toBe(false);
});

test('DR6: what was said of the last drying is not asked again, but its scale is', () => {
  const first = {
    ...beginDrying(record({ massG: 390 }), 'a', NOW),
    wet: 640,
    on: 'rack' as const,
    air: { temperatureC: 18, humidityPercent: 61, movement: 'moving' as const },
    weighings: [{ id: 'x', at: '2031-03-05T12:00:00Z', massG: 500 }],
    dried: '2031-03-06T12:00:00Z',
  };
  const next = beginDrying(record({ massG: 390, dryings: [first] }), 'b', NOW + 1e9);
  expect(next).toMatchObject({ wet: 'towel', on: 'rack', air: first.air, weighings: [] });
  expect(next.dried).toBeUndefined();
});

test('DR6: what is on the mat lies pinned, in its layers, until its pins are out', () => {
  expect(beginDrying(record({ onMat: [pinnedPiece] }), 'd', NOW)).toMatchObject({
    pinned: true,
    layers: 2,
  });
  const out = { straight: 3, tPins: 0, combs: 0, wires: 0 };
  expect(beginDrying(record({ onMat: [{ ...pinnedPiece, out }] }), 'd', NOW).pinned).toBe(false);
});
