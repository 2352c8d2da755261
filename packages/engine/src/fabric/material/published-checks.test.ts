import { describe, expect, test } from 'vitest';
import { mm } from '../../units/index.ts';
import { BETWEEN_YARNS_LOG_SD } from '../extension-choice.ts';
import { EXTENSION_ROWS, type PulledStitch, type PulledYarn } from '../extension-data.ts';
import { LOOP_CONSTANTS } from '../loop-geometry.ts';
import { BENDING_MODULUS, drawForce } from '../monofilament-force.ts';
import { loadAt, strainAt } from '../stretch/law.ts';
import { STRIPS } from '../stretch/strips.ts';
import { DELTA, narrowingRatio, type RestStitch } from '../yarn-conservation.ts';
import { fabricMaterial } from './fabric-material.ts';
import { LOOP_TABLE } from './loop-table.ts';
import { narrowingAt } from './plane.ts';

// No constant was fitted to anything here, but for the start slope, which is the first step of the loop
// table. The room of a rib in width was assumed anew after the check of its narrowing failed (jam.ts).

const fabric = (fibre: PulledYarn, stitch: PulledStitch) =>
  fabricMaterial(
    {
      stitch,
      fibres: [{ fibre, share: 1 }],
      treatment: 'unknown',
      washing: 'not-said',
      specimens: [],
    },
    'dry',
  );
const yarns = ['acrylic', 'cotton'] as const;
const stitches = ['stockinette', 'garter', 'rib-1x1', 'seed'] as const;

test.each(LOOP_TABLE.rows)(
  'MA4: a simulated plain stitch drawn to %d mm is %d mm high',
  (width, height) => {
    // Data set of Singal et al. 2024. The start slope is the table's own; that height falls in a line
    // for so long, and then less, is not. Read at 0.01 mm in width; the jam is an assumption whose
    // looseness (18 to 26) moves the last height by 3 %: 4 %.
    const [restWidth, restHeight] = LOOP_TABLE.rows[0]!;
    const { constants } = fabric('acrylic', 'stockinette');
    const drawn = restHeight * (1 - narrowingAt(constants, 'width', width / restWidth - 1));
    expect(Math.abs(drawn / height - 1)).toBeLessThan(0.04);
    // In the straight part, up to half as wide again, within 0.5 %.
    if (width < 1.5 * restWidth) expect(Math.abs(drawn / height - 1)).toBeLessThan(0.005);
  },
);

describe.each(EXTENSION_ROWS)('$yarn $stitch pulled in $direction', (row) => {
  test('MA5: it draws in the other way as read, or more', () => {
    // Data set of Singal et al. 2024, change across at 0.10 N/mm. Short clamped strips are held at
    // their ends, so that free fabric draws in at least as much as was read: a reading above the
    // foretold one may only be doubt, of which one log-SD is allowed. Below it the clamps may hide
    // much: a third of the free narrowing at least shows in the middle of a strip no longer than wide.
    const { constants, doubt } = fabric(row.yarn, row.stitch);
    const strip = STRIPS[`${row.yarn} ${row.stitch} ${row.direction}`]!;
    const left = (strain: number) => 1 - narrowingAt(constants, row.direction, strain);
    const foretold = 1 - left(strainAt(strip, 0.1).value) / left(strip.preStretch);
    expect(-row.otherWay / foretold).toBeLessThan(Math.exp(doubt.coupling));
    expect(-row.otherWay / foretold).toBeGreaterThan(1 / 3);
  });
});

test('MA5: as a whole the free fabric draws in more than the clamped strips did', () => {
  const logs = EXTENSION_ROWS.map((row) => {
    const { constants } = fabric(row.yarn, row.stitch);
    const strain = strainAt(STRIPS[`${row.yarn} ${row.stitch} ${row.direction}`]!, 0.1).value;
    return Math.log(-row.otherWay / narrowingAt(constants, row.direction, strain));
  });
  const mean = logs.reduce((sum, each) => sum + each, 0) / logs.length;
  expect(Math.exp(mean)).toBeLessThan(1);
  // Strips as long as wide or longer show half of it or more.
  expect(Math.exp(mean)).toBeGreaterThan(0.5);
});

test('MA6: what stockinette draws in is yarn kept, within the range of delta', () => {
  // w + δ c constant: pulled in length ν = δ c/w, pulled in width ν = w/(δ c). Poincloux et al. 2018
  // and others: δ from 0.9 to 3; the coupling is known to one log-SD.
  const rowOverStitch = LOOP_CONSTANTS.wetRelaxed.kw / LOOP_CONSTANTS.wetRelaxed.kc;
  for (const yarn of yarns) {
    const { constants, doubt } = fabric(yarn, 'stockinette');
    const ratio = (d: 'width' | 'length') => narrowingAt(constants, d, 1e-6) / 1e-6;
    for (const delta of [ratio('length') / rowOverStitch, 1 / (ratio('width') * rowOverStitch)]) {
      expect(delta).toBeGreaterThan(DELTA.low * Math.exp(-doubt.coupling));
      expect(delta).toBeLessThan(DELTA.high * Math.exp(doubt.coupling));
    }
  }
});

