import type { Fault } from '@dryflat/engine/units';
import { finishFaults } from '../pins/finish-faults.ts';
import { beyond, pinsIn, pinTotal } from '../pins/pin-counts.ts';
import { pinWords } from '../pins/pin-words.ts';
import type { GarmentRecord, MatTold, MatWork } from '../schema/index.ts';
import { lengthText } from '../text/lengths.ts';
import { fault } from './doubt.ts';

/** A tape distance that is so many times the planned one, or as small a part of it, is a slip of unit. */
const TAPE_TIMES = 2;
/** Shorter distances than this go wrong by as much when a pin is moved on purpose. Assumption. */
const TAPE_LEAST_MM = 50;

/** Faults of the work on the mat, and of a garment that is finished while pins are not accounted for. */
export const matFaults = (record: GarmentRecord): Fault[] => [
  ...(record.onMat ?? []).flatMap((work, at) => workFaults(work, `onMat[${at}]`)),
  ...(record.finished === undefined ? [] : finishFaults(record)),
];

const workFaults = (work: MatWork, path: string): Fault[] => [
  ...shownFaults(work, path),
  ...work.told.flatMap((told, at) => toldFaults(work, told, `${path}.told[${at}]`)),
  ...orderFaults(work, path),
  ...outFaults(work, path),
];

const shownFaults = ({ at, steps }: MatWork, path: string): Fault[] =>
  at <= steps.length
    ? []
    : [
        fault(
          'step-not-there',
          `${path}.at`,
          at,
          `there are ${steps.length} steps`,
          `Write a number from 0 to ${steps.length}.`,
        ),
      ];

const toldFaults = ({ steps }: MatWork, told: MatTold, path: string): Fault[] => {
  const step = steps[told.step];
  if (step === undefined)
    return [
      fault(
        'step-not-there',
        `${path}.step`,
        told.step,
        `there are ${steps.length} steps, counted from 0`,
        'Write the ordinal of the step that the tape was held at.',
      ),
    ];
  return told.tapeMm.flatMap((mm, at) => tapeDoubt(mm, step.from[at]?.mm, `${path}.tapeMm[${at}]`));
};

const tapeDoubt = (mm: number | null, planned: number | undefined, path: string): Fault[] => {
  if (mm === null || planned === undefined) return [];
  const ratio = Math.max(mm / planned, planned / mm);
  if (ratio <= TAPE_TIMES || Math.abs(mm - planned) <= TAPE_LEAST_MM) return [];
  return [
    fault(
      'doubt-tape',
      path,
      mm,
      `the tape says ${lengthText(mm)} where the plan has ${lengthText(planned)}`,
      'Check the number, its unit, and which of the two distances it is.',
    ),
  ];
};

const orderFaults = ({ begun, pinned }: MatWork, path: string): Fault[] =>
  pinned === undefined || Date.parse(pinned) >= Date.parse(begun)
    ? []
    : [
        fault(
          'moments-out-of-order',
          `${path}.pinned`,
          pinned,
          `the last pin was in before the first: it was begun at ${begun}`,
          'Correct one of the two.',
        ),
      ];

const outFaults = (work: MatWork, path: string): Fault[] => {
  if (work.out === undefined) return [];
  const tooMany = beyond(work.out, pinsIn(work));
  return pinTotal(tooMany) === 0
    ? []
    : [
        fault(
          'pins-out-of-nowhere',
          `${path}.out`,
          pinWords(work.out),
          `more came out than the ${pinWords(pinsIn(work))} that went in: ${pinWords(tooMany)} too many`,
          'Count again, or enter pins that went in beside the plan as extra.',
        ),
      ];
};
