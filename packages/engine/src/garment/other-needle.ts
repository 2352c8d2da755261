import { NEEDLE_POWER, type Specimen } from '../fabric/index.ts';
import { normalColumns } from '../stats/index.ts';
import { NEEDLES, nearestNeedle } from '../textile/index.ts';
import type { Millimetres } from '../units/index.ts';
import { type Draws, drawAll } from './draws.ts';
import type { ForecastQuestion } from './forecast-types.ts';
import { type Known, learn } from './known.ts';

/** One needle size where no diameter is known changes the pitch by about this (log). Common practice, no source. */
const NEEDLE_STEP = 0.035;

/** A needle's diameters agree within this, mm: they are given to a hundredth. */
const SAME = 0.01;

/** The needle one size away; null where the garment's is not known, or the table ends. */
export const nextNeedle = (needle: Millimetres | null, way: 1 | -1): Millimetres | null => {
  if (needle === null) return null;
  const at = NEEDLES.indexOf(nearestNeedle(needle));
  return NEEDLES[at + way]?.size ?? null;
};

/** By how much the log pitch moves from the garment's needle to another; one size of `way` where none is known. */
export const needleShift = (
  from: Millimetres | null,
  to: Millimetres | null,
  way: 1 | -1,
): number =>
  from === null || to === null ? way * NEEDLE_STEP : NEEDLE_POWER * Math.log(to / from);

const workedOn = (specimens: readonly Specimen[], needle: Millimetres | null): Specimen[] =>
  needle === null
    ? []
    : specimens.filter(
        (each) => each.needle !== undefined && Math.abs(each.needle - needle) < SAME,
      );

/**
 * Log lengths begun afresh on a needle that moves the pitch by `shift`, half of it as doubt: counted lengths move,
 * those that are knit to a tape stay.
 */
const moved = (draws: Draws, { model }: Known, shift: number, seed: number): Draws => {
  const z = normalColumns(seed, draws.n).normal('needle');
  const doubt = Math.abs(shift) / 2;
  const columns = draws.afresh.map((column, at) =>
    model.measurements[at]!.wanted.worked === 'counted'
      ? column.map((log, i) => log + shift + doubt * z[i]!)
      : column,
  );
  return { ...draws, asKnit: columns, afresh: columns };
};

/** The garment begun afresh on a needle. */
export interface OnNeedle {
  readonly question: ForecastQuestion;
  readonly known: Known;
  readonly draws: Draws;
  /** `evidence`: measured on this needle. `model`: moved from the garment's own. */
  readonly from: 'evidence' | 'model';
  /** Of the log pitch; 0 where it was measured. */
  readonly shift: number;
}

/**
 * What another needle would make of the garment begun afresh: by what was measured on it, where anything was, else
 * by the gauge model from the garment's own. Without a diameter one step of `way` is taken. On the same luck.
 */
export const onNeedle = (
  question: ForecastQuestion,
  known: Known,
  draws: Draws,
  { needle, way, seed }: { needle: Millimetres | null; way: 1 | -1; seed: number },
): OnNeedle => {
  const specimens = workedOn(question.specimens, needle);
  if (specimens.length === 0) {
    const shift = needleShift(question.needle, needle, way);
    return { question, known, draws: moved(draws, known, shift, seed), from: 'model', shift };
  }
  const asked = { ...question, needle, specimens, measured: [] };
  const own = learn(asked);
  const drawn = drawAll(own.model, own.post, own.kept, { n: draws.n, seed });
  return {
    question: asked,
    known: own,
    draws: { ...drawn, body: draws.body },
    from: 'evidence',
    shift: 0,
  };
};