const nylon: RestStitch = { stitch: mm(3.93), row: mm(2.08), delta: 0.86 };

test('MA7: the form of the law holds the published force of a drawn monofilament', () => {
  // Poincloux et al. 2018: force law to 100 % strain, its limit 1/ν = 2.2. With that limit the law has
  // two constants, found here by least squares. Bending alone softens at first, (1 + ε)⁻², which our
  // form cannot: misses of up to 5 % of the largest force are allowed for it.
  const limit = 1 / narrowingRatio(nylon);
  const strains = Array.from({ length: 20 }, (_, k) => (k + 1) / 20);
  const force = strains.map((e) => drawForce(nylon, 1, e, BENDING_MODULUS.loading));
  const columns = strains.map((strain) => [
    strain,
    loadAt({ slope: 0, stiffening: 1, limit }, strain),
  ]) as [number, number][];
  const dot = (f: (k: number) => number) => strains.reduce((sum, _, k) => sum + f(k), 0);
  const [aa, ab, bb] = [
    dot((k) => columns[k]![0] ** 2),
    dot((k) => columns[k]![0] * columns[k]![1]),
    dot((k) => columns[k]![1] ** 2),
  ];
  const [ay, by] = [dot((k) => columns[k]![0] * force[k]!), dot((k) => columns[k]![1] * force[k]!)];
  const det = aa * bb - ab * ab;
  const [slope, stiffening] = [(ay * bb - by * ab) / det, (by * aa - ay * ab) / det];
  expect(slope).toBeGreaterThan(0);
  expect(stiffening).toBeGreaterThan(0);
  const most = force[force.length - 1]!;
  for (const [k, strain] of strains.entries())
    expect(Math.abs(loadAt({ slope, stiffening, limit }, strain) - force[k]!) / most).toBeLessThan(
      0.05,
    );
});

test('MA7: stockinette in length stiffens as the monofilament does, within a factor of two', () => {
  // Load over slope · limit at a share of the limit, Poincloux et al. 2018 against both pulled yarns.
  // Yarn that flattens and rubs stiffens earlier than bending alone; a factor of two for it.
  const limit = 1 / narrowingRatio(nylon);
  const pull = (strain: number) => drawForce(nylon, 1, strain, 1);
  const soft = pull(1e-6) / 1e-6;
  for (const yarn of yarns) {
    const law = STRIPS[`${yarn} stockinette length`]!;
    for (const x of [0.1, 0.25, 0.5, 0.75]) {
      const ours = loadAt(law, x * law.limit) / (law.slope * law.limit);
      const theirs = pull(x * limit) / (soft * limit);
      expect(ours / theirs).toBeGreaterThan(1);
      expect(ours / theirs).toBeLessThan(2);
    }
  }
});

test('MA8: patterns are in the published order of stiffness, in acrylic', () => {
  // Singal et al. 2024; a strip free to narrow, at rest.
  const stiffness = (order: readonly PulledStitch[], d: 'width' | 'length') =>
    order.map((stitch) => fabric('acrylic', stitch).constants[d].slope);
  for (const order of [
    stiffness(['stockinette', 'garter', 'seed', 'rib-1x1'], 'width'),
    stiffness(['stockinette', 'rib-1x1', 'garter', 'seed'], 'length'),
  ])
    expect(order).toEqual(order.toSorted((a, b) => b - a));
});

test('MA9: plain fabric stretches about twice as far in width as in length', () => {
  // Textbook rule for plain weft knits, without a load; at 0.3 N/mm, the most that was pulled. Two
  // yarns of one stitch differ by a log-SD of 0.45, which is allowed.
  for (const yarn of yarns) {
    const { constants } = fabric(yarn, 'stockinette');
    const ratio = strainAt(constants.width, 0.3).value / strainAt(constants.length, 0.3).value;
    expect(Math.abs(Math.log(ratio / 2))).toBeLessThan(BETWEEN_YARNS_LOG_SD);
  }
});

test('MA9: rib gives about twice what plain does in length, and at least that in width', () => {
  // Textbook rule: rib about 2 × plain both ways. In width the rule speaks of recoverable stretch, and
  // at equal load far more was measured (Singal et al. 2024: 180 % against 21 %), so it bounds below.
  for (const yarn of yarns) {
    const at = (stitch: PulledStitch, d: 'width' | 'length') =>
      strainAt(fabric(yarn, stitch).constants[d], 0.3).value;
    const length = at('rib-1x1', 'length') / at('stockinette', 'length');
    expect(Math.abs(Math.log(length / 2))).toBeLessThan(BETWEEN_YARNS_LOG_SD);
    expect(at('rib-1x1', 'width') / at('stockinette', 'width')).toBeGreaterThan(2);
  }
});

test('MA9: no stitch closes up to less than its yarn when it is pulled to its limit', () => {
  for (const yarn of yarns)
    for (const stitch of stitches) {
      const { constants } = fabric(yarn, stitch);
      for (const [pulled, across] of [
        ['width', 'length'],
        ['length', 'width'],
      ] as const)
        expect(narrowingAt(constants, pulled, constants[pulled].limit)).toBeLessThan(
          constants[across].jam,
        );
    }
});
