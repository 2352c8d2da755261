import type { Fault } from '@dryflat/engine/units';
import type { GarmentRecord } from '../schema/index.ts';
import { boundsFaults } from './bounds-faults.ts';
import { isDoubt, isQuestion, mustBeMended } from './doubt.ts';
import { dryingFaults } from './drying-faults.ts';
import { evidenceFaults } from './evidence-faults.ts';
import { garmentFaults } from './garment-faults.ts';
import { gaugeFaults } from './gauge-faults.ts';
import { gradingFaults } from './grading-faults.ts';
import { idFaults } from './id-faults.ts';
import { matFaults } from './mat-faults.ts';
import { patternFaults } from './pattern-faults.ts';
import { photoFaults } from './photo-faults.ts';
import { referenceFaults } from './reference-faults.ts';
import { spanFaults } from './span-faults.ts';
import { wearerFaults } from './wearer-faults.ts';
import { workFaults } from './work-faults.ts';
import { yarnFaults } from './yarn-faults.ts';

export { isDoubt, isQuestion, mustBeMended };

const CHECKS: readonly ((record: GarmentRecord) => Fault[])[] = [
  idFaults,
  referenceFaults,
  wearerFaults,
  patternFaults,
  gaugeFaults,
  gradingFaults,
  spanFaults,
  yarnFaults,
  evidenceFaults,
  garmentFaults,
  matFaults,
  dryingFaults,
  workFaults,
];

/**
 * What a record of the right shape says that cannot be, is unlikely, or can be taken in two ways: all
 * of it, not just the first. Doubts (`isDoubt`) may be left as they are, questions (`isQuestion`) leave
 * out what hangs on them; all other faults have to be mended before a forecast.
 */
export const faultsOf = (record: GarmentRecord): Fault[] => [
  ...faultsBesidePhotos(record),
  ...photoFaults(record),
];

/** The same without a look into its pictures, for which a page or a calculation of other things would wait. */
export const faultsBesidePhotos = (record: GarmentRecord): Fault[] => {
  const beyond = boundsFaults(record);
  const fields = new Set(beyond.map(({ field }) => field));
  // A doubt about a number that is beyond its bounds says nothing more.
  const others = CHECKS.flatMap((check) => check(record)).filter(
    (fault) => !(isDoubt(fault) && fields.has(fault.field)),
  );
  return [...beyond, ...others];
};
