import { describe, expect, it } from 'vitest';
import { sample } from '../malformed/sample.ts';
import type { GarmentRecord, Specimen } from '../schema/index.ts';
import { knitSoFar } from './knit-so-far.ts';

const part = (more: Partial<Specimen>): Specimen => ({
  id: 'part',
  name: 'Part of the garment',
  kind: 'part',
  stitch: 'stockinette',
  workedAsGarment: true,
  washed: 'not',
  readings: [
    {
      kind: 'extent',
      id: 'w',
      direction: 'width',
      mm: 530,
      count: 100,
      state: 'asKnit',
      read: 'flat',
    },
  ],
  ...more,
});

const told = (change: (record: GarmentRecord) => void) => {
  const record = sample();
  for (const each of ['progress', 'finished'] as const) delete record[each];
  record.outcomes = [];
  record.pieces = [];
  record.evidence = [];
  change(record);
  return knitSoFar(record);
};
const shares = (change: (record: GarmentRecord) => void) =>
  Object.fromEntries(told(change).progress.map(({ piece, share }) => [piece, share]));

describe('how much is knit', () => {
  it('R100: of a garment of which nothing was measured or said, nothing is', () => {
    expect(told(() => {})).toEqual({ progress: [], said: false, assumed: [] });
    const swatched = told(({ evidence }) => evidence.push(part({ kind: 'swatch' })));
    expect(swatched).toMatchObject({ progress: [], said: false });
  });

  it('R100: a part that was measured is begun: half of its piece, and that is told', () => {
    const { progress, said, assumed } = told(({ evidence }) =>
      evidence.push(part({ name: 'Half a back' })),
    );
    expect(progress).toEqual([{ piece: 'back', share: 0.5 }]);
    expect(said).toBe(true);
    expect(assumed).toEqual([
      'How much of the back is knit is not entered: a part of it was measured, and half of it is assumed (progress).',
    ]);
  });

  it('R100: which piece it is, is as it says, else as its name does, else the back', () => {
    const of = (more: Partial<Specimen>) =>
      Object.keys(shares(({ evidence }) => evidence.push(part(more))));
    expect(of({})).toEqual(['back']);
    expect(of({ name: 'Left sleeve' })).toEqual(['sleeve']);
    expect(of({ name: 'Left sleeve', piece: 'front' })).toEqual(['front']);
  });

  it('R100: how high a part is tells how much of its piece it is; of two sleeves it is one', () => {
    const high = (heightMm: number, name = 'Back') =>
      shares(({ evidence }) => evidence.push(part({ name, heightMm })));
    const [low, middle, all] = [150, 300, 2000].map((mm) => high(mm).back ?? Number.NaN);
    expect(low).toBeGreaterThan(0.1);
    expect(middle).toBeGreaterThan(low!);
    expect(middle).toBeLessThan(1);
    expect(all).toBe(1);
    expect(high(2000, 'A sleeve')).toEqual({ sleeve: 0.5 });
  });

  it('R100: pieces that were taped are knit, each a copy; what is entered goes before', () => {
    const taped =
      (...names: readonly string[]) =>
      (record: GarmentRecord) => {
        record.pieces = names.map((name, k) => ({
          id: `${k}`,
          name,
          measured: [{ id: `${k}`, measurement: 'chest', state: 'asKnit', mm: 490, span: 'flat' }],
        }));
      };
    expect(shares(taped('Back', 'Left sleeve'))).toEqual({ back: 1, sleeve: 0.5 });
    expect(shares(taped('Left sleeve', 'Right sleeve'))).toEqual({ sleeve: 1 });
    expect(
      shares((record) => {
        taped('Back', 'Left sleeve')(record);
        record.progress = [{ piece: 'back', share: 0.25 }];
      }),
    ).toEqual({ back: 0.25, sleeve: 0.5 });
  });
});
