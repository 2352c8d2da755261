import type { Fault } from '../../units/index.ts';
import { dayNumber } from './iso-day.ts';
import type { PaceEntry, PaceQuestion, WorkPart } from './types.ts';

export const paceFault = (
  code: string,
  field: string,
  given: unknown,
  problem: string,
  mend: string,
): Fault => ({ code: `pace-${code}`, field, given: String(given), problem, mend });

/** False for what is no number. */
const within = (value: number, least: number, most: number): boolean =>
  value >= least && value <= most;

const partFaults = ({ stitches }: WorkPart, k: number): Fault[] =>
  within(stitches, 0, 1e8)
    ? []
    : [
        paceFault(
          'stitches',
          `parts[${k}].stitches`,
          stitches,
          'this is no number of stitches',
          'Give 0 or more.',
        ),
      ];

/** Stitches a minute that no hand keeps up. */
const FASTEST = 200;

const entryFaults = ({ minutes, stitches }: PaceEntry, k: number): Fault[] => {
  const at = `log[${k}]`;
  if (!(minutes > 0 && minutes <= 1e5))
    return [
      paceFault('minutes', `${at}.minutes`, minutes, 'this is no time', 'Give minutes above 0.'),
    ];
  if (!(stitches > 0 && stitches <= 1e8))
    return [
      paceFault(
        'stitches',
        `${at}.stitches`,
        stitches,
        'nothing was knit in that time',
        'Give the stitches knit, above 0, or leave the entry out.',
      ),
    ];
  return within(stitches / minutes, 0.05, FASTEST)
    ? []
    : [
        paceFault(
          'implausible',
          at,
          `${stitches} stitches in ${minutes} minutes`,
          'nobody knits at that pace',
          'Check the stitches and the minutes.',
        ),
      ];
};

const hoursFaults = (hours: readonly number[]): Fault[] =>
  hours.length === 7
    ? hours.flatMap((each, k) =>
        within(each, 0, 24)
          ? []
          : [
              paceFault(
                'hours',
                `hours[${k}]`,
                each,
                'a day has no such hours',
                'Give 0 to 24 hours.',
              ),
            ],
      )
    : [
        paceFault(
          'hours',
          'hours',
          hours.length,
          'a week has seven days',
          'Give hours for each day, Monday first.',
        ),
      ];

const dayFaults = (field: string, day: string): Fault[] =>
  dayNumber(day) === null
    ? [paceFault('day', field, day, 'this is no day of the calendar', 'Write it like 2031-04-09.')]
    : [];

const finishingFaults = ({ finishing }: PaceQuestion): Fault[] =>
  (['seamsMm', 'ends'] as const).flatMap((field) =>
    finishing === null || within(finishing[field], 0, 1e6)
      ? []
      : [
          paceFault(
            'finishing',
            `finishing.${field}`,
            finishing[field],
            'this cannot be sewn',
            'Give 0 or more.',
          ),
        ],
  );

const dryingFaults = ({ dryingHours }: PaceQuestion): Fault[] => {
  if (dryingHours === null) return [];
  const { p5, p50, p95 } = dryingHours;
  return p5 > 0 && p5 <= p50 && p50 <= p95 && p95 <= 10_000
    ? []
    : [
        paceFault(
          'drying',
          'dryingHours',
          `${p5}, ${p50}, ${p95}`,
          'these are no hours in order',
          'Give hours above 0, the smallest first.',
        ),
      ];
};

const yarnFaults = ({ yarn }: PaceQuestion): Fault[] => {
  if (yarn === null) return [];
  const { heldOverNeeded, shopDays } = yarn;
  const held = heldOverNeeded.median >= 0 && within(heldOverNeeded.logSd, 0, 20);
  return [
    ...(held
      ? []
      : [
          paceFault(
            'yarn',
            'yarn.heldOverNeeded',
            heldOverNeeded.median,
            'this is no share of the yarn needed',
            'Give 0 or more with its doubt.',
          ),
        ]),
    ...(within(shopDays, 0, 1000)
      ? []
      : [
          paceFault(
            'shop-days',
            'yarn.shopDays',
            shopDays,
            'this is no number of days',
            'Give 0 to 1000 days.',
          ),
        ]),
  ];
};

/** Everything that is wrong with a question, field by field. */
export const paceFaults = (question: PaceQuestion): Fault[] => [
  ...question.parts.flatMap(partFaults),
  ...question.log.flatMap(entryFaults),
  ...hoursFaults(question.hours),
  ...dayFaults('from', question.from),
  ...question.away.flatMap((day, k) => dayFaults(`away[${k}]`, day)),
  ...(question.by === null ? [] : dayFaults('by', question.by)),
  ...finishingFaults(question),
  ...dryingFaults(question),
  ...yarnFaults(question),
];
