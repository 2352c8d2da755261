import { describe, expect, it } from 'vitest';
import published from '../../schema/dryflat-garment-4.schema.json' with { type: 'json' };
import { EXAMPLES } from '../examples.ts';
import { sample } from '../malformed/sample.ts';
import { setAt } from '../malformed/set-at.ts';
import type { GarmentRecord } from '../schema/index.ts';
import { BOUNDS, LONGEST } from './bounds.ts';
import { boundsFaults } from './bounds-faults.ts';

interface Node {
  readonly type?: string;
  readonly properties?: Readonly<Record<string, Node>>;
  readonly items?: Node;
  readonly anyOf?: readonly Node[];
  readonly oneOf?: readonly Node[];
  readonly const?: unknown;
  readonly maximum?: number;
  readonly exclusiveMaximum?: number;
  readonly maxItems?: number;
}

/** Every number and every list of the published schema, by path. */
const leaves = (node: Node, path = ''): (readonly [string, Node])[] => [
  ...(node.type === 'number' || node.type === 'integer' || node.type === 'array'
    ? [[path, node] as const]
    : []),
  ...[...(node.anyOf ?? []), ...(node.oneOf ?? [])].flatMap((each) => leaves(each, path)),
  ...Object.entries(node.properties ?? {}).flatMap(([key, each]) =>
    leaves(each, path === '' ? key : `${path}.${key}`),
  ),
  ...(node.items === undefined ? [] : leaves(node.items, `${path}[]`)),
];
const ALL = leaves(published as unknown as Node);
const NUMBERS = ALL.filter(([, { type }]) => type !== 'array');
const LISTS = ALL.filter(([, { type }]) => type === 'array');

/** The ends that the schema uses where it has no better: those are no bounds of sense. */
const LOOSE = 100_000;

describe('bounds of sense', () => {
  it('R49: every number is bounded by the schema itself, or here', () => {
    const unbounded = NUMBERS.filter(
      ([path, { maximum, exclusiveMaximum, const: fixed }]) =>
        !BOUNDS.has(path) &&
        fixed === undefined &&
        !((maximum ?? exclusiveMaximum ?? LOOSE) < LOOSE) &&
        // Places along an edge: beyond its length they are cut off where they are used.
        !path.startsWith('onMat[].steps[].on.'),
    );
    expect(unbounded.map(([path]) => path)).toEqual([]);
  });

  it('R49: every list ends by the schema, here, or with the sizes that it runs along', () => {
    const endless = LISTS.filter(
      ([path, { maxItems }]) =>
        maxItems === undefined &&
        !LONGEST.has(path) &&
        !['pattern.measurements[].values', 'pattern.measurements[].counts'].includes(path),
    );
    expect(endless.map(([path]) => path)).toEqual([]);
  });

  it('R49: no bound is of a field that is not there', () => {
    const numbers = new Set(NUMBERS.map(([path]) => path));
    const lists = new Set(LISTS.map(([path]) => path));
    expect([...BOUNDS.keys()].filter((path) => !numbers.has(path))).toEqual([]);
    expect([...LONGEST.keys()].filter((path) => !lists.has(path))).toEqual([]);
  });

  it('R49: the examples lie within', () => {
    for (const { record } of EXAMPLES) expect(boundsFaults(record)).toEqual([]);
  });

  it.each([
    ['pattern.gauge.overMm', 0.001, 'Check the number and its unit; it goes from 5 to 2000 mm.'],
    ['needleMm', 5e-324, 'Check the number and its unit; it goes from 0.3 to 100 mm.'],
    [
      'pieces[0].measured[0].mm',
      10_001,
      'Check the number and its unit; it goes from 0.5 to 10000 mm.',
    ],
    ['left[0].massG', 0.01, 'Check the number and its unit; it goes from 0.1 to 50000 g, or 0.'],
  ])('R49: %s of %d is told with its bounds', (path, value, mend) => {
    const record = setAt(sample(), path, value) as GarmentRecord;
    const [first, ...more] = boundsFaults(record);
    expect(first).toMatchObject({ code: 'out-of-bounds', field: path, given: String(value), mend });
    expect(more).toEqual([]);
  });

  it('R49: a list that is too long is told with its length', () => {
    const record = sample();
    const notes = Array.from({ length: 5_001 }, (_, k) => ({ id: `n${k}`, text: '' }));
    expect(boundsFaults({ ...record, notes })).toEqual([
      {
        code: 'list-too-long',
        field: 'notes',
        given: '"5001 entries"',
        problem: 'the list has more than 5000 entries',
        mend: 'Keep the 5000 that matter most.',
      },
    ]);
  });
});
