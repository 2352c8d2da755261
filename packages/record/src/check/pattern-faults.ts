import { findLandmark, LANDMARKS } from '@dryflat/engine/garment';
import type { Fault } from '@dryflat/engine/units';
import { nearest } from '../read/nearest.ts';
import type { GarmentRecord, Pattern, PatternMeasurement } from '../schema/index.ts';
import { mayGoAround } from '../spans/girths.ts';
import { fault } from './doubt.ts';

/** Faults of the pattern's table: its sizes, and each row against them. */
export const patternFaults = ({ pattern }: GarmentRecord): Fault[] => [
  ...sizeFaults(pattern),
  ...pattern.measurements.flatMap((row, at) =>
    rowFaults(row, `pattern.measurements[${at}]`, pattern),
  ),
];

const sizeFaults = ({ sizes, chosen }: Pattern): Fault[] => [
  ...sizes.flatMap((size, at) =>
    sizes.indexOf(size) === at
      ? []
      : [
          fault(
            'duplicate-size',
            `pattern.sizes[${at}]`,
            size,
            'two sizes have the same name',
            'Give each size a name of its own.',
          ),
        ],
  ),
  ...(chosen === undefined || sizes.includes(chosen)
    ? []
    : [
        fault(
          'size-not-in-pattern',
          'pattern.chosen',
          chosen,
          'the pattern has no size of this name',
          sizes.length === 0
            ? 'Give the pattern its sizes first.'
            : `Choose one of ${sizes.map((size) => `"${size}"`).join(', ')}.`,
        ),
      ]),
];

const rowFaults = (row: PatternMeasurement, path: string, pattern: Pattern): Fault[] => [
  ...lengthFaults(row.values, `${path}.values`, pattern.sizes.length, 'value'),
  ...(row.counts === undefined
    ? []
    : lengthFaults(row.counts, `${path}.counts`, pattern.sizes.length, 'count')),
  ...landmarkFaults(row, path),
  ...needlessSpan(row, path),
];

const lengthFaults = (
  list: readonly unknown[],
  path: string,
  sizes: number,
  what: 'value' | 'count',
): Fault[] =>
  list.length === sizes
    ? []
    : [
        fault(
          'values-do-not-match-sizes',
          path,
          plural(list.length, what),
          `it has ${plural(list.length, what)} for ${plural(sizes, 'size')}`,
          `Give ${plural(sizes, what)}, with null where the pattern gives none.`,
        ),
      ];

const plural = (number: number, what: string): string =>
  `${number} ${what}${number === 1 ? '' : 's'}`;

const landmarkFaults = (row: PatternMeasurement, path: string): Fault[] => {
  const known = findLandmark(row.landmark);
  if (known === null) return row.direction === undefined ? [undirected(row, path)] : [];
  if (row.direction === undefined || row.direction === known.direction) return [];
  return [
    fault(
      'direction-differs',
      `${path}.direction`,
      row.direction,
      `the landmark "${row.landmark}" runs along the ${known.direction}`,
      'Leave the direction out, or use a landmark of your own.',
    ),
  ];
};

const undirected = (row: PatternMeasurement, path: string): Fault => {
  const meant = nearest(
    row.landmark,
    LANDMARKS.map(({ id }) => id),
  );
  return fault(
    'landmark-without-direction',
    `${path}.direction`,
    null,
    `"${row.landmark}" is a landmark of your own, and nothing says which way it runs`,
    `Write "width" or "length"${meant === null ? '' : `, or use the landmark "${meant}"`}.`,
  );
};

const needlessSpan = (row: PatternMeasurement, path: string): Fault[] =>
  row.span !== 'around' ||
  mayGoAround(row) ||
  (findLandmark(row.landmark) === null && !row.direction)
    ? []
    : [
        fault(
          'goes-around-nothing',
          `${path}.span`,
          row.span,
          `"${row.name}" is measured across one layer or along the length; it does not go around`,
          'Leave the span out.',
        ),
      ];
