import { boxOf } from './on-mat.ts';
import { axisOf } from './symmetry.ts';
import type { MatSpec, PiecePlan, PieceToBlock } from './types.ts';

const by = (width: number, height: number): string =>
  `{mm:${width.toFixed(0)}} by {mm:${height.toFixed(0)}}`;

const whole = (side: number, tile: number): number => Math.floor(side / tile + 1e-9);

/** How tiles lie, and how many more that takes than the mat has. */
const tiles = ({ widthMm, heightMm, tileMm }: MatSpec, mat: MatSpec): string => {
  const [across, down] = [Math.round(widthMm / tileMm), Math.round(heightMm / tileMm)];
  const more = across * down - whole(mat.widthMm, tileMm) * whole(mat.heightMm, tileMm);
  const lie = `${across} across and ${down} down`;
  return more > 0
    ? `Lay out ${across * down} tiles, ${lie}: ${more} more than the mat has.`
    : `Lay its tiles ${lie}.`;
};

/** Folded down its middle, where that fits. */
const folded = (piece: PieceToBlock, mat: MatSpec, width: number, height: number): string[] => {
  const fits = [
    [width / 2, height],
    [height, width / 2],
  ].some(([w, h]) => w! <= mat.widthMm && h! <= mat.heightMm);
  return fits && axisOf(piece) !== null
    ? [
        `Folded in half down its middle it fits, ${by(width / 2, height)}: pin one half of the plan through both layers, which pull twice as hard.`,
      ]
    : [];
};

/** What to do with a piece that the mat is too small for, and what its plan counts on; null where it fits. */
export const tooLarge = (piece: PieceToBlock, plan: PiecePlan, mat: MatSpec): string | null => {
  if (plan.fitsMat) return null;
  const { laidOn, name } = plan;
  const { width, height } = boxOf(plan.outlines.wanted);
  const marked = `${by(laidOn.widthMm, laidOn.heightMm)} with tape on a carpet, and pin into that over a clean towel.`;
  return [
    `${name} takes ${by(width, height)}, and the mat is ${by(mat.widthMm, mat.heightMm)}.`,
    ...(mat.tileMm > 0 ? [tiles(laidOn, mat), `Or mark ${marked}`] : [`Mark ${marked}`]),
    ...folded(piece, mat, width, height),
    'The plan is for what you lay out or mark, and counts from its corners.',
  ].join(' ');
};
