import { drawAll, learn } from '../../garment/index.ts';
import { normalColumns } from '../../stats/index.ts';
import { chanceOfSizes, judge } from '../knit/judge.ts';
import { clothOf, type Luck, luckOf } from '../knit/luck.ts';
import { plannedMakes } from '../knit/makes.ts';
import { knitPieces } from '../knit/pieces.ts';
import { ownTargets } from '../knit/targets.ts';
import { shareOf } from '../price/work.ts';
import type { RoutesQuestion } from '../types.ts';
import type { Bench } from './draft.ts';

/** The draws that every route shares: those of the forecast of the same seed. */
export const drawLuck = (question: RoutesQuestion, seed: number, n: number): Luck => {
  const { forecast } = question;
  const known = learn(forecast);
  const normals = normalColumns(seed, n);
  const { width, length } = known.model.fabric.asKnit;
  const draws = drawAll(known.model, known.post, known.kept, {
    n,
    seed,
    further: { forms: [width, length], normals },
  });
  return luckOf(forecast, clothOf(known, draws, normals));
};

/** The garment on its luck: how it is planned, how that fits, and how much of it is knit. */
export const benchOf = (question: RoutesQuestion, luck: Luck): Bench => {
  const { forecast, progress } = question;
  const own = ownTargets(forecast, luck);
  const planned = plannedMakes(forecast, luck);
  const plannedFit = judge(luck, planned, own, forecast.judgeAt);
  const pieces = knitPieces(forecast.kind, luck, planned);
  const all = pieces.reduce((sum, { stitches }) => sum + stitches, 0);
  const knit = pieces.reduce((sum, p) => sum + p.stitches * shareOf(progress, p.name), 0);
  const begun = all > 0 ? knit / all : 0;
  const chanceOfSize = chanceOfSizes(luck, own, forecast.judgeAt);
  return { question, forecast, luck, own, planned, plannedFit, chanceOfSize, pieces, begun };
};
