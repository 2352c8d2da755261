import type { LogNormal } from '../../stats/index.ts';
import { WEIGHT_CLASSES } from '../../textile/index.ts';
import type { Fault } from '../../units/index.ts';
import type {
  WeighedFabric,
  YarnLot,
  YarnPart,
  YarnQuestion,
  YarnStock,
  YarnWork,
} from './types.ts';

const MOST_STITCHES = 1e8;
const MOST_MM = 1e7;
const MOST_GRAMS = 1e6;
/** mm of yarn in a stitch: outside no hand knits. */
const LOOP_MM = { least: 1, most: 500 };

const fault = (
  code: string,
  field: string,
  given: unknown,
  problem: string,
  mend: string,
): Fault => ({
  code: `yarn-${code}`,
  field,
  given: String(given),
  problem,
  mend,
});

interface Check {
  readonly code: string;
  readonly field: string;
  readonly value: number;
  readonly passes: boolean;
  readonly problem: string;
  readonly mend: string;
}

const failing = (checks: readonly Check[]): Fault[] =>
  checks
    .filter(({ passes }) => !passes)
    .map(({ code, field, value, problem, mend }) => fault(code, field, value, problem, mend));

const within = (value: number, least: number, most: number): boolean =>
  value >= least && value <= most;

const positive = (value: number, most: number): boolean => value > 0 && value <= most;

const logNormalCheck = (field: string, value: LogNormal | null): Check[] =>
  value === null
    ? []
    : [
        {
          code: 'gauge',
          field,
          value: value.median,
          passes: positive(value.median, 1000) && within(value.logSd, 0, 2),
          problem: 'this is no size of a stitch with its doubt',
          mend: 'Give millimetres above 0, and an SD of the logarithm from 0 to 2.',
        },
      ];

const weighedChecks = (each: WeighedFabric, k: number): Check[] => {
  const at = `weighed[${k}]`;
  return [
    {
      code: 'mass',
      field: `${at}.massG`,
      value: each.massG,
      passes: positive(each.massG, MOST_GRAMS),
      problem: 'this is no mass',
      mend: 'Weigh it, in grams above 0.',
    },
    ...(['across', 'up'] as const).map((field) => ({
      code: 'counts',
      field: `${at}.${field}`,
      value: each[field],
      passes: positive(each[field], 1e6),
      problem: 'without its stitches and rows a mass tells nothing',
      mend: 'Count them, above 0.',
    })),
  ];
};

const labelChecks = ({ metresPer100g, weightClass }: YarnQuestion): Check[] => [
  {
    code: 'metres',
    field: 'metresPer100g',
    value: metresPer100g ?? Number.NaN,
    passes: metresPer100g === null || within(metresPer100g, 5, 20_000),
    problem: 'no yarn has so many metres in 100 g',
    mend: 'Read the label: metres divided by grams, times 100.',
  },
  {
    code: 'class',
    field: 'weightClass',
    value: weightClass ?? Number.NaN,
    passes: weightClass === null || WEIGHT_CLASSES.some((each) => each === weightClass),
    problem: 'there is no such weight class',
    mend: 'Give a number from 0 to 7, or none.',
  },
];

/** A mass and counts that no yarn explains, taken with the label where there is one. */
const implausible = ({ weighed, metresPer100g }: YarnQuestion): Fault[] =>
  weighed.flatMap(({ massG, across, up }, k) => {
    if (metresPer100g === null) return [];
    const loop = (massG / (across * up)) * metresPer100g * 10;
    return within(loop, LOOP_MM.least, LOOP_MM.most)
      ? []
      : [
          fault(
            'implausible',
            `weighed[${k}]`,
            `${massG} g, ${across} × ${up} stitches`,
            `that would be {mm:${loop.toPrecision(3)}} of yarn in a stitch`,
            'Check its mass, its counts and the metres on the label.',
          ),
        ];
  });

/** What is wrong with what is known of the yarn; the fibres are checked where their regain is read. */
export const yarnFaults = (question: YarnQuestion): Fault[] => {
  const { gauge } = question;
  const faults = failing([
    ...labelChecks(question),
    ...logNormalCheck('gauge.width', gauge?.width ?? null),
    ...logNormalCheck('gauge.row', gauge?.row ?? null),
    ...question.weighed.flatMap(weighedChecks),
  ]);
  return faults.length > 0 ? faults : implausible(question);
};

const partChecks = (field: string, parts: readonly YarnPart[]): Check[] =>
  parts.map(({ stitches }, k) => ({
    code: 'stitches',
    field: `${field}[${k}].stitches`,
    value: stitches,
    passes: within(stitches, 0, MOST_STITCHES),
    problem: 'this is no number of stitches',
    mend: 'Give 0 or more.',
  }));

const tally = (field: string, value: number, most: number): Check => ({
  code: 'work',
  field,
  value,
  passes: within(value, 0, most),
  problem: 'this cannot be knit or sewn',
  mend: 'Give 0 or more.',
});

export const workFaults = (work: YarnWork): Fault[] =>
  failing([
    ...partChecks('parts', work.parts),
    ...partChecks('ripped', work.ripped),
    tally('castOn', work.castOn, MOST_STITCHES),
    tally('bindOff', work.bindOff, MOST_STITCHES),
    tally('seamsMm', work.seamsMm, MOST_MM),
    tally('joins', work.joins, 10_000),
  ]);

const lotChecks = (lot: YarnLot, k: number, weighed: boolean): Check[] => {
  const at = `lots[${k}]`;
  const sizes = (['gramsEach', 'metresEach'] as const).filter((field) => lot[field] !== null);
  return [
    {
      code: 'skeins',
      field: `${at}.skeins`,
      value: lot.skeins,
      passes: within(lot.skeins, 0, 10_000),
      problem: 'this is no number of skeins',
      mend: 'Give 0 or more; halves are well.',
    },
    ...sizes.map((field) => ({
      code: 'skein-size',
      field: `${at}.${field}`,
      value: lot[field] ?? 0,
      passes: positive(lot[field] ?? 0, MOST_GRAMS),
      problem: 'this is no size of a skein',
      mend: 'Read it from the label.',
    })),
    {
      code: 'skein-size',
      field: `${at}.gramsEach`,
      value: Number.NaN,
      passes: weighed || sizes.length > 0 || lot.skeins === 0,
      problem: 'the size of its skeins is not known',
      mend: 'Read grams or metres from the label, or weigh what is left.',
    },
  ];
};

export const stockFaults = ({ lots, leftG }: YarnStock): Fault[] =>
  failing([
    ...lots.flatMap((lot, k) => lotChecks(lot, k, leftG !== null)),
    {
      code: 'left',
      field: 'leftG',
      value: leftG ?? Number.NaN,
      passes: leftG === null || within(leftG, 0, MOST_GRAMS),
      problem: 'this is no mass of yarn left',
      mend: 'Weigh it, in grams, 0 or more.',
    },
  ]);
