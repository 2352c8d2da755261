import { armholeLength } from './body-path.ts';
import type { Dimensioner } from './dimension.ts';
import type { Ledger } from './ledger.ts';
import { cubic, line, pathLength, point, withoutNothing } from './path.ts';
import { needShare, PROPORTIONS } from './proportions.ts';
import type { Detail, OutlinePiece, Segment } from './types.ts';
import type { UpperSizes } from './upper-sizes.ts';

const P = PROPORTIONS.upper;

/** Top of a folded sleeve: from its fold at x = 0 to the outer end of the underarm at y = 0. */
type Cap = readonly Segment[];

const capCurve = (across: number, height: number): Segment =>
  cubic(
    point(0, -height),
    point(0.55 * across, -height),
    point(0.5 * across, -0.1 * height),
    point(across, 0),
    'seam',
  );

/** Least height of a cap as a share of its width; lower ones do not set in (common practice). */
const LOWEST_CAP = 0.2;

/**
 * Height at which the cap's edge is as long as the armhole that it is sewn into, by halving the
 * interval from nothing (too short, unless no cap is possible) to the armhole's length (too long).
 * 50 halvings bring it to within the rounding of a double.
 */
export const capHeight = (across: number, armhole: number): { height: number; fits: boolean } => {
  const lowest = LOWEST_CAP * across;
  const lengthAt = (h: number) => pathLength([capCurve(across, h)], (across + armhole) * 1e-5);
  if (lengthAt(lowest) >= armhole) return { height: lowest, fits: false };
  let [low, high] = [lowest, armhole];
  for (let i = 0; i < 50; i++) {
    const middle = (low + high) / 2;
    if (lengthAt(middle) < armhole) low = middle;
    else high = middle;
  }
  return { height: high, fits: true };
};

const setInCap = (ledger: Ledger, s: UpperSizes, arm: number): Cap => {
  const bound = Math.min(s.underarm, 0.3 * arm);
  const across = arm - bound;
  const armhole = armholeLength(s);
  const { height, fits } = capHeight(across, armhole);
  if (!fits) {
    const text = `A sleeve {mm:${arm.toFixed(1)}} wide does not set into an armhole with an edge of {mm:${armhole.toFixed(1)}}: the cap is drawn as low as caps go and its edge is longer than the armhole.`;
    const [givenMm, drawnMm] = [arm, arm];
    ledger.notices.push({ code: 'cap-impossible', landmark: 'upper-arm', givenMm, drawnMm, text });
  }
  return [capCurve(across, height), line(point(across, 0), point(arm, 0), 'bound-off')];
};

const raglanCap = (s: UpperSizes, arm: number): Cap => {
  const inner = point(arm - Math.min(s.underarm, 0.3 * arm), 0);
  const top = point(Math.min(0.18 * arm, 0.9 * inner.x), -s.underarmY);
  return [
    line(point(0, top.y), top, 'neckline'),
    line(top, inner, 'seam'),
    line(inner, point(arm, 0), 'join'),
  ];
};

const capOf = (ledger: Ledger, s: UpperSizes, arm: number): Cap => {
  if (s.construction === 'set-in') return setInCap(ledger, s, arm);
  if (s.construction === 'raglan') return raglanCap(s, arm);
  const edge = s.construction === 'yoke' ? 'join' : 'seam';
  return [line(point(0, 0), point(arm, 0), edge)];
};

const ribLine = (rib: number, cuff: number, length: number): Detail[] =>
  rib > 0
    ? [
        {
          kind: 'ribbing',
          path: [line(point(0, length - rib), point(cuff, length - rib), 'cast-on')],
        },
      ]
    : [];

const armWidth = (ledger: Ledger, s: UpperSizes): number => {
  const deep = s.underarmY - s.shoulderY;
  const [share, why] =
    s.construction === 'drop-shoulder'
      ? [1, 'as wide as the armhole is deep']
      : [0.82, '0.82 of the depth above the underarm, usual proportion'];
  return ledger.need('upper-arm', deep * share, why);
};

/**
 * A sleeve as it lies: folded along its top, so that its widths are the flat ones. The fold is the
 * line x = 0, the underarm the line y = 0, and the seam runs down on the right.
 */
export const sleeve = (ledger: Ledger, s: UpperSizes, dim: Dimensioner): OutlinePiece => {
  const arm = armWidth(ledger, s);
  const cuff = needShare(ledger, P, 'cuff');
  const length = needShare(ledger, P, 'sleeve-length');
  const rib = Math.min(s.rib, 0.5 * length);
  const cap = withoutNothing(capOf(ledger, s, arm));
  const top = cap[0]!.from;
  const seam = [
    line(point(arm, 0), point(cuff, length - rib), 'seam'),
    line(point(cuff, length - rib), point(cuff, length), 'seam'),
    line(point(cuff, length), point(0, length), 'cast-on'),
    line(point(0, length), top, 'fold'),
  ];
  return {
    name: 'sleeve',
    copies: 2,
    symmetric: false,
    path: withoutNothing([...cap, ...seam]),
    details: ribLine(rib, cuff, length),
    dimensions: [
      dim('upper-arm', point(0, 0), point(arm, 0), top.y === 0 ? 'top' : 'inside'),
      dim('sleeve-length', point(arm, 0), point(arm, length), 'right'),
      dim('cuff', point(0, length), point(cuff, length), 'bottom'),
    ],
    shownOn: null,
  };
};
