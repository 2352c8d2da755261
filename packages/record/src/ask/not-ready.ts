import type { Fault } from '@dryflat/engine/units';
import { fault, isDoubt } from '../check/doubt.ts';
import { faultsBesidePhotos } from '../check/faults-of.ts';
import type { GarmentRecord, Pattern } from '../schema/index.ts';

/** Parts of a record that a forecast does not read; faults there do not stop one. */
const NOT_ASKED =
  /^(forecasts|notes|onMat|dryings|photos|finished|people|pace|progress|left|instructions|report)\b/;

/** Why a forecast cannot be asked yet: what is still missing, then every fault that it would stumble on. */
export const notReady = (record: GarmentRecord): Fault[] => [
  ...missingParts(record.pattern),
  ...faultsBesidePhotos(record).filter((each) => !isDoubt(each) && !NOT_ASKED.test(each.field)),
];

const missingParts = ({ sizes, chosen, measurements }: Pattern): Fault[] => [
  ...(sizes.length > 0
    ? []
    : [
        fault(
          'no-sizes',
          'pattern.sizes',
          null,
          'the pattern has no sizes yet',
          "Enter the pattern's sizes; one is enough.",
        ),
      ]),
  ...(measurements.some(({ values }) => values.some((value) => value !== null))
    ? []
    : [
        fault(
          'no-measurements',
          'pattern.measurements',
          null,
          'the pattern gives no finished measurement yet',
          'Enter at least one measurement from its size table or schematic.',
        ),
      ]),
  ...(chosen !== undefined || sizes.length < 2
    ? []
    : [
        fault(
          'no-size-chosen',
          'pattern.chosen',
          null,
          'no size is chosen',
          `Choose one of ${sizes.map((size) => `"${size}"`).join(', ')}.`,
        ),
      ]),
];
