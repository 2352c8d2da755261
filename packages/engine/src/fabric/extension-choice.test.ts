import fc from 'fast-check';
import { expect, test } from 'vitest';
import { FIBRES, STITCHES } from '../textile/index.ts';
import { extensionAtLoad } from './extension.ts';
import { BETWEEN_YARNS_LOG_SD, fromRest, rowFor, rowForBlend } from './extension-choice.ts';
import { EXTENSION_ROWS, measuredRow, type PulledStitch } from './extension-data.ts';

const fibres = fc.constantFrom(...FIBRES);
const stitches = fc.constantFrom(...STITCHES);
const directions = fc.constantFrom('width' as const, 'length' as const);

test('E4: counted from rest, the chord to 0.02 N/mm is the slope read at low load', () => {
  for (const row of EXTENSION_ROWS) {
    const chord = 0.02 / extensionAtLoad(fromRest(row), 0.02);
    // Where the reading is already the softer of the two it is kept: acrylic seed, 3 %.
    expect(chord / row.lowLoadSlope).toBeGreaterThan(0.97);
    expect(chord / row.lowLoadSlope).toBeLessThan(1 + 1e-12);
  }
});

test('E4: counted from rest, beyond 0.02 N/mm the curve keeps its shape', () => {
  for (const row of EXTENSION_ROWS) {
    const rest = fromRest(row);
    const gain = (r: typeof rest) => extensionAtLoad(r, 0.2) - extensionAtLoad(r, 0.05);
    expect(gain(rest)).toBeCloseTo(gain(row), 12);
  }
});

test('E5: what was pulled is published, everything else an assumption and no surer', () => {
  for (const stitch of STITCHES)
    for (const fibre of FIBRES) {
      const choice = rowFor(stitch, fibre, 'length');
      const pulled =
        ['cotton', 'acrylic'].includes(fibre) &&
        ['stockinette', 'garter', 'rib-1x1', 'seed'].includes(stitch);
      expect(choice.kind).toBe(pulled ? 'published' : 'assumption');
      expect(choice.cited.source).toBe(pulled ? 'singal-2024-data' : null);
      if (pulled) expect(choice.logSd).toBe(BETWEEN_YARNS_LOG_SD);
      else expect(choice.logSd).toBeGreaterThan(BETWEEN_YARNS_LOG_SD);
      expect(choice.because.length).toBeGreaterThan(20);
    }
});

test('E5: the log-SD between yarns is the one in the data, at 0.02 N/mm', () => {
  // Two yarns, four stitches, two directions: SD of a pair is |log ratio| / √2. The eight pairs are
  // few: the standard error of their root mean square is about a quarter of it.
  const squares = (['stockinette', 'garter', 'rib-1x1', 'seed'] as PulledStitch[]).flatMap(
    (stitch) =>
      (['width', 'length'] as const).map((direction) => {
        const at = (yarn: 'acrylic' | 'cotton') =>
          extensionAtLoad(measuredRow(yarn, stitch, direction), 0.02);
        return Math.log(at('acrylic') / at('cotton')) ** 2 / 2;
      }),
  );
  const spread = Math.sqrt(squares.reduce((sum, each) => sum + each, 0) / squares.length);
  expect(Math.abs(spread / BETWEEN_YARNS_LOG_SD - 1)).toBeLessThan(0.25);
});

test('E5: wool lies between acrylic and cotton in every stitch and direction', () => {
  fc.assert(
    fc.property(
      stitches,
      directions,
      fc.double({ min: 0, max: 0.2, noNaN: true }),
      (s, d, load) => {
        const at = (fibre: 'wool' | 'acrylic' | 'cotton') =>
          extensionAtLoad(rowFor(s, fibre, d).row, load);
        const [low, high] = [at('acrylic'), at('cotton')].sort((a, b) => a - b);
        // Between readings the three curves are drawn apart by the choice of slopes: 1 point.
        expect(at('wool')).toBeGreaterThanOrEqual(low! - 0.01);
        expect(at('wool')).toBeLessThanOrEqual(high! + 0.01);
      },
    ),
  );
});

test('E5: every choice is a curve that rises and narrows the other way', () => {
  fc.assert(
    fc.property(stitches, fibres, directions, (stitch, fibre, direction) => {
      const { row } = rowFor(stitch, fibre, direction);
      expect(row.otherWay).toBeLessThan(0);
      for (const [i, point] of row.points.slice(1).entries())
        expect(point.extension).toBeGreaterThan(row.points[i]!.extension);
    }),
  );
});

test('E5: a blend moves from one fibre to the other with its share', () => {
  const at = (cotton: number) =>
    extensionAtLoad(
      rowForBlend(
        'garter',
        [
          { fibre: 'cotton', share: cotton },
          { fibre: 'acrylic', share: 1 - cotton },
        ],
        'length',
      ).row,
      0.05,
    );
  expect(at(0.25)).toBeGreaterThan(at(0.1));
  expect(at(0.9)).toBeGreaterThan(at(0.25));
  expect(rowForBlend('garter', [], 'length').logSd).toBe(rowFor('garter', 'other', 'length').logSd);
});

test('E5: lace gives more and colourwork less than what they are taken from', () => {
  const at = (stitch: 'lace' | 'garter' | 'colourwork' | 'stockinette') =>
    extensionAtLoad(rowFor(stitch, 'wool', 'width').row, 0.01);
  expect(at('lace')).toBeGreaterThan(at('garter'));
  expect(at('colourwork')).toBeLessThan(at('stockinette'));
});
