import {
  isPlain,
  type Loss,
  lostOf,
  type MigrationStep,
  type PlainRecord,
  without,
} from './step.ts';

const PINNED = { pinned: 'version 3 cannot say whether it dried on pins' };

const PIECE = { piece: 'version 3 cannot say of which piece it is a part' };

const GROUP = 'version 3 cannot say that nobody said who it is for';
const NO_ROWS = 'version 3 cannot hold a gauge without rows';

const isGroupOpen = (wearer: unknown): wearer is PlainRecord =>
  isPlain(wearer) && wearer.group === 'not-said';

const lacksRows = (pattern: unknown): pattern is PlainRecord & { gauge: PlainRecord } =>
  isPlain(pattern) && isPlain(pattern.gauge) && pattern.gauge.rows === undefined;

const readingsOf = (specimen: unknown): readonly unknown[] =>
  isPlain(specimen) && Array.isArray(specimen.readings) ? specimen.readings : [];

const lost = ({ evidence, wearer, pattern }: PlainRecord): Loss[] => [
  ...(isGroupOpen(wearer) ? [{ field: 'wearer.group', given: 'not-said', problem: GROUP }] : []),
  ...(lacksRows(pattern)
    ? [{ field: 'pattern.gauge', given: JSON.stringify(pattern.gauge), problem: NO_ROWS }]
    : []),
  ...(Array.isArray(evidence) ? evidence : []).flatMap((specimen, at) => [
    ...lostOf(specimen, PIECE, `evidence[${at}].`),
    ...readingsOf(specimen).flatMap((reading, index) =>
      lostOf(reading, PINNED, `evidence[${at}].readings[${index}].`),
    ),
  ]),
];

const older = (specimen: unknown): unknown => {
  if (!isPlain(specimen)) return specimen;
  const { readings } = specimen;
  return {
    ...without(specimen, PIECE),
    ...(Array.isArray(readings) && {
      readings: readings.map((each: unknown) => (isPlain(each) ? without(each, PINNED) : each)),
    }),
  };
};

const olderParts = ({ evidence, wearer, pattern }: PlainRecord): PlainRecord => ({
  ...(isGroupOpen(wearer) ? { wearer: { ...wearer, group: 'nobody' } } : {}),
  ...(lacksRows(pattern) ? { pattern: without(pattern, { gauge: NO_ROWS }) } : {}),
  ...(Array.isArray(evidence) ? { evidence: evidence.map(older) } : {}),
});

/**
 * Version 4 says of a reading whether it dried on pins, of a part its piece, that nobody said who it is for, and
 * the stitches of a gauge without its rows.
 */
export const threeToFour: MigrationStep = {
  from: 3,
  to: 4,
  up: (record) => ({ ...record, version: 4 }),
  down: (record) => ({
    plain: { ...record, version: 3, ...olderParts(record) },
    lost: lost(record),
  }),
};
