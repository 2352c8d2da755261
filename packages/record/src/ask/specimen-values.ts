import type {
  CountReading,
  Reading as EngineReading,
  Specimen as EngineSpecimen,
} from '@dryflat/engine/fabric';
import { grams, mm } from '@dryflat/engine/units';
import { mayBePinned } from '../check/evidence-faults.ts';
import type { Reading, Specimen } from '../schema/index.ts';

const length = (value: number | undefined) => (value === undefined ? null : mm(value));

/** A specimen of the record as the engine takes it: branded lengths, null for what is not known. */
export const specimenValues = (specimen: Specimen): EngineSpecimen => ({
  id: specimen.id,
  name: specimen.name,
  kind: specimen.kind,
  stitch: specimen.stitch,
  workedAsGarment: specimen.workedAsGarment,
  ...(specimen.needleMm !== undefined && { needle: mm(specimen.needleMm) }),
  washed: specimen.washed,
  width: length(specimen.widthMm),
  height: length(specimen.heightMm),
  readings: specimen.readings.map((reading) => readingValues(specimen, reading)),
});

const pinsOf = (specimen: Specimen, reading: Reading): Pick<CountReading, 'pinned'> => {
  if (mayBePinned(specimen, reading)) return { pinned: 'perhaps' };
  return 'pinned' in reading && reading.pinned ? { pinned: true } : {};
};

const readingValues = (specimen: Specimen, reading: Reading): EngineReading => {
  const { id, direction } = reading;
  const place = 'place' in reading ? (reading.place ?? null) : null;
  const pins = pinsOf(specimen, reading);
  switch (reading.kind) {
    case 'count': {
      const { kind, count, state, read, overMm } = reading;
      return { kind, id, direction, count, over: mm(overMm), state, ...pins, read, place };
    }
    case 'extent': {
      const { kind, state, read } = reading;
      return {
        kind,
        id,
        direction,
        extent: mm(reading.mm),
        count: reading.count ?? null,
        state,
        ...pins,
        read,
        place,
      };
    }
    case 'hang':
      return {
        kind: 'hang',
        id,
        direction,
        mass: grams(reading.massG),
        clipped: mm(reading.clippedMm),
        before: mm(reading.beforeMm),
        after: mm(reading.afterMm),
        state: reading.state,
      };
    case 'set':
      return {
        kind: 'set',
        id,
        direction,
        rest: mm(reading.restMm),
        pinned: mm(reading.pinnedMm),
        dried: mm(reading.driedMm),
      };
  }
};
