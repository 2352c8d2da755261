import type { ForecastQuestion } from '@dryflat/engine/garment';
import { fail, grams, mm, ok, type Result } from '@dryflat/engine/units';
import type { GarmentRecord, Pattern } from '../schema/index.ts';
import { measuredOnGarment, measurementsWanted, pinnedTo } from './measurements.ts';
import { notReady } from './not-ready.ts';
import { specimenValues } from './specimen-values.ts';
import { fitWanted } from './wanted-fit.ts';
import { yarnPart } from './yarn-blend.ts';

/**
 * The engine's plain question for a record: girths all the way around, unknown things null. Fails
 * with everything that is missing or wrong; doubts do not stop it.
 */
export const askForecast = (record: GarmentRecord): Result<ForecastQuestion> => {
  const faults = notReady(record);
  return faults.length > 0 ? fail(...faults) : ok(question(record));
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
        row: mm(gauge.overMm / gauge.rows),
        state: gauge.state,
      };
