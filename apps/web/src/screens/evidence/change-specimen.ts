import type { GarmentRecord, Reading, Specimen } from '@dryflat/record';
import { useGarment } from '../../store/index.ts';

/** An empty specimen, worked in the garment's stitch on its needle, not washed yet. */
export const newSpecimen = (
  record: GarmentRecord,
  id: string,
  kind: Specimen['kind'],
  name: string,
): Specimen => ({
  id,
  name,
  kind,
  stitch: record.stitch,
  ...(record.needleMm !== undefined && { needleMm: record.needleMm }),
  workedAsGarment: true,
  washed: kind === 'past-garment' ? 'as-garment' : 'not',
  readings: [],
});

/** Changes of one specimen, by its id. */
export const useSpecimen = (id: string) => {
  const { record, change, readOnly, undo } = useGarment();
  const edit = (recipe: (specimen: Specimen) => void): void =>
    change((draft) => {
      const specimen = draft.evidence.find((each) => each.id === id);
      if (specimen) recipe(specimen);
    });
  return {
    specimen: record.evidence.find((each) => each.id === id),
    readOnly,
    undo,
    edit,
    add: (...readings: readonly Reading[]): void =>
      edit((specimen) => void specimen.readings.push(...readings)),
    remove: (ids: readonly string[]): void =>
      edit((specimen) => {
        specimen.readings = specimen.readings.filter((each) => !ids.includes(each.id));
      }),
    editReading: (readingId: string, recipe: (reading: Reading) => void): void =>
      edit((specimen) => {
        const reading = specimen.readings.find((each) => each.id === readingId);
        if (reading) recipe(reading);
      }),
  };
};

export type SpecimenEdits = ReturnType<typeof useSpecimen>;
