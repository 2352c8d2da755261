import { planBlock } from '@dryflat/engine/blocking';
import { fabricMaterial } from '@dryflat/engine/fabric';
import { expect, test } from 'vitest';
import { tapeNow } from './tape-now.ts';

const square = (size: number) => [
  { x: 0, y: 0 },
  { x: size, y: 0 },
  { x: size, y: size },
  { x: 0, y: size },
];
const ratio = { width: { mean: 0, sd: 0.02 }, length: { mean: 0, sd: 0.02 } };
const { constants, doubt } = fabricMaterial(
  {
    stitch: 'stockinette',
    fibres: [{ fibre: 'wool', share: 1 }],
    treatment: 'untreated',
    washing: 'by-hand',
    specimens: [],
  },
  'wet',
);

test('M5: every reference of a plan is found again, and as planned the distances are the plan’s', () => {
  const mat = { widthMm: 600, heightMm: 600, tileMm: 300 };
  const made = planBlock(
    {
      pieces: [
        {
          name: 'piece',
          outline: square(200),
          edges: ['bound-off', 'selvedge', 'cast-on', 'selvedge'],
          layers: 1,
          wanted: square(208),
          dimensions: [],
          zones: [],
          fabric: {
            constants,
            doubt,
            pitch: { stitch: 5, row: 3.5 },
            safe: { limit: 0.05, origin: 'published' },
          },
          restLogSd: { width: 0.02, length: 0.02 },
          after: { kept: { mean: 0.6, sd: 0.2 }, driedOverWet: ratio, rewashedOverWet: ratio },
        },
      ],
      stock: { straight: 0, tPins: 12, combs: [], wires: [] },
      mat,
      gentle: true,
    },
    { nodes: 100 },
  );
  if (!made.ok) throw new Error(made.faults[0]?.problem);
  const { pins } = made.value.pieces[0]!;
  expect(pins.length).toBeGreaterThan(3);
  const places = pins.map(({ xMm, yMm }) => [xMm, yMm] as const);
  const far = { ...mat, widthMm: 1200, heightMm: 1200, tileMm: 150 };
  pins.forEach((pin, k) => {
    tapeNow(pin, places[k]!, pins, places, mat).forEach(({ name, mm }, end) => {
      expect(name).toBe(pin.from[end]!.name);
      expect(mm).toBeCloseTo(pin.from[end]!.mm, 6);
    });
    // What is not known keeps the plan's number whatever moves: so all names must answer to a move.
    const moved = places.map(([x, y]) => [x + 3, y + 5] as const);
    for (const [end, { mm }] of tapeNow(pin, places[k]!, pins, moved, far).entries())
      if (!pin.from[end]!.name.startsWith('top left'))
        expect(Math.abs(mm - pin.from[end]!.mm)).toBeGreaterThan(1e-6);
  });
});
