import {
  isPlain,
  type Loss,
  lostOf,
  type MigrationStep,
  type PlainRecord,
  without,
} from './step.ts';

const PINNED = { pinned: 'version 3 cannot say whether it dried on pins' };

const readingsOf = (specimen: unknown): readonly unknown[] =>
  isPlain(specimen) && Array.isArray(specimen.readings) ? specimen.readings : [];

const lost = ({ evidence }: PlainRecord): Loss[] =>
  (Array.isArray(evidence) ? evidence : []).flatMap((specimen, at) =>
    readingsOf(specimen).flatMap((reading, index) =>
      lostOf(reading, PINNED, `evidence[${at}].readings[${index}].`),
    ),
  );

const older = (specimen: unknown): unknown =>
  isPlain(specimen) && Array.isArray(specimen.readings)
    ? {
        ...specimen,
        readings: specimen.readings.map((each: unknown) =>
          isPlain(each) ? without(each, PINNED) : each,
        ),
      }
    : specimen;

/** Version 4 says of a reading whether it dried on pins. */
export const threeToFour: MigrationStep = {
  from: 3,
  to: 4,
  up: (record) => ({ ...record, version: 4 }),
  down: (record) => ({
    plain: {
      ...record,
      version: 3,
      ...(Array.isArray(record.evidence) ? { evidence: record.evidence.map(older) } : {}),
    },
    lost: lost(record),
  }),
};
