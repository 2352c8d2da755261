import { useForecast } from '../../worker/index.ts';
import { Told } from '../result/told.tsx';

/** What the forecast says of readings of one specimen: why they change nothing, and what would make them count. */
export const ReadingNotices = ({
  specimen,
  readings,
}: {
  specimen: string;
  readings: readonly string[];
}) => {
  const { forecast, sizes } = useForecast();
  // The fabric is the same whatever the size.
  const notices = (forecast ?? sizes?.sizes[0])?.notices ?? [];
  const about = new Set(readings.map((id) => `evidence:${specimen}:${id}`));
  return (
    <Told
      label="What this reading tells"
      notices={notices.filter((each) => each.about !== undefined && about.has(each.about))}
    />
  );
};
