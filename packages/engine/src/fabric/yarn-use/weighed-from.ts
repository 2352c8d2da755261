import type { CountReading, Direction, ExtentReading, Specimen } from '../specimen.ts';
import type { WeighedFabric } from './types.ts';

const along = (specimen: Specimen, direction: Direction) =>
  specimen.readings.filter(
    (reading): reading is CountReading | ExtentReading =>
      (reading.kind === 'count' || reading.kind === 'extent') &&
      reading.direction === direction &&
      reading.read === 'flat',
  );

const counted = (specimen: Specimen, direction: Direction): number | null =>
  along(specimen, direction)
    .map((reading) => (reading.kind === 'extent' ? reading.count : null))
    .find((count) => count !== null) ?? null;

/** The extent of the specimen in its direction, as said of the whole or read by tape. */
const extentOf = (specimen: Specimen, direction: Direction): number | null => {
  const read = along(specimen, direction).find((reading) => reading.kind === 'extent');
  const whole = direction === 'width' ? specimen.width : specimen.height;
  return whole ?? (read?.kind === 'extent' ? read.extent : null);
};

/** Extent times the mean of its counts per millimetre. */
const fromExtents = (specimen: Specimen, direction: Direction): number | null => {
  const extent = extentOf(specimen, direction);
  const densities = along(specimen, direction).flatMap((reading) =>
    reading.kind === 'count' ? [reading.count / reading.over] : [],
  );
  if (extent === null || densities.length === 0) return null;
  return (extent * densities.reduce((sum, each) => sum + each, 0)) / densities.length;
};

/**
 * A weighed specimen with its stitches: exact counts of its extents where both were counted, else
 * its extents by tape times its gauge. Null where neither is known. Stretched readings tell nothing.
 */
export const weighedFrom = (specimen: Specimen, massG: number): WeighedFabric | null => {
  const { id, name, stitch } = specimen;
  const exact = [counted(specimen, 'width'), counted(specimen, 'length')] as const;
  const across = exact[0] ?? fromExtents(specimen, 'width');
  const up = exact[1] ?? fromExtents(specimen, 'length');
  if (across === null || up === null) return null;
  const counts = exact.every((each) => each !== null) ? 'counted' : 'from-extents';
  return { id, name, stitch, massG, across, up, counts };
};
