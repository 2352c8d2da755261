import type { Fault } from '@dryflat/engine/units';
import type { GarmentRecord, HangReading, Reading, SetReading, Specimen } from '../schema/index.ts';
import { lengthText } from '../text/lengths.ts';
import { fault } from './doubt.ts';
import { pitchFaults } from './gauge-faults.ts';

/** A specimen's size is written down once, and it may have grown since. */
const GROWN = 1.25;

/** Faults of what was measured: impossible states, impossible counts, lengths that cannot be. */
export const evidenceFaults = (record: GarmentRecord): Fault[] =>
  record.evidence.flatMap((specimen, at) =>
    specimen.readings.flatMap((reading, index) =>
      readingFaults(specimen, reading, `evidence[${at}].readings[${index}]`),
    ),
  );

const readingFaults = (specimen: Specimen, reading: Reading, path: string): Fault[] => [
  ...stateFaults(specimen, reading, path),
  ...tooLong(specimen, reading, path),
  ...pinsFaults(specimen, reading, path),
  ...kindFaults(reading, path),
];

const kindFaults = (reading: Reading, path: string): Fault[] => {
  if (reading.kind === 'count') return counted(path, reading.count, reading.overMm);
  if (reading.kind === 'extent')
    return reading.count === undefined ? [] : counted(path, reading.count, reading.mm);
  return reading.kind === 'hang' ? hangFaults(reading, path) : setFaults(reading, path);
};

const counted = (path: string, count: number, overMm: number): Fault[] =>
  count < 1
    ? [
        fault(
          'count-under-one',
          `${path}.count`,
          count,
          'less than one stitch or row was counted',
          'Count over a longer stretch.',
        ),
      ]
    : pitchFaults(`${path}.count`, count, overMm);

const stateFaults = (specimen: Specimen, reading: Reading, path: string): Fault[] => {
  const state = reading.kind === 'set' ? 'dried' : reading.state;
  if (specimen.washed !== 'not' || state === 'asKnit') return [];
  return [
    fault(
      'state-never-reached',
      reading.kind === 'set' ? `${path}.kind` : `${path}.state`,
      reading.kind === 'set' ? 'set' : state,
      `"${specimen.name}" was never washed, so it was never ${state === 'wet' ? 'wet' : 'dried after a wash'}`,
      'Say how it was washed, or write "asKnit" for a reading before the first wash.',
    ),
  ];
};

/** Whether a reading may be of what dried on pins: its specimen was pinned that way, and nobody said. */
export const mayBePinned = (specimen: Specimen, reading: Reading): boolean =>
  (reading.kind === 'count' || reading.kind === 'extent') &&
  reading.state === 'dried' &&
  reading.pinned === undefined &&
  specimen.readings.some((each) => each.kind === 'set' && each.direction === reading.direction);

/** Pins are of a drying; where a specimen was pinned at all, each dried reading should say whether. */
const pinsFaults = (specimen: Specimen, reading: Reading, path: string): Fault[] => {
  if (reading.kind !== 'count' && reading.kind !== 'extent') return [];
  const { pinned, state } = reading;
  if (pinned && state !== 'dried')
    return [
      fault(
        'pinned-not-dried',
        `${path}.pinned`,
        'true',
        'only what was dried can have dried on pins',
        'Give "dried" as its state, or say nothing of pins.',
      ),
    ];
  if (!mayBePinned(specimen, reading)) return [];
  return [
    fault(
      'question-pinned',
      `${path}.pinned`,
      null,
      `"${specimen.name}" was pinned, and nothing says whether this was read of it dried so or laid flat; it may be either, and counts for little until you do`,
      'Say whether it dried on pins or was laid flat since.',
    ),
  ];
};

const tooLong = (specimen: Specimen, reading: Reading, path: string): Fault[] => {
  if (reading.kind !== 'count' || reading.read === 'stretched') return [];
  const extent = reading.direction === 'width' ? specimen.widthMm : specimen.heightMm;
  if (extent === undefined || reading.overMm <= extent * GROWN) return [];
  return [
    fault(
      'doubt-longer-than-specimen',
      `${path}.overMm`,
      reading.overMm,
      `it was counted over ${lengthText(reading.overMm)}, but "${specimen.name}" is only ${lengthText(extent)} there`,
      'Check both lengths and the direction.',
    ),
  ];
};

const hangFaults = (reading: HangReading, path: string): Fault[] =>
  reading.afterMm >= reading.beforeMm
    ? []
    : [
        fault(
          'doubt-shorter-under-load',
          `${path}.afterMm`,
          reading.afterMm,
          `with a weight on it went from ${lengthText(reading.beforeMm)} to ${lengthText(reading.afterMm)}: nothing gets shorter so`,
          'Check whether the two are swapped.',
        ),
      ];

const setFaults = (reading: SetReading, path: string): Fault[] => [
  ...(reading.pinnedMm < reading.restMm
    ? [
        fault(
          'doubt-pinned-shorter',
          `${path}.pinnedMm`,
          reading.pinnedMm,
          `it was pinned to ${lengthText(reading.pinnedMm)}, shorter than its ${lengthText(reading.restMm)} at rest`,
          'Check whether the two are swapped.',
        ),
      ]
    : []),
  ...(reading.driedMm > reading.pinnedMm
    ? [
        fault(
          'doubt-dried-longer',
          `${path}.driedMm`,
          reading.driedMm,
          `it dried to ${lengthText(reading.driedMm)}, longer than the ${lengthText(reading.pinnedMm)} that it was pinned to`,
          'Check whether the two are swapped.',
        ),
      ]
    : []),
];
