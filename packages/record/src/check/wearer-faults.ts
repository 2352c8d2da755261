import { BODY_TABLES, findLandmark, LANDMARKS } from '@dryflat/engine/garment';
import type { Fault } from '@dryflat/engine/units';
import { nearest } from '../read/nearest.ts';
import type { BodyMeasure, GarmentRecord, WantedFit, Wearer } from '../schema/index.ts';
import { bodyAt, bodyIdOf } from '../spans/body-at.ts';
import { bodyRange } from '../spans/body-range.ts';
import { measurementAt } from '../spans/girths.ts';
import { lengthText } from '../text/lengths.ts';
import { fault } from './doubt.ts';

/** Faults of the body and of the fit that is wanted. */
export const wearerFaults = (record: GarmentRecord): Fault[] => [
  ...bodyFaults(record, record.wearer, 'wearer.body'),
  ...twice(record.wearer.wanted, 'wearer.wanted'),
  ...record.wearer.wanted.flatMap((each, at) => wantedFaults(record, each, `wearer.wanted[${at}]`)),
  ...(record.people ?? []).flatMap((each, at) => bodyFaults(record, each, `people[${at}].body`)),
];

/** Somebody's body: the wearer's, or that of another whom it might fit. */
type Somebody = Pick<Wearer, 'group' | 'body'>;

const bodyFaults = (record: GarmentRecord, somebody: Somebody, path: string): Fault[] => [
  ...twice(somebody.body, path),
  ...somebody.body.flatMap((each, at) => [
    ...unlikelyBody(somebody, each, `${path}[${at}].mm`),
    ...strangeBody(record, each, `${path}[${at}].landmark`),
  ]),
];

const twice = (list: readonly { readonly landmark: string }[], path: string): Fault[] =>
  list.flatMap(({ landmark }, at) => {
    const first = list.findIndex((other) => other.landmark === landmark);
    return first === at
      ? []
      : [
          fault(
            'duplicate-landmark',
            `${path}[${at}].landmark`,
            landmark,
            `${path}[${first}] says something of it already`,
            'Keep one of the two.',
          ),
        ];
  });

const unlikelyBody = (
  { group }: Somebody,
  { landmark, mm }: BodyMeasure,
  path: string,
): Fault[] => {
  const range = bodyRange(group, landmark);
  if (range === null || (mm >= range[0] && mm <= range[1])) return [];
  return [
    fault(
      'doubt-body',
      path,
      mm,
      `"${landmark}" of ${lengthText(mm)} is not to be expected of a ${group}`,
      `Check the number and its unit; ${lengthText(range[0])} to ${lengthText(range[1])} is usual.`,
    ),
  ];
};

/** Names of body measurements that the garment's landmarks or the published tables know. */
const BODY_IDS = new Set([
  ...LANDMARKS.flatMap(({ body }) => (body === null ? [] : [body])),
  ...BODY_TABLES.flatMap(({ rows }) => rows.map(({ body }) => body)),
]);

const strangeBody = (record: GarmentRecord, { landmark }: BodyMeasure, path: string): Fault[] => {
  const custom = measurementAt(record, landmark) !== undefined && findLandmark(landmark) === null;
  if (BODY_IDS.has(landmark) || custom) return [];
  const meant = bodyIdOf(landmark) ?? nearest(landmark, BODY_IDS);
  return [
    fault(
      'doubt-body-unused',
      path,
      landmark,
      'nothing is compared with a body measurement of this name',
      meant === null || meant === landmark
        ? `Use one of ${[...BODY_IDS].join(', ')}.`
        : `Use "${meant}" if that is meant.`,
    ),
  ];
};

const wantedFaults = (record: GarmentRecord, wanted: WantedFit, path: string): Fault[] => [
  ...(wanted.minMm > wanted.maxMm
    ? [
        fault(
          'range-upside-down',
          `${path}.minMm`,
          wanted.minMm,
          `the least, ${lengthText(wanted.minMm)}, is more than the most, ${lengthText(wanted.maxMm)}`,
          'Swap the two.',
        ),
      ]
    : []),
  ...(measurementAt(record, wanted.landmark) === undefined
    ? [
        fault(
          'doubt-wanted-unmeasured',
          `${path}.landmark`,
          wanted.landmark,
          'the pattern has no measurement there, so its fit cannot be told',
          'Add the measurement to the pattern, or leave the wish out.',
        ),
      ]
    : []),
  ...(wanted.kind === 'ease' && bodyAt(record, wanted.landmark) === null
    ? [noBody(wanted, path)]
    : []),
];

const noBody = ({ landmark }: WantedFit, path: string): Fault => {
  const body = bodyIdOf(landmark);
  return fault(
    'doubt-ease-without-body',
    `${path}.landmark`,
    landmark,
    'ease is over a body, and no body measurement is given there',
    body === null
      ? 'No body measurement belongs there; want a finished measurement instead.'
      : `Measure the body's "${body}", or want a finished measurement instead.`,
  );
};
