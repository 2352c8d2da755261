import type { Cited } from '../textile/index.ts';
import { type Millimetres, mm } from '../units/index.ts';
import type { Direction } from './specimen.ts';

/**
 * Plain-knit loop geometry. With `l` the yarn in one stitch, `w` the width of a stitch and `c` the
 * height of a row, each state of relaxation has w = l / kw, c = l / kc and ks stitches per l².
 * The constants are of wool; they give the published direction and size of a change, not the
 * knitter's own fabric.
 */
export const RELAXATIONS = ['dryRelaxed', 'wetRelaxed', 'fullyRelaxed'] as const;
export type Relaxation = (typeof RELAXATIONS)[number];

export type LoopConstants = Cited & {
  readonly kc: number;
  readonly kw: number;
  /** As published: rounded on its own, so within 1 % of kc · kw and not equal to it. */
  readonly ks: number;
};

export const LOOP_CONSTANTS: Readonly<Record<Relaxation, LoopConstants>> = {
  dryRelaxed: { kc: 5.0, kw: 3.8, ks: 19.0, source: 'munden-1959', standing: 'read-second-hand' },
  wetRelaxed: { kc: 5.3, kw: 4.1, ks: 21.6, source: 'munden-1959', standing: 'read-second-hand' },
  fullyRelaxed: {
    kc: 5.5,
    kw: 4.2,
    ks: 23.1,
    source: 'knapton-1968',
    standing: 'read-second-hand',
  },
};

const positive = (length: Millimetres): Millimetres => {
  if (!(length > 0 && Number.isFinite(length))) throw new RangeError(`not a length: ${length} mm`);
  return length;
};

/** k of a direction: kw for widths of stitches, kc for heights of rows. */
const constantOf = (relaxation: Relaxation, direction: Direction): number =>
  LOOP_CONSTANTS[relaxation][direction === 'width' ? 'kw' : 'kc'];

/** Width of a stitch or height of a row, from the yarn in one stitch. */
export const pitchOfLoop = (
  loop: Millimetres,
  relaxation: Relaxation,
  direction: Direction,
): Millimetres => mm(positive(loop) / constantOf(relaxation, direction));

/** Yarn in one stitch, from the width of a stitch or the height of a row. */
export const loopOfPitch = (
  pitch: Millimetres,
  relaxation: Relaxation,
  direction: Direction,
): Millimetres => mm(positive(pitch) * constantOf(relaxation, direction));

/** Wales (`width`) or courses (`length`) in so many millimetres. */
export const countPer = (
  over: Millimetres,
  loop: Millimetres,
  relaxation: Relaxation,
  direction: Direction,
): number => positive(over) / pitchOfLoop(loop, relaxation, direction);

/** Stitches per square millimetre: kc · kw / l². */
export const stitchesPerSquareMm = (loop: Millimetres, relaxation: Relaxation): number =>
  1 / (pitchOfLoop(loop, relaxation, 'width') * pitchOfLoop(loop, relaxation, 'length'));

/** Change of size between two states at equal loop length, as fractions: −0.0566 is 5.66 % shorter. */
export const changeBetween = (
  from: Relaxation,
  to: Relaxation,
): { readonly width: number; readonly length: number; readonly area: number } => {
  const width = constantOf(from, 'width') / constantOf(to, 'width');
  const length = constantOf(from, 'length') / constantOf(to, 'length');
  return { width: width - 1, length: length - 1, area: width * length - 1 };
};
