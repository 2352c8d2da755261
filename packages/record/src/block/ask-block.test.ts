import { expect, test } from 'vitest';
import { EXAMPLES, findExample } from '../examples.ts';
import { askBlock, type BlockChoices } from './ask-block.ts';

const CHOICES: BlockChoices = {
  stock: { straight: 60, tPins: 20, combs: [], wires: [] },
  mat: { widthMm: 900, heightMm: 900, tileMm: 300 },
  gentle: true,
  sewn: false,
};
const asked = (slug: string, choices: Partial<BlockChoices> = {}) => {
  const made = askBlock(findExample(slug)!.record, { ...CHOICES, ...choices });
  if (!made.ok) throw new Error(made.faults[0]?.problem);
  return made.value;
};

test('R70: every example has its pieces on the mat, point by point of what is wanted', () => {
  for (const { slug } of EXAMPLES) {
    const { pieces } = asked(slug);
    expect(pieces.length).toBeGreaterThan(0);
    for (const { outline, edges, wanted, dimensions } of pieces) {
      expect(edges).toHaveLength(outline.length);
      if (wanted !== null) expect(wanted).toHaveLength(outline.length);
      expect(dimensions.length).toBeGreaterThan(0);
      expect(outline.every(({ x, y }) => Number.isFinite(x) && Number.isFinite(y))).toBe(true);
    }
  }
});

test('R70: a girth is halved, a length is not: what a piece measures flat', () => {
  const record = structuredClone(findExample('waistcoat')!.record);
  record.plan.pinTo = [];
  const made = askBlock(record, CHOICES);
  const front = made.ok ? made.value.pieces.find(({ name }) => name === 'front') : undefined;
  const target = (landmark: string) =>
    front?.dimensions.find((each) => each.landmark === landmark)?.targetMm;
  const size = record.pattern.sizes.indexOf(record.pattern.chosen!);
  const value = (landmark: string) =>
    record.pattern.measurements.find((each) => each.landmark === landmark)?.values[size];
  expect(target('chest')).toBeCloseTo(value('chest')! / 2, 6);
  expect(target('body-length')).toBeCloseTo(value('body-length')!, 6);
});

test('R71: sewn, it lies double and its seams are seams', () => {
  const apart = asked('yoke-pullover').pieces.find(({ name }) => name === 'front')!;
  const sewn = asked('yoke-pullover', { sewn: true }).pieces.find(({ name }) => name === 'front')!;
  expect([apart.layers, sewn.layers]).toEqual([1, 2]);
  expect(apart.edges).not.toContain('seam');
  expect(sewn.edges).toContain('seam');
});

test('R72: ribbing is a zone from its line to the end of the piece', () => {
  const front = asked('waistcoat').pieces.find(({ name }) => name === 'front')!;
  const [zone] = front.zones;
  const bottom = Math.max(...front.outline.map(({ y }) => y));
  const depth = front.dimensions.find(({ landmark }) => landmark === 'rib-depth')!;
  const ends = [depth.from, depth.to] as { y: number }[];
  const top = Math.min(...ends.map(({ y }) => y));
  expect(Math.min(...zone!.polygon.map(({ y }) => y))).toBeCloseTo(top, 6);
  // A millimetre beyond the hem, which is its own edge.
  expect(Math.max(...zone!.polygon.map(({ y }) => y))).toBeCloseTo(bottom + 1, 6);
});

test('R73: without a length there is nothing to lay out, and that is said', () => {
  const record = structuredClone(findExample('waistcoat')!.record);
  record.pattern.measurements = [];
  record.pieces = [];
  record.plan.pinTo = [];
  record.outcomes = [];
  record.forecasts = [];
  const made = askBlock(record, CHOICES);
  expect(made.ok).toBe(false);
  if (!made.ok) expect(made.faults[0]?.mend).not.toBe('');
});

test('R74: a cardigan’s front, whose sizes are drawn on the back, has a plan of its own', () => {
  const pieces = asked('child-cardigan').pieces;
  const [front, back] = ['front', 'back'].map((of) => pieces.find(({ name }) => name === of)!);
  const size = (piece: typeof front, landmark: string) =>
    piece!.dimensions.find((each) => each.landmark === landmark)?.targetMm ?? Number.NaN;
  expect(front!.wanted).toHaveLength(front!.outline.length);
  expect(size(front, 'body-length')).toBeCloseTo(size(back, 'body-length'), 6);
  // Half of the back, less half of the band where there is one.
  expect(size(front, 'hem')).toBeLessThanOrEqual(size(back, 'hem') / 2 + 1e-6);
  expect(size(front, 'hem')).toBeGreaterThan(size(back, 'hem') / 3);
  const sewn = asked('child-cardigan', { sewn: true }).pieces.map(({ name }) => name);
  expect(sewn).not.toContain('front');
});
