import {
  findLandmark,
  GARMENT_KINDS,
  type GarmentKind,
  LANDMARKS_OF,
} from '@dryflat/engine/garment';
import {
  emptyRecord,
  type PatternMeasurement,
  readRecord,
  spareId,
  writeRecord,
} from '@dryflat/record';
import { refused } from '../faults.ts';
import { oneOf } from '../options.ts';
import type { Ending, Surroundings } from '../surroundings.ts';
import { give, type OutputFlags } from './give.ts';

export interface NewFlags extends OutputFlags {
  readonly kind: string;
  readonly name: string;
}

/** A row of the pattern's table for each usual landmark, without a number in it. */
const rowsFor = (kind: GarmentKind): PatternMeasurement[] =>
  LANDMARKS_OF[kind].flatMap((id) => {
    const landmark = findLandmark(id);
    if (landmark === null) return [];
    return [{ id, name: landmark.name.us, landmark: id, worked: landmark.worked, values: [] }];
  });

/** `dryflat new`: a record to fill in, with the kind's usual measurements and nothing guessed. */
export const newCommand = async (flags: NewFlags, surroundings: Surroundings): Promise<Ending> => {
  const kind = oneOf('--kind', flags.kind, GARMENT_KINDS);
  if (!kind.ok) return refused('dryflat new', kind.faults);
  const id = spareId(surroundings.random, { prefix: 'garment-' });
  const record = emptyRecord({ id, name: flags.name, kind: kind.value });
  record.pattern.measurements = rowsFor(kind.value);
  const text = writeRecord(record);
  // A name that no record may have is refused here, not when the file is opened next.
  const read = readRecord(text);
  if (!read.ok) return refused('dryflat new', read.faults);
  return give(text, flags, surroundings);
};
