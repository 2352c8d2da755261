import { type Figure, remembered } from '../../textile/index.ts';
import type { PulledStitch } from '../extension-data.ts';
import { LOOP_CONSTANTS } from '../loop-geometry.ts';
import { CLOSE_LOOP } from '../peirce-loop.ts';
import type { Direction } from '../specimen.ts';

/**
 * Yarn in a stitch over its squeezed diameter, for hand knitting: slack, well above the 16.7 at which
 * loops jam. 19 mm of a worsted yarn of 0.84 mm give 22.6.
 */
export const LOOSENESS: Figure = remembered(18, 26);

const { kw, kc } = LOOP_CONSTANTS.wetRelaxed;
const looseness = (LOOSENESS.low + LOOSENESS.high) / 2;

/** Neighbouring stitches touch at Peirce's 4 diameters of yarn per stitch. */
const PLAIN_WIDTH = 1 - (CLOSE_LOOP.stitch.low * kw) / looseness;
/** Heads of following rows lie on each other at 1 diameter per row. */
const PLAIN_LENGTH = 1 - kc / looseness;

/** The same room when a row is already so many times as high at rest as one of stockinette. */
const closer = (jam: number, times: number): number => 1 - (1 - jam) / times;

/**
 * Squeeze that stitches allow before they touch, as a positive fraction of rest. All assumptions from
 * the geometry of the plain loop: rows of garter lie at about 0.7 of the height of stockinette (20
 * stitches by 40 rows against 28, common practice, no source), those of seed at about 0.85. A rib lies
 * at half the width of plain fabric in two layers (textbook, from memory), so that each layer has the
 * room of plain fabric; half of that room was assumed before the narrowing read in length ruled it out.
 */
export const JAMS: Readonly<Record<PulledStitch, Readonly<Record<Direction, number>>>> = {
  stockinette: { width: PLAIN_WIDTH, length: PLAIN_LENGTH },
  garter: { width: PLAIN_WIDTH, length: closer(PLAIN_LENGTH, 0.7) },
  seed: { width: PLAIN_WIDTH, length: closer(PLAIN_LENGTH, 0.85) },
  'rib-1x1': { width: PLAIN_WIDTH, length: PLAIN_LENGTH },
};

/** Looseness of 18 to 26 alone moves the jam in width from 0.09 to 0.37. */
export const JAM_LOG_SD = 0.4;
