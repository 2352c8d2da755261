import type { Ledger } from './ledger.ts';
import { needLead, needShare, PROPORTIONS } from './proportions.ts';

/** How the top of the body meets the sleeve. */
export type Construction = 'drop-shoulder' | 'set-in' | 'raglan' | 'yoke';

/** Sizes of an upper body, made to agree with each other; half widths are from the centre line. */
export interface UpperSizes {
  readonly construction: Construction;
  readonly halfChest: number;
  readonly halfHem: number;
  readonly halfNeck: number;
  /** Half the width at the shoulder tips: cross back, or the chest for a drop shoulder. */
  readonly halfShoulder: number;
  /** Stitches bound off (or held) at each underarm, as a width. */
  readonly underarm: number;
  readonly shoulderY: number;
  readonly underarmY: number;
  readonly hemY: number;
  readonly frontNeck: number;
  readonly backNeck: number;
  /** 0 where no ribbing was given. */
  readonly rib: number;
  readonly waist: Station | null;
  readonly hip: Station | null;
}

export interface Station {
  readonly y: number;
  readonly half: number;
}

const P = PROPORTIONS.upper;
const sloped = (c: Construction) => c === 'set-in' || c === 'drop-shoulder';

/** Landmark that gives the height from underarm to the top for each construction. */
export const topDepth = (c: Construction): 'armhole-depth' | 'yoke-depth' =>
  sloped(c) ? 'armhole-depth' : 'yoke-depth';

const widths = (ledger: Ledger, construction: Construction) => {
  const chest = needLead(ledger, P);
  const hem = ledger.need('hem', chest, 'as wide as the chest');
  needShare(ledger, P, 'neck-width');
  if (construction !== 'set-in') return { chest, hem, shoulder: chest };
  needShare(ledger, P, 'cross-back');
  const why = 'The cross back cannot be wider than the chest';
  const across = ledger.atMost('cross-back', chest, why);
  /** Equal but for rounding is equal: no armhole is shaped. */
  const shoulder = chest - across < 1e-9 * chest ? chest : across;
  return { chest, hem, shoulder };
};

/** A third of the armhole's width is bound off at once: common practice, no source. */
const underarmOf = (c: Construction, chest: number, shoulder: number): number =>
  c === 'set-in' ? ((chest - shoulder) / 2) * 0.33 : c === 'drop-shoulder' ? 0 : chest * 0.04;

/** The drop from neck to shoulder tip as a share of the shoulder's width: about 11°, common practice. */
const USUAL_SLOPE = 0.2;
/** A shoulder steeper than 45° is no shoulder: the numbers do not belong together. */
const STEEPEST_SLOPE = 1;

const fillLengths = (
  ledger: Ledger,
  depth: 'armhole-depth' | 'yoke-depth',
  slope: number,
): void => {
  const [body, under, top] = ['body-length', 'underarm-length', depth].map((id) =>
    ledger.given(id),
  );
  if (top == null && body != null && under != null && body - under > slope)
    ledger.need(depth, body - under - slope, 'what is left above the underarm');
  const arm = ledger.given('upper-arm');
  if (arm !== null) ledger.need(depth, arm * 1.2, '1.2 of the upper arm, usual proportion');
  const deep = needShare(ledger, P, depth);
  if (under != null)
    ledger.need('body-length', under + deep + slope, 'underarm and depth added up');
  const long = needShare(ledger, P, 'body-length');
  ledger.need('underarm-length', Math.max(long - deep - slope, 0.1 * long), 'what is left below');
};

/**
 * Body length rules; then the height below the underarm; the depth above it takes up what must give.
 * Between them and the whole lies the shoulder slope, from none to `steepest`.
 */
const settleLengths = (ledger: Ledger, depth: string, steepest: number): void => {
  const [body, top] = [ledger.drawn('body-length')!, ledger.drawn(depth)!];
  const under = ledger.drawn('underarm-length')!;
  const why = 'Lengths below and above the underarm do not add up to the whole';
  const slope = body - under - top;
  const rounding = 1e-9 * body;
  if (slope >= -rounding && slope <= steepest + rounding) return;
  if (slope > steepest) {
    ledger.change('underarm-length', body - top - steepest, why);
  } else if (body - under >= 0.1 * body) {
    ledger.change(depth, body - under, why);
  } else {
    if (top > 0.9 * body) ledger.change(depth, 0.4 * body, why);
    ledger.change('underarm-length', body - ledger.drawn(depth)!, why);
  }
};

const settleNeck = (
  ledger: Ledger,
  shoulder: number,
  narrowest: number,
  underarmY: number,
): void => {
  ledger.atMost('neck-width', 0.9 * shoulder, 'The neck cannot be wider than the shoulders');
  for (const side of ['front-neck-depth', 'back-neck-depth']) {
    needShare(ledger, P, side);
    const most = 0.9 * ledger.drawn('body-length')!;
    const deep = ledger.atMost(side, most, 'The neck cannot reach down to the hem');
    if (deep <= underarmY * (1 + 1e-9)) continue;
    ledger.atMost('neck-width', 0.9 * narrowest, 'A neck so deep has to stay inside the body');
  }
};

const stationOf = (ledger: Ledger, landmark: string, y: number): Station | null => {
  const width = ledger.given(landmark);
  return width === null ? null : { y, half: width / 2 };
};

const narrowestOf = (ledger: Ledger, shoulder: number): number =>
  Math.min(shoulder, ...['waist', 'hip', 'hem'].map((id) => ledger.drawn(id) ?? shoulder));

const settleRib = (ledger: Ledger): number =>
  ledger.has('rib-depth')
    ? ledger.atMost(
        'rib-depth',
        0.8 * ledger.drawn('underarm-length')!,
        'The ribbing cannot reach the underarm',
      )
    : 0;

/**
 * Completes and settles the sizes of an upper body. Waist, hip and ribbing are drawn only where they
 * are given; the waist sits 0.45 and the hip 0.85 of the way from underarm to ribbing (common
 * practice, no source, since no landmark gives their height).
 */
export const settleUpper = (ledger: Ledger, construction: Construction): UpperSizes => {
  const { chest, hem, shoulder } = widths(ledger, construction);
  const underarm = underarmOf(construction, chest, shoulder);
  const top = sloped(construction) ? shoulder : chest - 2 * underarm;
  const neck = Math.min(ledger.drawn('neck-width')!, 0.9 * top);
  const run = sloped(construction) ? (top - neck) / 2 : 0;
  const depth = topDepth(construction);
  fillLengths(ledger, depth, USUAL_SLOPE * run);
  settleLengths(ledger, depth, STEEPEST_SLOPE * run);
  const hemY = ledger.drawn('body-length')!;
  const underarmY = hemY - ledger.drawn('underarm-length')!;
  settleNeck(ledger, top, narrowestOf(ledger, top), underarmY);
  const rib = settleRib(ledger);
  const side = hemY - rib - underarmY;
  return {
    construction,
    halfChest: chest / 2,
    halfHem: hem / 2,
    halfNeck: ledger.drawn('neck-width')! / 2,
    halfShoulder: shoulder / 2,
    underarm,
    shoulderY: Math.max(0, underarmY - ledger.drawn(depth)!),
    underarmY,
    hemY,
    frontNeck: ledger.drawn('front-neck-depth')!,
    backNeck: ledger.drawn('back-neck-depth')!,
    rib,
    waist: stationOf(ledger, 'waist', underarmY + 0.45 * side),
    hip: stationOf(ledger, 'hip', underarmY + 0.85 * side),
  };
};
