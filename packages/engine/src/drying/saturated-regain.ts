import { type Fibre, type Figure, figure, remembered } from '../textile/index.ts';

const seen = (low: number, high: number): Figure =>
  figure('morton-hearle-2008', 'from-memory', low, high);

/**
 * Regain at the top of the desorption isotherm, water over dry mass: what the fibre itself holds in
 * saturated air. Water beyond it lies between fibres. That the constant rate ends here was found for
 * cotton, nylon and wool squares ("Drying processes of fabrics", Japan, abstract read); Steele 1958
 * found it to depend on the sample too, so the ranges are kept wide. All from memory.
 */
const table: Readonly<Record<Fibre, Figure>> = {
  wool: seen(0.32, 0.38),
  alpaca: remembered(0.3, 0.38),
  mohair: remembered(0.3, 0.38),
  cashmere: remembered(0.3, 0.38),
  silk: remembered(0.25, 0.36),
  cotton: seen(0.22, 0.28),
  linen: remembered(0.2, 0.28),
  hemp: remembered(0.22, 0.32),
  viscose: seen(0.4, 0.52),
  lyocell: remembered(0.32, 0.42),
  acrylic: remembered(0.025, 0.05),
  nylon: seen(0.08, 0.1),
  polyester: remembered(0.007, 0.015),
  other: remembered(0.007, 0.52),
};

export const saturatedRegain = (fibre: Fibre): Figure => table[fibre];
