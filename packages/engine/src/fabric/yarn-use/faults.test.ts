import { expect, test } from 'vitest';
import { skeinAdvice } from './advice.ts';
import { PULLOVER, SKEINS, SWATCH, SWATCHED } from './check/questions.ts';
import type { YarnQuestion, YarnStock, YarnWork } from './types.ts';

interface Bad {
  readonly question?: Partial<YarnQuestion>;
  readonly work?: Partial<YarnWork>;
  readonly stock?: Partial<YarnStock>;
}
const swatch = (change: object): Bad => ({ question: { weighed: [{ ...SWATCH, ...change }] } });
const gauge = (change: object): Bad => ({
  question: { gauge: { ...SWATCHED.gauge!, ...change } },
});
const lot = (change: object): Bad => ({ stock: { lots: [{ ...SKEINS.lots[0]!, ...change }] } });
const part = (stitches: number) => [{ name: 'x', stitch: 'garter' as const, stitches }];

const CASES: readonly (readonly [Bad, string, string])[] = [
  [{ question: { metresPer100g: 0 } }, 'yarn-metres', 'metresPer100g'],
  [{ question: { metresPer100g: Number.NaN } }, 'yarn-metres', 'metresPer100g'],
  [{ question: { weightClass: 8 } }, 'yarn-class', 'weightClass'],
  [{ question: { weightClass: 2.5 } }, 'yarn-class', 'weightClass'],
  [{ question: { fibres: [{ fibre: 'wool', share: 0.4 }] } }, 'fibre-shares', 'fibres'],
  [gauge({ width: { median: 0, logSd: 0 } }), 'yarn-gauge', 'gauge.width'],
  [gauge({ row: { median: 3, logSd: -1 } }), 'yarn-gauge', 'gauge.row'],
  [swatch({ massG: -3 }), 'yarn-mass', 'weighed[0].massG'],
  [swatch({ across: 0 }), 'yarn-counts', 'weighed[0].across'],
  [swatch({ up: Number.NaN }), 'yarn-counts', 'weighed[0].up'],
  [swatch({ massG: 24_000 }), 'yarn-implausible', 'weighed[0]'],
  [{ work: { parts: part(-1) } }, 'yarn-stitches', 'parts[0].stitches'],
  [{ work: { ripped: part(Number.POSITIVE_INFINITY) } }, 'yarn-stitches', 'ripped[0].stitches'],
  [{ work: { castOn: -1 } }, 'yarn-work', 'castOn'],
  [{ work: { bindOff: Number.NaN } }, 'yarn-work', 'bindOff'],
  [{ work: { seamsMm: -5 } }, 'yarn-work', 'seamsMm'],
  [{ work: { joins: -1 } }, 'yarn-work', 'joins'],
  [lot({ skeins: -1 }), 'yarn-skeins', 'lots[0].skeins'],
  [lot({ gramsEach: 0 }), 'yarn-skein-size', 'lots[0].gramsEach'],
  [lot({ gramsEach: null, metresEach: null }), 'yarn-skein-size', 'lots[0].gramsEach'],
  [{ stock: { leftG: -1 } }, 'yarn-left', 'leftG'],
];

test.each(CASES)('Y14: %j is %s of %s, and says how to mend it', (bad, code, field) => {
  const made = skeinAdvice(
    { ...SWATCHED, ...bad.question },
    { ...PULLOVER, ...bad.work },
    { ...SKEINS, ...bad.stock },
  );
  expect(made.ok).toBe(false);
  if (made.ok) return;
  expect(made.faults.map((each) => [each.code, each.field])).toEqual([[code, field]]);
  expect(made.faults[0]!.mend).toMatch(/^[A-Z].*\.$/);
});

test('Y14: a skein of unknown size is no fault where the yarn was weighed', () => {
  const stock = { lots: [{ ...SKEINS.lots[0]!, gramsEach: null, metresEach: null }], leftG: 300 };
  const made = skeinAdvice(SWATCHED, PULLOVER, stock, { draws: 100 });
  expect(made.ok && made.value.buy).toBeNull();
});
