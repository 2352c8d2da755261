import * as fc from 'fast-check';
import type { Shape, Shaping, Step } from '../types.ts';

const work = (rows: number): Step[] =>
  rows > 0 ? [{ kind: 'work', fabric: 'main', extent: { rows } }] : [];

const rib = fc
  .integer({ min: 0, max: 20 })
  .map((rows): Step[] => (rows > 0 ? [{ kind: 'work', fabric: 'rib', extent: { rows } }] : []));

const evenly = fc
  .tuple(
    fc.constantFrom('increase', 'decrease') as fc.Arbitrary<'increase' | 'decrease'>,
    fc.integer({ min: 0, max: 9 }),
  )
  .map(([change, stitches]): Step[] =>
    stitches > 0 ? [{ kind: 'evenly', change, stitches }] : [],
  );

/** Shaping of edges `edge`, few enough stitches to leave some of 100. */
const shape = (edge: Shape['edge'], by: readonly Shaping[]): fc.Arbitrary<Step[]> =>
  fc
    .record({
      by: fc.constantFrom(...by),
      stitches: fc.integer({ min: 1, max: 3 }),
      every: fc.integer({ min: 1, max: 12 }),
      times: fc.integer({ min: 1, max: 4 }),
      starts: fc.boolean(),
      plain: fc.integer({ min: 0, max: 15 }),
    })
    .map(({ plain, starts, ...rest }) => {
      const two = edge === 'each' && (rest.by === 'bind-off' || rest.by === 'cast-on');
      const every = two ? 2 : rest.every;
      const first = two || starts ? 1 : every;
      return [...work(plain), { kind: 'shape', edge, ...rest, every, first }];
    });

const many = (each: fc.Arbitrary<Step[]>, most: number): fc.Arbitrary<Step[]> =>
  fc.array(each, { maxLength: most }).map((lists) => lists.flat());

const ALL: readonly Shaping[] = ['increase', 'decrease', 'bind-off', 'cast-on'];

const neck = fc
  .record({
    stitches: fc.integer({ min: 0, max: 20 }),
    neck: many(shape('neck', ['decrease', 'bind-off']), 2),
    side: many(shape('side', ALL), 2),
    together: fc.boolean(),
  })
  .map(({ stitches, neck, side, together }): Step[] => [
    { kind: 'divide', stitches },
    ...neck,
    ...(together ? [{ kind: 'same-time' } as const] : []),
    ...side,
  ]);

const ending = fc
  .constantFrom('bind-off', 'gather', 'hold')
  .map((by): Step[] => [{ kind: 'finish', by: by as 'bind-off' }]);

/** A piece that is the same on both sides, with a neck or without. */
const wholePiece = fc
  .tuple(
    rib,
    evenly,
    // Something is worked before stitches are cast on beside the first ones, or they would be one edge.
    fc.integer({ min: 1, max: 9 }).map(work),
    many(shape('each', ALL), 4),
    fc.option(neck, { nil: [] }),
    fc.integer({ min: 0, max: 9 }).map(work),
    ending,
  )
  .map((parts) => parts.flat());

/** A piece with a straight edge and a shaped one, as half a front. */
const halfPiece = fc
  .tuple(
    rib,
    fc.integer({ min: 1, max: 9 }).map(work),
    many(shape('side', ALL), 3),
    many(shape('neck', ['decrease', 'bind-off']), 2),
    fc.integer({ min: 0, max: 9 }).map(work),
    ending,
  )
  .map((parts) => parts.flat());

const tube = fc
  .tuple(
    rib,
    many(shape('around', ['increase', 'decrease']), 4),
    fc.integer({ min: 1, max: 9 }).map(work),
    ending,
  )
  .map((parts) => parts.flat());

const castOn = (round: boolean) =>
  fc
    .integer({ min: 100, max: 160 })
    .map((stitches): Step => ({ kind: 'cast-on', stitches, round }));

/** Steps of pieces that can be knit: whole, half, or in the round. Not in their tidy wording. */
export const steps: fc.Arbitrary<Step[]> = fc
  .oneof(
    fc.tuple(castOn(false), wholePiece),
    fc.tuple(castOn(false), halfPiece),
    fc.tuple(castOn(true), tube),
  )
  .map(([first, rest]) => [first, ...rest]);

export const pitches = fc
  .record({
    stitch: fc.double({ min: 1.5, max: 9, noNaN: true }),
    row: fc.double({ min: 1, max: 7, noNaN: true }),
  })
  .map(
    ({ stitch, row }) =>
      ({ stitch, row, state: 'dried' }) as unknown as import('../types.ts').Pitch,
  );
