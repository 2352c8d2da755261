import type { AfterMat, FabricOnMat, MeanSd, PieceToBlock } from '@dryflat/engine/blocking';
import { fabricMaterial, growthPrior, keptShare, safeStretchOf } from '@dryflat/engine/fabric';
import type { Forecast, ForecastQuestion, Range } from '@dryflat/engine/garment';
import { unitMean, unitSd } from '@dryflat/engine/stats';

type Direction = 'width' | 'length';
/** Standard deviations between the 5th and the 95th percentile of a normal distribution. */
const SPREAD = 2 * 1.6449;

/** How the fabric in that stitch answers to a pull while it is wet. */
export const fabricOnMat = (
  question: ForecastQuestion,
  { stitch, row }: Forecast['gauge'],
  worked: ForecastQuestion['stitch'],
): FabricOnMat => {
  const { constants, doubt } = fabricMaterial({ ...question, stitch: worked }, 'wet');
  return {
    constants,
    doubt,
    pitch: { stitch: stitch.wet.p50Mm, row: row.wet.p50Mm },
    safe: safeStretchOf({ ...question, stitch: worked }),
  };
};

const logSd = ({ p05Mm, p95Mm }: Range): number => Math.log(p95Mm / p05Mm) / SPREAD;

/** How unsure the wet size is before any pin. */
export const restDoubt = ({ stitch, row }: Forecast['gauge']): PieceToBlock['restLogSd'] => ({
  width: logSd(stitch.wet),
  length: logSd(row.wet),
});

/** What stays of a stretch, and what drying and a later soak do to the size at rest. */
export const afterMat = (question: ForecastQuestion): AfterMat => {
  const { density } = keptShare(question, question.specimens);
  const { wet, rewashed } = growthPrior(question);
  const per = (of: (d: Direction) => MeanSd) => ({ width: of('width'), length: of('length') });
  return {
    kept: { mean: unitMean(density), sd: unitSd(density) },
    driedOverWet: per((d) => ({ mean: -wet[d].mean, sd: wet[d].sd })),
    rewashedOverWet: per((d) => ({
      mean: rewashed[d].mean - wet[d].mean,
      sd: Math.hypot(rewashed[d].sd, wet[d].sd),
    })),
  };
};
