import { type ForecastQuestion, type OnNeedle, onNeedle } from '../../garment/index.ts';
import type { Millimetres } from '../../units/index.ts';
import { clothOf, type Luck, luckOf, type Make, onOtherNeedle } from '../knit/luck.ts';
import { plannedMakes, times } from '../knit/makes.ts';
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
  const sized = luck.sized({ width: stitchesOf, length: lengthsOf });
  if (judged.some((at) => sized[at] === null)) return null;
  const chosen = plannedMakes(question, luck);
  return sized.map((each, at) => {
    if (each === null) return times(chosen[at]!, 1, 'afresh');
    const { factor, passage } = each;
    const { pinnedTo, pinLimit: limit, hang } = passage;
    return { from: 'afresh', factor, pinnedTo, limit, hang };
  });
};

export interface NeedleLuck {
  readonly luck: Luck;
  readonly from: OnNeedle['from'];
}

/** The garment begun afresh on another needle, on the same luck. Without a diameter one step of `way` is taken. */
export const needleLuck = (
  { forecast }: RoutesQuestion,
  luck: Luck,
  needle: Millimetres | null,
  way: 1 | -1,
  seed: number,
): NeedleLuck => {
  const on = onNeedle(forecast, luck.known, luck.draws, { needle, way, seed });
  const cloth =
    on.from === 'model' ? onOtherNeedle(luck, on) : clothOf(on.known, on.draws, luck.normals);
  return { luck: luckOf(on.question, cloth), from: on.from };
};
