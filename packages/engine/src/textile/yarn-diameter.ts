import { type Millimetres, mm } from '../units/index.ts';
import { type Figure, figure, remembered } from './figure.ts';

/**
 * A yarn as a cylinder filled to a share `packing` (0 to 1) with fibre of `density` g/cm³:
 * d = √(4 tex / (π · density · packing)), which is 0.03568 · √(tex / (density · packing)) mm.
 */
export interface Cylinder {
  readonly tex: number;
  readonly density: number;
  readonly packing: number;
}

/** tex is g/km and a g/cm³ is a mg/mm³, so tex / density is 10⁻³ mm² of fibre. */
const fibreArea = (tex: number, density: number): number => tex / density / 1000;

export const yarnDiameter = ({ tex, density, packing }: Cylinder): Millimetres => {
  if (!(tex > 0 && density > 0 && packing > 0 && packing <= 1))
    throw new RangeError(`no such yarn: tex ${tex}, density ${density}, packing ${packing}`);
  return mm(Math.sqrt((4 * fibreArea(tex, density)) / (Math.PI * packing)));
};

/** Share of a yarn of that diameter which is fibre. Above 1 the diameter is too small to be true. */
export const packingOf = (tex: number, density: number, diameter: Millimetres): number =>
  (4 * fibreArea(tex, density)) / (Math.PI * diameter ** 2);

/** Peirce's specific volume of cotton yarn, 1.1 cm³/g: squeezed as in a crossing. Peirce 1937. */
export const PEIRCE_SPECIFIC_VOLUME: Figure = figure('peirce-1937', 'read-second-hand', 1.1);

/** Diameter at 1.1 cm³/g: 0.0374 · √tex mm, the basis of Peirce's loop length. */
export const peirceDiameter = (tex: number): Millimetres =>
  yarnDiameter({ tex, density: 1 / PEIRCE_SPECIFIC_VOLUME.low, packing: 1 });

/**
 * Packing of a yarn as it lies free, and where it is squeezed between loops. Free: 0.08 to 0.2 in
 * two knitting yarns whose diameter was measured; squeezed: their hard core and the textbooks.
 */
export const PACKING: { readonly free: Figure; readonly squeezed: Figure } = {
  free: figure('ding-2023', 'read-second-hand', 0.076, 0.2),
  squeezed: figure('singal-2024', 'read-second-hand', 0.6, 0.66),
};

/** Tightness factor √tex / l with l in cm: how much of the loop its own yarn fills. */
export const tightnessFactor = (tex: number, loop: Millimetres): number => {
  if (!(tex > 0 && loop > 0)) throw new RangeError(`no such loop: tex ${tex}, ${loop} mm`);
  return Math.sqrt(tex) / (loop / 10);
};

/** Trade range for plain worsted, from memory: 12 slack, 14 to 15 usual, 18 firm. */
export const USUAL_TIGHTNESS: Figure = remembered(12, 18);
