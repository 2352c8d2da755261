import { explain } from '@dryflat/engine/units';
import { describe, expect, it } from 'vitest';
import { EXAMPLES } from '../examples.ts';
import type { GarmentRecord } from '../schema/index.ts';
import { askBlocking, askBlockingWith, USUAL_MAT, USUAL_STOCK } from './ask-blocking.ts';

const asked = (record: GarmentRecord) => {
  const result = askBlockingWith(record, false);
  if (!result.ok) throw new Error(result.faults.map(explain).join('\n'));
  return result.value;
};

describe('askBlocking', () => {
  const [{ record }] = EXAMPLES as [(typeof EXAMPLES)[number]];
  const stock = { straight: 12, tPins: 3, combs: [{ lengthMm: 80, count: 2 }], wires: [] };
  const mat = { widthMm: 1200, heightMm: 600, tileMm: 0 };

  it.each(EXAMPLES.map(({ slug, record: each }) => [slug, each] as const))(
    'R67: %s is asked piece by piece, what is not said as usual',
    (_, each) => {
      const { question, assumed } = asked(each);
      expect(question).toMatchObject({ stock: USUAL_STOCK, mat: USUAL_MAT, gentle: false });
      expect(assumed).toHaveLength(2);
      expect(question.pieces.length).toBeGreaterThan(0);
      for (const { outline, edges, layers } of question.pieces) {
        expect(edges).toHaveLength(outline.length);
        expect(layers).toBe(1);
      }
    },
  );

  it('R67: the plan says what is at hand, and whether it is sewn first', () => {
    const { question, assumed } = asked({
      ...record,
      plan: { ...record.plan, stock, mat, sewn: true },
    });
    expect(assumed).toEqual([]);
    expect(question).toMatchObject({ stock, mat });
    expect(question.pieces.every(({ layers }) => layers === 2)).toBe(true);
    expect(question.pieces.some(({ edges }) => edges.includes('seam'))).toBe(true);
  });

  it('R68: the plan goes around moved pins where she says so, each in its own piece', () => {
    const { pieces } = asked(record).question;
    const [piece] = pieces as [(typeof pieces)[number]];
    const corner = piece.outline[0]!;
    const pin = {
      piece: piece.name,
      at: { xMm: corner.x, yMm: corner.y },
      to: { xMm: corner.x - 12, yMm: corner.y + 3 },
    };
    const pins = [
      { ...pin, around: true },
      { ...pin, around: false },
      { ...pin, piece: 'no such piece', around: true },
    ];
    const again = asked({ ...record, plan: { ...record.plan, pins } }).question.pieces;
    expect(again.map(({ pinned }) => pinned)).toEqual(
      again.map(({ name }) =>
        name === piece.name
          ? [{ at: corner, to: { x: corner.x - 12, y: corner.y + 3 } }]
          : undefined,
      ),
    );
    expect(again.map(({ pinned: _, ...rest }) => rest)).toEqual(pieces);
  });

  it('R67: what a forecast cannot be asked for, a mat cannot either', () => {
    const bare = { ...record, pattern: { name: '', sizes: [], measurements: [] } };
    expect(
      askBlocking({
        ...bare,
        plan: { ...record.plan, pinTo: [] },
        pieces: [],
        outcomes: [],
        forecasts: [],
      }).ok,
    ).toBe(false);
  });
});
