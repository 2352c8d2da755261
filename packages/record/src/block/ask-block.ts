import type {
  BlockQuestion,
  DimensionToReach,
  EdgeKind,
  MatSpec,
  PieceToBlock,
  Stock,
} from '@dryflat/engine/blocking';
import {
  boxOf,
  type Forecast,
  type ForecastQuestion,
  forecast,
  type OutlinePiece,
  type OutlineSizes,
  outlineOf,
  outlineSizes,
  type EdgeKind as SewnEdge,
} from '@dryflat/engine/garment';
import { fail, ok, type Result } from '@dryflat/engine/units';
import { askForecast } from '../ask/ask-forecast.ts';
import type { GarmentRecord } from '../schema/index.ts';
import { dimensionsByDrawing } from './by-drawing.ts';
import { alike, flattened } from './flattened.ts';
import { afterMat, fabricOnMat, restDoubt } from './wet-fabric.ts';

export interface BlockChoices {
  readonly stock: Stock;
  readonly mat: MatSpec;
  /** True: nothing is stretched beyond what is published as safe. */
  readonly gentle: boolean;
  /** True: front and back are joined and lie on each other. */
  readonly sewn: boolean;
}

/** Enough draws for the middle of a wet size: its error is a hundredth of its own spread. */
const DRAWS = 4000;
const SEED = 20_250_101;

/**
 * The question of the mat for every piece of a garment: each as the forecast says that it lies wet,
 * and as the pattern or the plan wants it pinned. Fails as `askForecast` does, and where no piece has
 * a size that anybody gave.
 */
export const askBlock = (record: GarmentRecord, choices: BlockChoices): Result<BlockQuestion> => {
  const asked = askForecast(record);
  if (!asked.ok) return asked;
  const pieces = piecesToBlock(
    asked.value,
    forecast(asked.value, { seed: SEED, draws: DRAWS }),
    choices.sewn,
  );
  if (pieces.length === 0)
    return fail({
      code: 'block-no-size',
      field: 'pattern.measurements',
      given: `${record.pattern.measurements.length} measurements`,
      problem: 'No measurement says how large a piece is to lie',
      mend: 'Give the pattern’s widths and lengths in the size that is knit.',
    });
  const { stock, mat, gentle } = choices;
  return ok({ pieces, stock, mat, gentle });
};

const piecesToBlock = (
  question: ForecastQuestion,
  { measurements, gauge }: Forecast,
  sewn: boolean,
): PieceToBlock[] => {
  const sized = measurements.filter(({ targetMm }) => targetMm !== null);
  const sizes = (of: (each: (typeof sized)[number]) => number | null): OutlineSizes =>
    outlineSizes(sized.map((each) => ({ landmark: each.landmark, span: each.span, mm: of(each) })));
  const rest = outlineOf(
    question.kind,
    sizes(({ states }) => states.wet.p50Mm),
  ).pieces;
  const wanted = outlineOf(
    question.kind,
    sizes((each) => each.pinnedMm ?? each.targetMm),
  ).pieces;
  const sizedBack = rest.some((piece) => piece.name === 'back' && isSized(piece));
  return rest.flatMap((lying) => {
    const goal = wanted.find(({ name }) => name === lying.name);
    // Sewn, the fronts lie on the back.
    const asBack = !isSized(lying) && lying.name === 'front' && sizedBack && !sewn;
    if (goal === undefined || !(isSized(lying) || asBack)) return [];
    const { points, edges } = flattened(lying);
    return [
      {
        name: lying.name,
        outline: points,
        edges: edges.map((edge) => onMat(edge, sewn)),
        layers: sewn ? 2 : 1,
        wanted: alike(lying, goal) ? flattened(goal).points : null,
        dimensions: asBack ? dimensionsByDrawing(lying, goal) : dimensionsOf(lying, goal),
        zones: ribbingOf(lying, question, gauge),
        fabric: fabricOnMat(question, gauge, question.stitch),
        restLogSd: restDoubt(gauge),
        after: afterMat(question),
      },
    ];
  });
};

const isSized = ({ dimensions }: OutlinePiece): boolean =>
  dimensions.some(({ assumed }) => !assumed);

const ON_MAT: Readonly<Record<SewnEdge, EdgeKind>> = {
  'cast-on': 'cast-on',
  'bound-off': 'bound-off',
  selvedge: 'selvedge',
  seam: 'selvedge',
  // Bound off for the most part, and picked up only once the pieces are dry.
  neckline: 'bound-off',
  'picked-up': 'selvedge',
  fold: 'fold',
  join: 'open',
  gathered: 'open',
};

const onMat = (edge: SewnEdge, sewn: boolean): EdgeKind =>
  sewn && edge === 'seam' ? 'seam' : sewn && edge === 'picked-up' ? 'picked-up' : ON_MAT[edge];

/** Those that somebody gave a number for, each once. */
const dimensionsOf = (lying: OutlinePiece, goal: OutlinePiece): DimensionToReach[] =>
  lying.dimensions.flatMap(({ landmark, direction, from, to, assumed }) => {
    const target = goal.dimensions.find((each) => each.landmark === landmark);
    if (assumed || target === undefined || target.assumed) return [];
    return [{ name: landmark, landmark, direction, from, to, targetMm: target.mm }];
  });

/** Ribbing, from its line to the nearer end of the piece. A millimetre more, as its edges are the outline. */
const ribbingOf = (
  piece: OutlinePiece,
  question: ForecastQuestion,
  gauge: Forecast['gauge'],
): PieceToBlock['zones'] => {
  const { left, right, top, bottom } = boxOf(flattened(piece).points);
  return piece.details
    .filter(({ kind }) => kind === 'ribbing')
    .flatMap(({ path }) => {
      const y = path[0]?.from.y;
      if (y === undefined) return [];
      const end = bottom - y < y - top ? bottom + 1 : top - 1;
      const polygon = [
        { x: left - 1, y },
        { x: right + 1, y },
        { x: right + 1, y: end },
        { x: left - 1, y: end },
      ];
      return [{ polygon, kind: 'rib', fabric: fabricOnMat(question, gauge, 'rib-1x1') } as const];
    });
};
