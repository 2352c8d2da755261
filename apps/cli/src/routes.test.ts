import { rmSync, writeFileSync } from 'node:fs';
import { readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { EXAMPLES, findExample, type GarmentRecord, writeRecord } from '@dryflat/record';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { forecastCommand } from './commands/forecast.ts';
import { routesCommand } from './commands/routes.ts';
import { widthOf } from './print/text.ts';
import { runProgram } from './program.ts';
import type { Surroundings } from './surroundings.ts';
import { dryflat, emptyFolder } from './testing/dryflat.ts';

const waistcoat = (): GarmentRecord =>
  structuredClone(findExample('waistcoat')?.record ?? expect.fail('no example'));

let cwd: string;
beforeAll(() => {
  cwd = emptyFolder();
  writeFileSync(join(cwd, 'good.json'), writeRecord(waistcoat()));
  writeFileSync(join(cwd, 'there.ics'), 'kept');
});
afterAll(() => rmSync(cwd, { recursive: true }));

const DAY = ['--today', '2031-01-13'] as const;

/** Runs in this process, on fewer draws: the same program without the start of Node. */
const surroundings = (record: GarmentRecord): Surroundings => ({
  read: async (path) => (path === '-' ? writeRecord(record) : readFile(join(cwd, path), 'utf8')),
  write: async ([[path, content] = ['', '']], replace) =>
    writeFile(join(cwd, path), content, { flag: replace ? 'w' : 'wx' }).then(
      () => null,
      (error) => ({ path, error, written: [] }),
    ),
  font: () => Promise.reject(new Error('no font is asked for')),
  random: () => 0,
  today: () => '2031-01-13',
  colours: false,
});
const FLAGS = { units: 'cm', words: 'us', seed: '1', draws: '1000' } as const;

describe('routes', () => {
  const routesOf = async (example: string, change: (record: GarmentRecord) => void) => {
    const record = structuredClone(findExample(example)?.record ?? expect.fail('no example'));
    change(record);
    const ending = await routesCommand('-', { ...FLAGS, json: true }, surroundings(record));
    return JSON.parse(ending.out).routes as { id: string; hoursBy: { rip: { p50: number } } }[];
  };

  it('C15: a foot that is too long is not mended at the cuff, but behind its toe', async () => {
    const all = await routesOf('ferry-socks', (record) => {
      record.progress = [{ piece: 'sock', share: 1 }];
    });
    expect(all.map(({ id }) => id)).not.toContain('take-away:cast-on edge');
    expect(all.find(({ id }) => id === 'rip-length:body')?.hoursBy.rip.p50).toBeGreaterThan(0);
  });

  it('C15: sleeves that are knit up to the yoke are ripped to be made shorter', async () => {
    const all = await routesOf('yoke-pullover', (record) => {
      record.progress = [{ piece: 'sleeve', share: 1 }];
    });
    expect(all.find(({ id }) => id === 'rip-length:sleeve')?.hoursBy.rip.p50).toBeGreaterThan(0);
  });

  it('C15: half a back is on the needles: its stitches speak, and what was taken for its height is told', async () => {
    const record = structuredClone(
      findExample('yoke-pullover')?.record ?? expect.fail('no example'),
    );
    const { gauge: _, ...pattern } = record.pattern;
    record.pattern = pattern;
    record.pattern.sizes = ['M'];
    record.pattern.chosen = 'M';
    record.pattern.measurements = [
      {
        id: 'chest',
        name: 'Chest',
        landmark: 'chest',
        span: 'around',
        worked: 'counted',
        values: [960],
      },
    ];
    record.wearer.wanted = [
      { kind: 'finished', landmark: 'chest', minMm: 940, maxMm: 1000, span: 'around' },
    ];
    record.evidence = [
      {
        id: 'half',
        name: 'Half a back',
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
      },
    ];
    const { out } = await routesCommand('-', FLAGS, surroundings(record));
    expect(out).toMatch(/^ +\d+ +Keep the back, and knit the front \d+\s+stitches narrower/m);
    expect(out).toMatch(/^ +\d+ +Rip the body down to its first row/m);
    expect(out).toMatch(/^ +\d+ +Go on as planned/m);
    expect(out).not.toContain('Knit it as planned');
    expect(out.replaceAll(/\s+/g, ' ')).toContain(
      'How much of the back is knit is not entered: a part of it was measured, and half of it is assumed',
    );
    const forecastOf = await forecastCommand(
      '-',
      { units: 'cm', words: 'us', seed: '1', draws: '1000' },
      surroundings(record),
    );
    // 100 stitches measuring 53 cm, twice.
    expect(forecastOf.out).toMatch(/^Chest +96\.0 +10[56]\.\d /m);
  });

  it('C15: a record that tells of the first drying too gets the advice of the last wash', async () => {
    const advice = async (states: readonly ('dried' | 'rewashed')[]) => {
      const record = structuredClone(
        findExample('hayloft-pullover')?.record ?? expect.fail('no example'),
      );
      record.pieces = [];
      record.plan.judgeAt = 'dried';
      for (const row of record.pattern.measurements)
        if (row.id === 'body-length') row.values = row.values.map(() => 580);
        else if (row.id === 'underarm-length') row.values = row.values.map(() => 340);
      record.wearer.wanted = [
        { kind: 'finished', landmark: 'body-length', minMm: 560, maxMm: 600 },
      ];
      record.outcomes = states.map((state, k) => ({
        id: state,
        washes: k + 1,
        remark: '',
        measured: [
          { id: state, measurement: 'body-length', state, mm: state === 'dried' ? 580 : 630 },
        ],
      }));
      const { out } = await routesCommand('-', FLAGS, surroundings(record));
      return out;
    };
    const [now, fuller] = [await advice(['rewashed']), await advice(['dried', 'rewashed'])];
    for (const said of [now, fuller]) {
      expect(said).toMatch(/fit is judged\s+rewashed/);
      expect(said).toMatch(/^ {2}1 {2}Take 1\d rows out above the ribbing of the hem/m);
    }
  });

  it('C15: one JSON object, best first, with the keys that are promised', () => {
    const { code, out, err } = dryflat(['routes', 'good.json', '--json', ...DAY], { cwd });
    expect({ code, err }).toEqual({ code: 0, err: '' });
    const { routes, leftOut, valueOfInformation, sizes } = JSON.parse(out);
    expect(routes.length).toBeGreaterThanOrEqual(12);
    for (const route of routes)
      expect(Object.keys(route)).toEqual(
        expect.arrayContaining([
          'name',
          'chanceAllFit',
          'worst',
          'hours',
          'yarnM',
          'chanceOfYarn',
          'chanceByDate',
          'dominatedBy',
          'reasons',
        ]),
      );
    const scores = routes.map(({ score }: { score: number }) => score);
    expect(scores).toEqual(scores.toSorted((a: number, b: number) => b - a));
    const ids = new Set(routes.map(({ id }: { id: string }) => id));
    for (const { hours, dominatedBy, reasons } of routes) {
      expect(hours.p05).toBeLessThanOrEqual(hours.p50);
      expect(hours.p50).toBeLessThanOrEqual(hours.p95);
      expect(dominatedBy === null || ids.has(dominatedBy)).toBe(true);
      expect(reasons.length).toBeGreaterThan(0);
    }
    expect(leftOut.length + valueOfInformation.length + sizes.length).toBeGreaterThan(10);
    expect(out).not.toContain('{mm:');
  });

  it('C2: the same file, day and seed give the same bytes, read from a file or from standard input', () => {
    const line = ['--draws', '2000', '--seed', '9', ...DAY];
    const first = dryflat(['routes', 'good.json', ...line], { cwd });
    const second = dryflat(['routes', '-', ...line], { input: writeRecord(waistcoat()) });
    expect(second.out).toBe(first.out);
    expect(first.code).toBe(0);
  });

  it.each(EXAMPLES.map(({ slug, record }) => [slug, record] as const))(
    'C4: %s keeps within 80 columns, in both units and in both words',
    async (_, record) => {
      for (const [units, words] of [
        ['cm', 'us'],
        ['in', 'uk'],
      ] as const) {
        const { code, out, err } = await routesCommand(
          '-',
          { ...FLAGS, units, words },
          surroundings(record),
        );
        expect({ code, err }).toEqual({ code: 0, err: '' });
        expect(out.split('\n').filter((line) => widthOf(line) > 80)).toEqual([]);
        expect(out).not.toContain('{mm:');
        expect(out).toMatch(/comes\s+first,\s+with\s+fit\s+weighed/);
        if (words === 'uk') expect(out).not.toMatch(/\bgauge\b|\bswatch\b/i);
      }
    },
  );

  it('C15: says of no body more than the name of who has it', async () => {
    const record = waistcoat();
    const said = { ...surroundings(record) };
    const { out } = await routesCommand('-', { ...FLAGS, json: true }, said);
    for (const { routes } of [JSON.parse(out)])
      for (const route of routes) expect(JSON.stringify(route)).not.toMatch(/bodyMm|"body"/);
  });
});

describe('pace', () => {
  it('C16: one JSON object: hours, days with their chances, the critical step', () => {
    const { code, out, err } = dryflat(['pace', 'good.json', '--json', ...DAY], { cwd });
    expect({ code, err }).toEqual({ code: 0, err: '' });
    const told = JSON.parse(out);
    expect(told.from).toBe('2031-01-13');
    expect(told.hours.p05).toBeLessThan(told.hours.p95);
    const chances = told.days.map(({ cumulative }: { cumulative: number }) => cumulative);
    expect(chances).toEqual(chances.toSorted((a: number, b: number) => a - b));
    expect(told.critical[0].daysGained).toBeGreaterThan(0);
    expect(told.date.by).toBe('2031-02-21');
  });

  it('C16: the list keeps within 80 columns, and the calendar has the end of it', () => {
    const { code, out, err } = dryflat(['pace', 'good.json', '--calendar', 'new.ics', ...DAY], {
      cwd,
    });
    expect({ code, err }).toEqual({ code: 0, err: 'Written to new.ics.\n' });
    expect(out.split('\n').filter((line) => widthOf(line) > 80)).toEqual([]);
    expect(out).toContain('What takes the days');
  });
});

type Case = readonly [
  what: string,
  line: readonly string[],
  change: (r: GarmentRecord) => void,
  err: RegExp,
];
const same = () => {};
const CASES: readonly Case[] = [
  [
    'a file that is not there',
    ['routes', 'gone.json'],
    same,
    /^gone\.json: file: there is no such file/,
  ],
  [
    'a day in words',
    ['routes', '-', '--today', 'tomorrow'],
    same,
    /^dryflat routes: --today: this is no day of the calendar \(given: tomorrow\)\. Write it like/,
  ],
  [
    'a day that no February has',
    ['pace', '-', '--today', '2031-02-30'],
    same,
    /^dryflat pace: --today: /,
  ],
  [
    'units that are none',
    ['routes', '-', '--units', 'ft'],
    same,
    /^dryflat routes: --units: .*cm, in/,
  ],
  ['words that are none', ['routes', '-', '--words', 'fr'], same, /^dryflat routes: --words: /],
  ['a seed in letters', ['routes', '-', '--seed', 'seven'], same, /^dryflat routes: --seed: /],
  ['ten draws', ['routes', '-', '--draws', '10'], same, /^dryflat routes: --draws: .*from 1000/],
  [
    'three faults at once',
    ['routes', '-', '--draws', '0', '--seed', '-1x', '--units', 'm'],
    same,
    /^(dryflat routes: .*\n){3}$/,
  ],
  [
    'an option of another command',
    ['pace', '-', '--svg', 'x'],
    same,
    /^dryflat: unknown option '--svg'/,
  ],
  [
    'a calendar that is there',
    ['pace', '-', '--calendar', 'there.ics'],
    same,
    /^there\.ics: file: there is a file of that name/,
  ],
  ['a text that is no record', ['routes', 'there.ics'], same, /^there\.ics: /],
  [
    'no weight at all',
    ['routes', '-'],
    ({ plan }) => {
      plan.weights = { fit: 0, time: 0, yarn: 0 };
    },
    /weights.*: nothing counts/,
  ],
  [
    'more than a whole piece',
    ['routes', '-'],
    (r) => {
      r.progress = [{ piece: 'back', share: 1.5 }];
    },
    /^standard input: progress\[0\]\.share: /,
  ],
  [
    'a day of thirty hours',
    ['pace', '-'],
    (r) => {
      r.pace = { log: [], hours: [30, 1, 1, 1, 1, 1, 1], away: [] };
    },
    /^standard input: pace\.hours\[0\]: /,
  ],
  [
    'stitches in no time',
    ['pace', '-'],
    (r) => {
      r.pace = {
        log: [{ id: 'a', minutes: 0, stitches: 5, fabric: 'plain' }],
        hours: [1, 1, 1, 1, 1, 1, 1],
        away: [],
      };
    },
    /^standard input: pace\.log\[0\]\.minutes: /,
  ],
  [
    'yarn left of a yarn that is not there',
    ['routes', '-'],
    (r) => {
      r.left = [{ yarn: 'none', massG: 5 }];
    },
    /^standard input: left\[0\]\.yarn: /,
  ],
];

it.each(CASES)(
  'C1: %s is told in a line for each fault, and nothing else is done',
  async (_, line, change, wanted) => {
    const record = waistcoat();
    change(record);
    const { code, out, err } = await runProgram(line, surroundings(record));
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err).toMatch(wanted);
  },
);
