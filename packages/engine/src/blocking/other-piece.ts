import { type Direction, MOST_SHARE, type PlaneConstants } from '../fabric/index.ts';
import type { Point } from '../garment/index.ts';
import { middleOf } from './plane.ts';
import type { FabricOnMat, PieceToBlock } from './types.ts';

/** Factors on what a piece is thought to be, above 0. */
export interface PieceFactors {
  /** On the load at any strain. */
  readonly stiffness: number;
  /** On the size at rest. */
  readonly width: number;
  readonly length: number;
  /** On how far it draws in across a pull. */
  readonly drawIn: number;
}

/** Stretch of the plane about a middle. */
export const scaledAbout =
  (middle: Point, { width, length }: Pick<PieceFactors, 'width' | 'length'>) =>
  ({ x, y }: Point): Point => ({
    x: middle.x + width * (x - middle.x),
    y: middle.y + length * (y - middle.y),
  });

/** A stiffer fabric gives less by as much, up to its limit: as fabrics are drawn for the ranges of a plan. */
const otherConstants = (
  constants: PlaneConstants,
  { stiffness, drawIn }: PieceFactors,
): PlaneConstants => {
  const law = (direction: Direction) => ({
    ...constants[direction],
    slope: constants[direction].slope * stiffness,
    limit: constants[direction].limit / stiffness,
  });
  return {
    ...constants,
    width: law('width'),
    length: law('length'),
    share: Math.min(MOST_SHARE, constants.share * drawIn),
  };
};

const otherFabric = (fabric: FabricOnMat, factors: PieceFactors): FabricOnMat => ({
  ...fabric,
  constants: otherConstants(fabric.constants, factors),
  pitch: {
    stitch: fabric.pitch.stitch * factors.width,
    row: fabric.pitch.row * factors.length,
  },
});

/** The piece of another fabric and another size at rest, about the same middle; what is wanted of it stays. */
export const otherPiece = (piece: PieceToBlock, factors: PieceFactors): PieceToBlock => {
  const place = scaledAbout(middleOf(piece.outline), factors);
  const end = (at: number | Point) => (typeof at === 'number' ? at : place(at));
  return {
    ...piece,
    outline: piece.outline.map(place),
    dimensions: piece.dimensions.map((each) => ({
      ...each,
      from: end(each.from),
      to: end(each.to),
    })),
    zones: piece.zones.map((zone) => ({
      ...zone,
      polygon: zone.polygon.map(place),
      ...(zone.fabric === undefined ? {} : { fabric: otherFabric(zone.fabric, factors) }),
    })),
    ...(piece.pinned === undefined
      ? {}
      : { pinned: piece.pinned.map(({ at, to }) => ({ at: place(at), to })) }),
    fabric: otherFabric(piece.fabric, factors),
  };
};
