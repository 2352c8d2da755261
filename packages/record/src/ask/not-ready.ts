import type { Fault } from '@dryflat/engine/units';
import { fault, isQuestion, mustBeMended } from '../check/doubt.ts';
import { faultsBesidePhotos } from '../check/faults-of.ts';
import type { GarmentRecord, Pattern } from '../schema/index.ts';
import { awaitsSpan } from '../spans/girths.ts';

/** Parts of a record that a forecast does not read; faults there do not stop one. */
const NOT_ASKED =
  /^(forecasts|notes|onMat|dryings|photos|finished|people|pace|progress|left|instructions|report)\b/;

/**
 * Why a forecast cannot be asked yet, whatever the size: what is still missing, then every fault that it
 * would stumble on. Questions are among it only where nothing is left without what hangs on them.
 */
export const notReady = (record: GarmentRecord): Fault[] => {
  const found = faultsBesidePhotos(record);
  return [
    ...missingSizes(record.pattern),
    ...missingNumbers(record.pattern, found),
    ...found.filter((each) => mustBeMended(each) && !NOT_ASKED.test(each.field)),
  ];
};

const missingSizes = ({ sizes }: Pattern): Fault[] =>
  sizes.length > 0
    ? []
    : [
        fault(
          'no-sizes',
          'pattern.sizes',
          null,
          'the pattern has no sizes yet',
          "Enter the pattern's sizes; one is enough.",
        ),
      ];

/** Nothing where a row can be worked with; else the questions that keep all rows out, or what to enter. */
const missingNumbers = ({ measurements }: Pattern, found: readonly Fault[]): Fault[] => {
  const given = measurements.filter(({ values }) => values.some((value) => value !== null));
  if (given.some((row) => !awaitsSpan(row))) return [];
  if (given.length > 0)
    return found.filter((each) => isQuestion(each) && each.field.startsWith('pattern.'));
  return [
    fault(
      'no-measurements',
      'pattern.measurements',
      null,
      'the pattern gives no finished measurement yet',
      'Enter at least one measurement from its size table or schematic.',
    ),
  ];
};

/** Whether which of several sizes is knit has still to be said. */
export const isSizeOpen = ({ sizes, chosen }: Pattern): boolean =>
  chosen === undefined && sizes.length > 1;

/** The record as if a size of its pattern were the one that is knit. */
export const inSize = (record: GarmentRecord, size: string): GarmentRecord => ({
  ...record,
  pattern: { ...record.pattern, chosen: size },
});

/** The record once for each size, in their order, where it is open; else as it is. */
export const inEachSize = (record: GarmentRecord): readonly GarmentRecord[] =>
  isSizeOpen(record.pattern) ? record.pattern.sizes.map((size) => inSize(record, size)) : [record];

/** Which size it is, where the pattern has several and nobody has said. */
export const sizeQuestion = (pattern: Pattern): Fault[] =>
  isSizeOpen(pattern)
    ? [
        fault(
          'question-size',
          'pattern.chosen',
          null,
          'no size is chosen',
          `Choose one of ${pattern.sizes.map((size) => `"${size}"`).join(', ')}.`,
        ),
      ]
    : [];
