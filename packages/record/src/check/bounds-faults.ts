import type { Fault } from '@dryflat/engine/units';
import type { GarmentRecord } from '../schema/index.ts';
import { BOUNDS, type Bounds, LONGEST } from './bounds.ts';
import { fault } from './doubt.ts';

/** Numbers that no knitting, scale or clock gives, and lists that never end. */
export const boundsFaults = (record: GarmentRecord): Fault[] => faultsBelow(record, '', '');

/** `at` is the path in this record, `kind` the same with `[]` for every place in a list. */
const faultsBelow = (value: unknown, at: string, kind: string): Fault[] => {
  if (typeof value === 'number') return numberFaults(value, at, BOUNDS.get(kind));
  if (Array.isArray(value))
    return [
      ...lengthFaults(value.length, at, LONGEST.get(kind)),
      ...value.flatMap((each, k) => faultsBelow(each, `${at}[${k}]`, `${kind}[]`)),
    ];
  if (typeof value !== 'object' || value === null) return [];
  const below = (path: string, key: string): string => (path === '' ? key : `${path}.${key}`);
  return Object.entries(value).flatMap(([key, each]) =>
    faultsBelow(each, below(at, key), below(kind, key)),
  );
};

const numberFaults = (value: number, field: string, bounds: Bounds | undefined): Fault[] => {
  if (bounds === undefined) return [];
  const { least, most, unit, orZero } = bounds;
  if ((value >= least && value <= most) || (orZero && value === 0)) return [];
  const range = `from ${least} to ${most}${unit}${orZero ? ', or 0' : ''}`;
  return [
    fault(
      'out-of-bounds',
      field,
      value,
      'nothing in knitting comes to this',
      `Check the number and its unit; it goes ${range}.`,
    ),
  ];
};

const lengthFaults = (length: number, field: string, most: number | undefined): Fault[] =>
  most === undefined || length <= most
    ? []
    : [
        fault(
          'list-too-long',
          field,
          `${length} entries`,
          `the list has more than ${most} entries`,
          `Keep the ${most} that matter most.`,
        ),
      ];
