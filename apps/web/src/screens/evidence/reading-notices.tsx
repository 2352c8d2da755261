import type { Specimen } from '@dryflat/record';
import { SectionFaults } from '../../kit/index.ts';
import { useGarment } from '../../store/index.ts';
import { useForecast } from '../../worker/index.ts';
import { Told } from '../result/told.tsx';

interface Of {
  specimen: Specimen;
  readings: readonly string[];
}

/** What cannot be of readings of one specimen, or is unlikely; of one field of each where it is named. */
export const ReadingFaults = ({ specimen, readings, field = '' }: Of & { field?: string }) => {
  const { record } = useGarment();
  const at = record.evidence.findIndex(({ id }) => id === specimen.id);
  return specimen.readings.map(
    ({ id }, index) =>
      readings.includes(id) && (
        <SectionFaults key={id} prefix={`evidence[${at}].readings[${index}]${field}`} />
      ),
  );
};

/** That, and what the forecast says: why readings change nothing, and what would make them count. */
export const ReadingNotices = ({ specimen, readings }: Of) => {
  const { forecast, sizes } = useForecast();
  // The fabric is the same whatever the size.
  const notices = (forecast ?? sizes?.sizes[0])?.notices ?? [];
  const about = new Set(readings.map((id) => `evidence:${specimen.id}:${id}`));
  return (
    <>
      <ReadingFaults specimen={specimen} readings={readings} />
      <Told notices={notices.filter((each) => each.about !== undefined && about.has(each.about))} />
    </>
  );
};
