import type { Fault } from '@dryflat/engine/units';
import type { GarmentRecord, PatternMeasurement } from '../schema/index.ts';
import { lengthText } from '../text/lengths.ts';
import { fault } from './doubt.ts';

/** One size is never half as large again as its neighbour in the table. Common practice, no source. */
const MOST_STEP = 1.5;

/** Doubts about values that jump from one size to the next: a digit lost, or a row in another unit. */
export const gradingFaults = ({ pattern }: GarmentRecord): Fault[] =>
  pattern.measurements.flatMap((row, at) => jump(row, `pattern.measurements[${at}].values`));

/** The first jump of a row; what follows is measured against a number that may be wrong itself. */
const jump = ({ values }: PatternMeasurement, path: string): Fault[] => {
  const given = values.flatMap((value, size) => (value === null ? [] : [{ value, size }]));
  return given
    .flatMap(({ value, size }, at) => {
      const before = given[at - 1]?.value ?? value;
      const ratio = Math.max(value / before, before / value);
      return ratio < MOST_STEP ? [] : [jumped(`${path}[${size}]`, value, before)];
    })
    .slice(0, 1);
};

const jumped = (field: string, value: number, before: number): Fault =>
  fault(
    'doubt-size-step',
    field,
    value,
    `it jumps from ${lengthText(before)} to ${lengthText(value)} between two sizes`,
    'Check both for a misprint or a slip of unit.',
  );
