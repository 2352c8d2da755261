import { type Figure, figure } from '../textile/index.ts';
import { type Millimetres, mm } from '../units/index.ts';

/** Length of yarn in a plain stitch by its outline: l = 2 c + w + 5.94 d, all in millimetres. */
export interface PeirceLoop {
  /** Height of a row. */
  readonly row: Millimetres;
  /** Width of a stitch. */
  readonly stitch: Millimetres;
  /** Diameter of the yarn at 1.1 cm³/g (`peirceDiameter`). */
  readonly diameter: Millimetres;
}

/** Peirce's coefficient of the diameter, as tested by Fletcher and Roberts. */
export const PEIRCE_DIAMETERS: Figure = figure('fletcher-roberts-1952', 'read', 5.94);

/** The same with the diameter measured on the loose yarn, which is larger. */
export const MEASURED_DIAMETERS: Figure = figure('fletcher-roberts-1952', 'read', 4.56);

export const peirceLoopLength = ({ row, stitch, diameter }: PeirceLoop): Millimetres =>
  mm(2 * row + stitch + PEIRCE_DIAMETERS.low * diameter);

/** Peirce's closest loop, in diameters of the yarn: 4 wide and 3.364 high. From memory. */
export const CLOSE_LOOP: { readonly stitch: Figure; readonly row: Figure } = {
  stitch: figure('peirce-1947', 'from-memory', 4),
  row: figure('peirce-1947', 'from-memory', 3.364),
};

/** Yarn in a stitch over its diameter at which neighbours touch: 16.67 (plane) to 16.75 (in space). */
export const JAMMING_RATIO: Figure = figure('kurbak-2016', 'read', 16.6688, 16.75);

/** Slack fabric has room in its loops, jammed fabric none. Hand knitting is almost always slack. */
export const isSlack = (loop: Millimetres, diameter: Millimetres): boolean =>
  loop / diameter > JAMMING_RATIO.high;
