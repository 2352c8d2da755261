import type { ForecastQuestion } from '@dryflat/engine/garment';
import { fail, grams, mm, ok, type Result } from '@dryflat/engine/units';
import type { GarmentRecord, Pattern } from '../schema/index.ts';
import { measuredOnGarment, measurementsWanted, pinnedTo } from './measurements.ts';
import { isSizeOpen, notReady, sizeQuestion } from './not-ready.ts';
import { specimenValues } from './specimen-values.ts';
import { fitWanted } from './wanted-fit.ts';
import { yarnPart } from './yarn-blend.ts';

/**
 * The engine's plain question for a record: girths all the way around, unknown things null. Fails
 * with everything that is missing or wrong, and where it is open which size is knit. Doubts do not stop
 * it, and an open question leaves out what hangs on it.
 */
export const askForecast = (record: GarmentRecord): Result<ForecastQuestion> => {
  const faults = [...notReady(record), ...sizeQuestion(record.pattern)];
  return faults.length > 0 ? fail(...faults) : ok(question(record));
};

/**
 * The same question once for each size, in their order, as if it were begun afresh: what was measured of
 * the garment is of a size that nobody has named. Null where the size is known or needs no choosing.
 */
export const askEachSize = (record: GarmentRecord): Result<readonly ForecastQuestion[]> | null => {
  if (!isSizeOpen(record.pattern)) return null;
  const faults = notReady(record);
  if (faults.length > 0) return fail(...faults);
  const asked = question(record);
  const measurements = asked.measurements.map(({ knit: _, ...each }) => each);
  return ok(asked.sizes.map((_, chosen) => ({ ...asked, measurements, chosen, measured: [] })));
};

const question = (record: GarmentRecord): ForecastQuestion => ({
  kind: record.kind,
  stitch: record.stitch,
  ...yarnPart(record.yarns),
  yarns: record.yarns.length,
  mass: record.massG === undefined ? null : grams(record.massG),
  needle: length(record.needleMm),
  patternNeedle: length(record.pattern.needleMm),
  patternGauge: gaugeOf(record.pattern),
  sizes: record.pattern.sizes,
  chosen: chosenIndex(record.pattern),
  measurements: measurementsWanted(record),
  specimens: record.evidence.map(specimenValues),
  measured: measuredOnGarment(record),
  wanted: fitWanted(record),
  drying: record.plan.drying,
  pinTo: pinnedTo(record),
  judgeAt: record.plan.judgeAt,
  washing: record.plan.washing,
});

const length = (value: number | undefined) => (value === undefined ? null : mm(value));

/** A pattern of one size needs no choosing. */
const chosenIndex = ({ sizes, chosen }: Pattern): number =>
  chosen === undefined ? 0 : sizes.indexOf(chosen);

const gaugeOf = ({ gauge }: Pattern): ForecastQuestion['patternGauge'] =>
  gauge === undefined
    ? null
    : {
        stitch: mm(gauge.overMm / gauge.stitches),
        row: gauge.rows === undefined ? null : mm(gauge.overMm / gauge.rows),
        state: gauge.state,
      };
