import {
  isPlain,
  lostOf,
  type MigrationStep,
  type Parts,
  type PlainRecord,
  without,
} from './step.ts';

const cannot = (what: string): string => `version 2 cannot hold ${what}`;

/** Parts of the record that version 2 has no place for. */
const NEW_PARTS: Readonly<Record<string, string>> = {
  onMat: cannot('the work on the mat'),
  dryings: cannot('how it dried'),
  photos: cannot('photos'),
  finished: cannot('when it was finished'),
  people: cannot('other people'),
  pace: cannot('how fast she knits and when'),
  progress: cannot('how much is knit'),
  left: cannot('what is left of a yarn'),
  instructions: cannot('the written counts of a piece'),
  report: cannot('what the report says'),
};
const WEIGHTS = { weights: cannot('what counts when routes are put in order') };
const REPEAT = { repeat: cannot('the repeat of the stitch pattern') };
const MASS = { massG: cannot('the mass of a specimen') };

/** Version 3 has places for what is done after the last stitch, and for what bears on what to do next. */
export const twoToThree: MigrationStep = {
  from: 2,
  to: 3,
  up: (record) => ({ ...record, version: 3 }),
  down: (record) => ({
    plain: { ...without(record, NEW_PARTS), version: 2, ...olderParts(record) },
    lost: [
      ...lostOf(record.plan, WEIGHTS, 'plan.'),
      ...lostOf(record.pattern, REPEAT, 'pattern.'),
      ...(Array.isArray(record.evidence) ? record.evidence : []).flatMap((each, at) =>
        lostOf(each, MASS, `evidence[${at}].`),
      ),
      ...lostOf(record, NEW_PARTS, ''),
    ],
  }),
};

const olderPart = (value: unknown, parts: Parts): unknown =>
  isPlain(value) ? without(value, parts) : value;

const olderParts = ({ plan, pattern, evidence }: PlainRecord): PlainRecord => ({
  ...(isPlain(plan) ? { plan: without(plan, WEIGHTS) } : {}),
  ...(isPlain(pattern) ? { pattern: without(pattern, REPEAT) } : {}),
  ...(Array.isArray(evidence) ? { evidence: evidence.map((each) => olderPart(each, MASS)) } : {}),
});
