import type { WeighedFabric } from '@dryflat/engine/fabric';
import type { CountReading, ExtentReading, Reading, Specimen } from '../schema/index.ts';

type Direction = Reading['direction'];

/** The longest since the needles first: what is read later is nearer to the swatch as it was weighed. */
const STATES = ['rewashed', 'dried', 'wet', 'asKnit'] as const;

/** An extent may differ by this share from the size written down and still be the whole swatch. */
const WHOLE = 0.15;

const isFlat = (reading: Reading): reading is CountReading | ExtentReading =>
  (reading.kind === 'count' || reading.kind === 'extent') && reading.read === 'flat';

/** Stitches or rows over the whole swatch, as they were counted one by one; null where they were not. */
const counted = ({ readings }: Specimen, direction: Direction, mm: number): number | null => {
  const whole = readings.find(
    (each): each is ExtentReading =>
      each.kind === 'extent' &&
      each.direction === direction &&
      each.count !== undefined &&
      Math.abs(each.mm / mm - 1) <= WHOLE,
  );
  return whole?.count ?? null;
};

const perMm = (reading: CountReading | ExtentReading): number[] => {
  if (reading.kind === 'count') return [reading.count / reading.overMm];
  return reading.count === undefined ? [] : [reading.count / reading.mm];
};

/** Stitches or rows over the swatch's size by its gauge, in the latest state that has one; null without. */
const byGauge = ({ readings }: Specimen, direction: Direction, mm: number): number | null => {
  const flat = readings.filter(isFlat).filter((each) => each.direction === direction);
  const gauges = STATES.map((state) =>
    flat.filter((each) => each.state === state).flatMap(perMm),
  ).find((list) => list.length > 0);
  if (gauges === undefined) return null;
  return (mm * gauges.reduce((sum, each) => sum + each, 0)) / gauges.length;
};

/**
 * The swatches that were weighed, with the stitches that they have: counted where both whole extents
 * say so, else by size and gauge. Shaped pieces are left out, for their stitches are no rectangle; so
 * are swatches of which size or gauge is not known.
 */
export const weighedSwatches = (evidence: readonly Specimen[]): WeighedFabric[] =>
  evidence.flatMap((specimen) => {
    const { id, name, kind, stitch, massG, widthMm, heightMm } = specimen;
    if (kind !== 'swatch' || massG === undefined) return [];
    if (widthMm === undefined || heightMm === undefined) return [];
    const exact = [
      counted(specimen, 'width', widthMm),
      counted(specimen, 'length', heightMm),
    ] as const;
    const across = exact[0] ?? byGauge(specimen, 'width', widthMm);
    const up = exact[1] ?? byGauge(specimen, 'length', heightMm);
    if (across === null || up === null) return [];
    const counts = exact.includes(null) ? 'from-extents' : 'counted';
    return [{ id, name, stitch, massG, across, up, counts } as const];
  });
