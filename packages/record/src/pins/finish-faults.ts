import type { Fault } from '@dryflat/engine/units';
import { fault } from '../check/doubt.ts';
import type { GarmentRecord } from '../schema/index.ts';
import { beyond, pinsMissing, pinTotal } from './pin-counts.ts';
import { pinWords } from './pin-words.ts';

const NOTHING_SAID = { straight: 0, tPins: 0, combs: 0, wires: 0 };

/**
 * What stands against calling the garment finished, whether it is marked so or not: pins that went in,
 * did not come out, and of which nobody said that they are missing (`finished.missing`); and pins said
 * to be missing that are not. Empty when every pin is accounted for.
 */
export const finishFaults = (record: GarmentRecord): Fault[] => {
  const missing = pinsMissing(record);
  const said = record.finished?.missing ?? NOTHING_SAID;
  const unaccounted = beyond(missing, said);
  const tooMany = beyond(said, missing);
  return [
    ...(pinTotal(unaccounted) === 0
      ? []
      : [
          fault(
            'pins-unaccounted',
            'finished.missing',
            pinWords(said),
            `${pinWords(unaccounted)} went in and did not come out`,
            'Look for them in the fabric and the mat, and count them out; what stays lost, say in finished.missing.',
          ),
        ]),
    ...(pinTotal(tooMany) === 0
      ? []
      : [
          fault(
            'pins-not-missing',
            'finished.missing',
            pinWords(said),
            `more are said to be missing than are: ${pinWords(tooMany)} too many`,
            'Count again what went in and what came out.',
          ),
        ]),
  ];
};
