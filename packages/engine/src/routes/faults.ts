import { atLatest } from '../garment/index.ts';
import { type Fault, fail, ok, type Result } from '../units/index.ts';
import { paceFaults } from './pace/faults.ts';
import type {
  PersonToFit,
  PieceProgress,
  RoutesOptions,
  RoutesQuestion,
  RouteWeights,
} from './types.ts';

const fault = (
  code: string,
  field: string,
  given: unknown,
  problem: string,
  mend: string,
): Fault => ({
  code: `routes-${code}`,
  field,
  given: String(given),
  problem,
  mend,
});

const within = (value: number, least: number, most: number): boolean =>
  value >= least && value <= most;

const PARTS = ['fit', 'time', 'yarn'] as const;

const weightFaults = (weights: RouteWeights): Fault[] => {
  const wrong = PARTS.filter((part) => !within(weights[part], 0, 1)).map((part) =>
    fault(
      'weight',
      `weights.${part}`,
      weights[part],
      'a weight lies between 0 and 1',
      'Give 0 for what does not count and 1 for what counts most.',
    ),
  );
  return wrong.length > 0 || PARTS.some((part) => weights[part] > 0)
    ? wrong
    : [
        fault(
          'weights-zero',
          'weights',
          '0, 0, 0',
          'nothing counts, so no route is better than another',
          'Give at least one of fit, time and yarn a weight above 0.',
        ),
      ];
};

const progressFaults = (progress: readonly PieceProgress[]): Fault[] =>
  progress.flatMap(({ piece, share }, k) => [
    ...(within(share, 0, 1)
      ? []
      : [
          fault(
            'share',
            `progress[${k}].share`,
            share,
            'this is no share of a piece',
            'Give 0 for not begun to 1 for all of it.',
          ),
        ]),
    ...(progress.findIndex((other) => other.piece === piece) === k
      ? []
      : [
          fault(
            'piece-twice',
            `progress[${k}].piece`,
            piece,
            'this piece is given twice',
            'Keep one entry for it.',
          ),
        ]),
  ]);

const personFaults = (people: readonly PersonToFit[]): Fault[] =>
  people.flatMap(({ id, body }, k) => [
    ...(people.findIndex((other) => other.id === id) === k
      ? []
      : [
          fault(
            'person-twice',
            `people[${k}].id`,
            id,
            'two people have this id',
            'Give each an id of its own.',
          ),
        ]),
    ...body.flatMap(({ mm }, j) =>
      mm > 0 && mm <= 100_000
        ? []
        : [
            fault(
              'body',
              `people[${k}].body[${j}].mm`,
              mm,
              'this is no measurement of a body',
              'Give millimetres above 0.',
            ),
          ],
    ),
  ]);

const needleFaults = ({ forecast: { specimens } }: RoutesQuestion): Fault[] =>
  specimens.flatMap(({ needle }, k) =>
    needle === undefined || within(needle, 0.5, 60)
      ? []
      : [
          fault(
            'needle',
            `forecast.specimens[${k}].needle`,
            needle,
            'no needle is so thick',
            'Give its diameter in millimetres.',
          ),
        ],
  );

const MOST_DRAWS = 1_000_000;

const optionFaults = ({ seed = 1, draws = 10_000 }: RoutesOptions): Fault[] => [
  ...(Number.isInteger(draws) && within(draws, 100, MOST_DRAWS)
    ? []
    : [
        fault(
          'draws',
          'draws',
          draws,
          'this is no number of draws',
          `Give a whole number from 100 to ${MOST_DRAWS}.`,
        ),
      ]),
  ...(Number.isInteger(seed) && within(seed, 0, 2 ** 32 - 1)
    ? []
    : [
        fault(
          'seed',
          'seed',
          seed,
          'this is no seed',
          `Give a whole number from 0 to ${2 ** 32 - 1}.`,
        ),
      ]),
];

const shopFaults = (days: number | null): Fault[] =>
  days === null || within(days, 0, 1000)
    ? []
    : [
        fault(
          'shop-days',
          'pace.shopDays',
          days,
          'this is no number of days',
          'Give 0 to 1000, or nothing where no skein is to be had.',
        ),
      ];

/** The pace's own complaints, under the fields that are given here. */
const timeFaults = ({ pace, from, by, dryingHours }: RoutesQuestion): Fault[] =>
  paceFaults({
    parts: [],
    log: pace.log,
    hours: pace.hours,
    away: pace.away,
    from,
    by,
    dryingHours,
    finishing: null,
    yarn: null,
  }).map((each) => ({
    ...each,
    field: /^(log|hours|away)/.test(each.field) ? `pace.${each.field}` : each.field,
  }));

const forecastFaults = ({ forecast: { measurements, sizes, chosen } }: RoutesQuestion): Fault[] => [
  ...(measurements.length > 0
    ? []
    : [
        fault(
          'no-measurements',
          'forecast.measurements',
          'none',
          'nothing says how large the garment is',
          'Give at least one measurement of the pattern.',
        ),
      ]),
  ...(chosen in sizes
    ? []
    : [
        fault(
          'size',
          'forecast.chosen',
          chosen,
          'the pattern has no such size',
          `Give a number from 0 to ${sizes.length - 1}.`,
        ),
      ]),
];

/** The question, judged in the latest state that was measured, or everything that is wrong with it; what the yarn says of itself comes when it is used. */
export const checked = (
  question: RoutesQuestion,
  options: RoutesOptions,
): Result<RoutesQuestion> => {
  const faults = [
    ...forecastFaults(question),
    ...weightFaults(question.weights),
    ...progressFaults(question.progress),
    ...personFaults(question.people),
    ...needleFaults(question),
    ...shopFaults(question.pace.shopDays),
    ...timeFaults(question),
    ...optionFaults(options),
  ];
  return faults.length > 0
    ? fail(...faults)
    : ok({ ...question, forecast: atLatest(question.forecast) });
};
