import { NEEDLE_POWER } from '../../fabric/index.ts';
import { drawAll, type ForecastQuestion, learn, sizeRatio } from '../../garment/index.ts';
import { NEEDLES, nearestNeedle } from '../../textile/index.ts';
import type { Millimetres } from '../../units/index.ts';
import { clothOf, type Luck, luckOf, type Make, onOtherNeedle } from '../knit/luck.ts';
import { afresh, plannedMakes } from '../knit/makes.ts';
import { knitPieces } from '../knit/pieces.ts';
import { type Mat, type Work, workOf } from '../price/work.ts';
import type { RoutesQuestion } from '../types.ts';
import type { Bench } from './draft.ts';

/** How the plan handles it on the mat. */
export const plannedMat = ({ drying }: ForecastQuestion): Mat => (drying === 'pin' ? 'pin' : 'lay');

/** What is knit is ripped, all of it, and the garment is knit from the start. */
export const beginAgain = (bench: Bench, luck: Luck, makes: readonly Make[]): Work =>
  workOf(knitPieces(bench.forecast.kind, luck, makes), bench.question.progress, {
    stitch: bench.forecast.stitch,
    mat: plannedMat(bench.forecast),
    sewn: false,
    now: bench.pieces,
    stays: () => 0,
  });

/**
 * Makes of another size of the pattern begun afresh: its stitches, and the lengths of the same size or of
 * another. Null where the pattern leaves out a measurement of it that is judged.
 */
export const sizeMakes = (
  question: ForecastQuestion,
  luck: Luck,
  judged: readonly number[],
  stitchesOf: number,
  lengthsOf: number,
): Make[] | null => {
  const ratios = luck.known.model.measurements.map((measurement) =>
    sizeRatio(
      question,
      { measurement },
      measurement.wanted.direction === 'width' ? stitchesOf : lengthsOf,
    ),
  );
  if (judged.some((at) => ratios[at] === null)) return null;
  return afresh(plannedMakes(question, luck), (at) => ratios[at] ?? 1);
};

/** One needle size where no diameter is known changes the pitch by about this (log). Common practice, no source. */
const NEEDLE_STEP = 0.035;

/** The needle one size away; null where the garment's is not known, or the table ends. */
export const nextNeedle = (needle: Millimetres | null, way: 1 | -1): Millimetres | null => {
  if (needle === null) return null;
  const at = NEEDLES.indexOf(nearestNeedle(needle));
  return NEEDLES[at + way]?.size ?? null;
};

export interface NeedleLuck {
  readonly luck: Luck;
  readonly from: 'evidence' | 'model';
}

/** Specimens that were worked on a needle. */
const workedOn = (question: RoutesQuestion, needle: Millimetres) => {
  const own = new Set(
    question.specimenNeedles
      .filter((each) => Math.abs(each.needle - needle) < 0.01)
      .map(({ specimen }) => specimen),
  );
  return question.forecast.specimens.filter(({ id }) => own.has(id));
};

/**
 * The garment begun afresh on another needle: by what was measured on it, where anything was, else by the
 * gauge model from the garment's own. Without a diameter one step of `way` is taken.
 */
export const needleLuck = (
  question: RoutesQuestion,
  luck: Luck,
  needle: Millimetres | null,
  way: 1 | -1,
  seed: number,
): NeedleLuck => {
  const { forecast } = question;
  const specimens = needle === null ? [] : workedOn(question, needle);
  if (specimens.length === 0) {
    const from = forecast.needle;
    const shift =
      needle === null || from === null ? way * NEEDLE_STEP : NEEDLE_POWER * Math.log(needle / from);
    return { luck: luckOf(forecast, onOtherNeedle(luck, shift)), from: 'model' };
  }
  const asked = { ...forecast, needle, specimens, measured: [] };
  const known = learn(asked);
  const drawn = drawAll(known.model, known.post, known.kept, { n: luck.draws.n, seed });
  const draws = { ...drawn, body: luck.draws.body };
  return { luck: luckOf(asked, clothOf(known, draws, luck.normals)), from: 'evidence' };
};
