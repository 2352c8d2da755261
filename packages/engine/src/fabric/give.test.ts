import { expect, test } from 'vitest';
import { around, grams, mm } from '../units/index.ts';
import { extensionAtLoad } from './extension.ts';
import { rowForBlend } from './extension-choice.ts';
import { fabricGive, hangingTube, lineLoad } from './give.ts';
import { hangExtension } from './hang.ts';
import type { Specimen } from './specimen.ts';

const kind = (specimens: readonly Specimen[]) => ({
  fibres: [{ fibre: 'cotton' as const, share: 1 }],
  treatment: 'untreated' as const,
  stitch: 'stockinette' as const,
  washing: 'by-hand' as const,
  specimens,
});

const hung = (after: number): Specimen => ({
  id: 's',
  name: 'Strip',
  kind: 'swatch',
  stitch: 'stockinette',
  workedAsGarment: true,
  washed: 'as-garment',
  width: null,
  height: null,
  readings: [
    {
      kind: 'hang',
      id: 'h',
      direction: 'length',
      mass: grams(200),
      clipped: mm(100),
      before: mm(150),
      after: mm(after),
      state: 'dried',
    },
  ],
});

const CREEP = 1.25;

test('K11: 1 kg on 1 m is 9.80665 N/m; 200 g on 100 mm twice that', () => {
  expect(lineLoad(1000, 1000)).toBeCloseTo(9.80665e-3, 12);
  expect(lineLoad(200, 100)).toBeCloseTo(2 * 9.80665e-3, 12);
});

test('K12: nothing hung below: the tube of its own mass is the hanging tube, times creep', () => {
  const give = fabricGive(kind([]), 'length');
  const tube = hangingTube(give, { hung: 500, below: 0, girthMm: 1000 });
  const { row } = rowForBlend('stockinette', [{ fibre: 'cotton', share: 1 }], 'length');
  const plain = hangExtension({ mass: grams(500), girth: around(1000), row });
  expect(tube.longer / plain.mean).toBeCloseTo(CREEP, 9);
  expect(tube.narrower).toBeLessThan(0);
});

test('K13: a mass below adds to the load of every row above it', () => {
  const give = fabricGive(kind([]), 'length');
  const alone = hangingTube(give, { hung: 100, below: 0, girthMm: 1000 });
  const under = hangingTube(give, { hung: 100, below: 400, girthMm: 1000 });
  const whole = hangingTube(give, { hung: 500, below: 0, girthMm: 1000 });
  expect(under.longer).toBeGreaterThan(whole.longer);
  expect(whole.longer).toBeGreaterThan(alone.longer);
});

test('K14: a hung strip rescales the fabric towards what it did, and narrows the doubt', () => {
  const { row } = rowForBlend('stockinette', [{ fibre: 'cotton', share: 1 }], 'length');
  const expected = extensionAtLoad(row, lineLoad(200, 100));
  const soft = fabricGive(kind([hung(150 * (1 + 3 * expected))]), 'length');
  const unknown = fabricGive(kind([]), 'length');
  const times = soft.strainAt(0.01) / unknown.strainAt(0.01);
  expect(times).toBeGreaterThan(1.8);
  expect(times).toBeLessThan(3);
  expect(soft.logSd).toBeLessThan(unknown.logSd);
  expect(soft.bases.map((b) => b.kind)).toContain('measured');
});
