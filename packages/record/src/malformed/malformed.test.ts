import { explain } from '@dryflat/engine/units';
import { Ajv2020 } from 'ajv/dist/2020.js';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import published from '../../schema/dryflat-garment-4.schema.json' with { type: 'json' };
import { anyRecord } from '../arbitrary/index.ts';
import { faultsOf } from '../check/faults-of.ts';
import { EXAMPLES } from '../examples.ts';
import { schemaText } from '../json-schema.ts';
import { readRecord } from '../read/read-record.ts';
import { garmentRecord } from '../schema/index.ts';
import { writeRecord } from '../write/write-record.ts';
import type { MalformedCase } from './malformed-case.ts';
import { sample } from './sample.ts';
import { SENSE_OF_MAT } from './sense-of-mat.ts';
import { SENSE_OF_PATTERN } from './sense-of-pattern.ts';
import { SENSE_OF_THE_REST } from './sense-of-the-rest.ts';
import { SENSE_OF_WEARER } from './sense-of-wearer.ts';
import { SENSE_OF_WORK } from './sense-of-work.ts';
import { setAt } from './set-at.ts';
import { SHAPE_OF_GARMENT } from './shape-of-garment.ts';
import { SHAPE_OF_WEARER_PATTERN } from './shape-of-wearer-pattern.ts';
import { SHAPE_OF_WORK } from './shape-of-work.ts';
import { SHAPE_OF_YARNS_EVIDENCE } from './shape-of-yarns-evidence.ts';

/** Days, moments and base64 are checked by the schema's own patterns: the formats' names need no second check. */
const ajv = new Ajv2020({
  allErrors: true,
  formats: { date: true, 'date-time': true, base64: true },
});
const agrees = ajv.compile(published);

const malformed = ({ path, value }: MalformedCase): unknown => setAt(sample(), path, value);
const titled = (cases: readonly MalformedCase[]) =>
  cases.map((each) => [`${each.title} (${each.path})`, each] as const);

const SHAPE = [
  ...SHAPE_OF_GARMENT,
  ...SHAPE_OF_WEARER_PATTERN,
  ...SHAPE_OF_YARNS_EVIDENCE,
  ...SHAPE_OF_WORK,
];
const SENSE = [
  ...SENSE_OF_WEARER,
  ...SENSE_OF_PATTERN,
  ...SENSE_OF_THE_REST,
  ...SENSE_OF_MAT,
  ...SENSE_OF_WORK,
];

describe('the sample', () => {
  it('R40: has no fault and no doubt, so that every case differs in one place only', () => {
    expect(faultsOf(sample())).toEqual([]);
    expect(garmentRecord.safeParse(sample()).success).toBe(true);
    expect(agrees(sample())).toBe(true);
  });

  it('R40: the cases are many, and none is listed twice', () => {
    const keys = [...SHAPE, ...SENSE].map(({ path, value }) => `${path} ${JSON.stringify(value)}`);
    expect(keys.length).toBeGreaterThanOrEqual(100);
    expect(new Set(keys).size).toBe(keys.length);
  });
});

describe('records of the wrong shape', () => {
  it.each(titled(SHAPE))('R41: %s', (_, each) => {
    const read = readRecord(JSON.stringify(malformed(each)));
    expect(read.ok ? [] : read.faults.map(explain)).toEqual(each.says);
    expect(each.says.length).toBeGreaterThan(0);
  });

  it.each(titled(SHAPE))('R44: the published schema turns it away too: %s', (_, each) => {
    expect(agrees(malformed(each))).toBe(false);
  });

  it('R42: all faults of a record are reported at once', () => {
    const worst = [
      ['wearer.group', 'teenager'],
      ['pattern.gauge.state', 'washed'],
      ['yarns[0].treatment', 7],
      ['plan.dryng', 'pin'],
    ].reduce<unknown>((record, [path, value]) => setAt(record, String(path), value), sample());
    const read = readRecord(JSON.stringify(worst));
    expect(read.ok ? [] : read.faults.map(({ field }) => field)).toEqual([
      'wearer.group',
      'pattern.gauge.state',
      'yarns[0].treatment',
      'plan.dryng',
    ]);
  });
});

describe('records of the right shape that make no sense', () => {
  it.each(titled(SENSE))('R43: %s', (_, each) => {
    const read = readRecord(JSON.stringify(malformed(each)));
    expect(read.ok && faultsOf(read.value.record).map(explain)).toEqual(each.says);
    expect(each.says.length).toBeGreaterThan(0);
    expect(agrees(malformed(each))).toBe(true);
  });
});

describe('the published schema', () => {
  it('R44: is what the schema of reading makes (npm run schema -w @dryflat/record)', () => {
    expect(`${JSON.stringify(published, null, 2)}\n`).toBe(schemaText());
  });

  it.each(EXAMPLES.map(({ slug, record }) => [slug, record] as const))(
    'R44: takes the example %s',
    (_, record) => {
      expect(agrees(record) ? [] : agrees.errors).toEqual([]);
    },
  );

  it('R44: takes every record that reading takes', () => {
    fc.assert(
      fc.property(anyRecord, (record) => {
        expect(agrees(JSON.parse(writeRecord(record)))).toBe(true);
      }),
    );
  });
});
