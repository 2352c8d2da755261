import { describe, expect, it } from 'vitest';
import type { Yarn } from '../schema/index.ts';
import { yarnPart } from './yarn-blend.ts';

describe('yarns of a question', () => {
  const yarn = (id: string, more: Partial<Yarn>): Yarn => ({
    id,
    name: id,
    fibres: [{ fibre: 'wool', percent: 100 }],
    treatment: 'untreated',
    lots: [{ dyeLot: '', skeins: 3, gramsEach: 100 }],
    ...more,
  });

  it('R66: yarns blend by the mass of their lots, and the heaviest gives class and length', () => {
    const question = yarnPart([
      yarn('thin', {
        fibres: [{ fibre: 'silk', percent: 100 }],
        lots: [{ dyeLot: '', skeins: 2, gramsEach: 50 }],
        weightClass: 1,
      }),
      yarn('main', { weightClass: 4, metresPer100g: 200 }),
    ]);
    expect(question.fibres).toEqual([
      { fibre: 'silk', share: 0.25 },
      { fibre: 'wool', share: 0.75 },
    ]);
    expect(question).toMatchObject({ weightClass: 4, metresPer100g: 200, treatment: 'untreated' });
  });

  it('R66: without all masses they count alike; treatments that differ are unknown', () => {
    const question = yarnPart([
      yarn('a', { lots: [] }),
      yarn('b', { fibres: [], treatment: 'superwash' }),
    ]);
    expect(question.fibres).toEqual([
      { fibre: 'wool', share: 0.5 },
      { fibre: 'other', share: 0.5 },
    ]);
    expect(question.treatment).toBe('unknown');
  });

  it('R66: no yarn is "other", treated nobody knows how', () => {
    expect(yarnPart([])).toEqual({
      fibres: [{ fibre: 'other', share: 1 }],
      treatment: 'unknown',
      weightClass: null,
      metresPer100g: null,
    });
  });
});
