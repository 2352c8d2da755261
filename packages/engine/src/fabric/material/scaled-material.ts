import type { Direction } from '../specimen.ts';
import type { FabricMaterial } from './fabric-material.ts';
import { GIVE_CORRELATION } from './hang-scale.ts';
import { type JammingLaw, MOST_SHARE, type PlaneConstants, sheetOf } from './plane.ts';
import { carryingLaw, reachingLaw } from './scale-law.ts';

/** Factors on a material, above 0; what is left out is 1. */
export interface MaterialFactors {
  /** On the strain under small loads, for both directions or each: every load is 1/give of what it was. */
  readonly give?: number | Readonly<Record<Direction, number>>;
  /** On the strain that no load reaches; stiffness at rest stays. */
  readonly limit?: number | Readonly<Record<Direction, number>>;
  /** On the coupling share; the result stays at or below `MOST_SHARE`. */
  readonly coupling?: number;
  readonly shear?: number;
  /** On the squeeze that stitches allow; the result stays at or below `MOST_JAM`. */
  readonly jam?: number;
}

/** A fabric never closes up to nothing: the yarn of its own stitches is in the way. */
export const MOST_JAM = 0.9;

type PerDirection = Readonly<Record<Direction, number>>;

const perDirection = (factor: number | PerDirection): PerDirection =>
  typeof factor === 'number' ? { width: factor, length: factor } : factor;

/** The same fabric with other constants; doubt and bases stay. */
export const scaledMaterial = (
  material: FabricMaterial,
  factors: MaterialFactors,
): FabricMaterial => {
  const { coupling = 1, shear = 1, jam = 1 } = factors;
  const { constants } = material;
  const give = perDirection(factors.give ?? 1);
  const limit = perDirection(factors.limit ?? 1);
  for (const factor of [...Object.values(give), ...Object.values(limit), coupling, shear, jam])
    if (!(factor > 0 && Number.isFinite(factor))) throw new RangeError(`factor ${factor}`);
  const law = (direction: Direction): JammingLaw => ({
    ...carryingLaw(reachingLaw(constants[direction], limit[direction]), 1 / give[direction]),
    jam: Math.min(MOST_JAM, constants[direction].jam * jam),
  });
  const scaled: PlaneConstants = {
    width: law('width'),
    length: law('length'),
    share: Math.min(MOST_SHARE, constants.share * coupling),
    shearShare: constants.shearShare * shear,
  };
  return { ...material, constants: scaled, sheet: sheetOf(scaled) };
};

/** Independent standard normals that a fabric is drawn by; give in length goes partly with width. */
export interface MaterialNormals {
  readonly give: PerDirection;
  readonly limit: PerDirection;
  readonly coupling: number;
  readonly shear: number;
  readonly jam: number;
}

/** One fabric out of those that the doubt allows. All normals zero give the material itself. */
export const drawnMaterial = (
  material: FabricMaterial,
  { give, limit, coupling, shear, jam }: MaterialNormals,
): FabricMaterial => {
  const { doubt } = material;
  const length = GIVE_CORRELATION * give.width + Math.sqrt(1 - GIVE_CORRELATION ** 2) * give.length;
  return scaledMaterial(material, {
    give: {
      width: Math.exp(doubt.give.width * give.width),
      length: Math.exp(doubt.give.length * length),
    },
    limit: {
      width: Math.exp(doubt.limit.width * limit.width),
      length: Math.exp(doubt.limit.length * limit.length),
    },
    coupling: Math.exp(doubt.coupling * coupling),
    shear: Math.exp(doubt.shear * shear),
    jam: Math.exp(doubt.jam * jam),
  });
};
