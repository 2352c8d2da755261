import type { Dimensioner } from './dimension.ts';
import type { Ledger } from './ledger.ts';
import { cubic, line, point, withMirror, withoutNothing } from './path.ts';
import { needLead, needShare, PROPORTIONS } from './proportions.ts';
import type { Detail, OutlinePiece } from './types.ts';

const ribAt = (ledger: Ledger, most: number): number =>
  ledger.has('rib-depth')
    ? ledger.atMost('rib-depth', most, 'The ribbing cannot be deeper than the piece')
    : 0;

const ribDetail = (rib: number, left: number, right: number, y: number): Detail[] =>
  rib > 0 ? [{ kind: 'ribbing', path: [line(point(left, y), point(right, y), 'cast-on')] }] : [];

/** A hat lying flat, brim down: straight sides, then a crown over the upper 0.42 of its height. */
export const hat = (ledger: Ledger, dim: Dimensioner): OutlinePiece => {
  const half = needLead(ledger, PROPORTIONS.hat) / 2;
  const height = needShare(ledger, PROPORTIONS.hat, 'hat-height');
  const rib = ribAt(ledger, 0.55 * height);
  const crown = 0.42 * height;
  const right = [
    cubic(
      point(0, 0),
      point(0.6 * half, 0),
      point(half, 0.35 * crown),
      point(half, crown),
      'gathered',
    ),
    line(point(half, crown), point(half, height), 'fold'),
    line(point(half, height), point(0, height), 'cast-on'),
  ];
  return {
    name: 'hat',
    copies: 1,
    symmetric: true,
    path: withMirror(right),
    details: ribDetail(rib, -half, half, height - rib),
    dimensions: [
      dim('brim', point(-half, height), point(half, height), 'bottom'),
      dim('hat-height', point(half, 0), point(half, height), 'right'),
      ...(rib > 0
        ? [dim('rib-depth', point(-half, height - rib), point(-half, height), 'left')]
        : []),
    ],
    shownOn: null,
  };
};

const settleFoot = (ledger: Ledger, leg: number, foot: number): number =>
  ledger.atLeast(
    'foot-length',
    leg + 0.85 * foot,
    'The foot has to be longer than the leg is wide and the toe is long',
  );

/**
 * A sock seen from the side, toe to the right, back of the heel at x = 0. The leg ends where the
 * heel begins; the heel is as high as the foot is wide (common practice, no source).
 */
export const sock = (ledger: Ledger, dim: Dimensioner): OutlinePiece => {
  const foot = needLead(ledger, PROPORTIONS.sock);
  const leg = needShare(ledger, PROPORTIONS.sock, 'leg');
  const tall = needShare(ledger, PROPORTIONS.sock, 'leg-length');
  needShare(ledger, PROPORTIONS.sock, 'foot-length');
  const long = settleFoot(ledger, leg, foot);
  const rib = ribAt(ledger, 0.9 * tall);
  const [sole, toe, bend] = [tall + foot, 0.5 * foot, Math.min(0.3 * foot, 0.5 * tall)];
  const [heel, instep] = [Math.min(0.55 * foot, 0.6 * leg), 0.3 * foot];
  const path = [
    line(point(0, 0), point(leg, 0), 'cast-on'),
    line(point(leg, 0), point(leg, tall - bend), 'fold'),
    cubic(
      point(leg, tall - bend),
      point(leg, tall - 0.3 * bend),
      point(leg + 0.3 * instep, tall),
      point(leg + instep, tall),
      'fold',
    ),
    line(point(leg + instep, tall), point(long - toe, tall), 'fold'),
    cubic(
      point(long - toe, tall),
      point(long - 0.3 * toe, tall + 0.06 * foot),
      point(long, tall + 0.25 * foot),
      point(long, tall + 0.5 * foot),
      'gathered',
    ),
    cubic(
      point(long, tall + 0.5 * foot),
      point(long, tall + 0.75 * foot),
      point(long - 0.3 * toe, sole - 0.06 * foot),
      point(long - toe, sole),
      'gathered',
    ),
    line(point(long - toe, sole), point(heel, sole), 'fold'),
    cubic(
      point(heel, sole),
      point(0.4 * heel, sole),
      point(0, sole - 0.4 * heel),
      point(0, sole - heel),
      'fold',
    ),
    line(point(0, sole - heel), point(0, 0), 'fold'),
  ];
  return {
    name: 'sock',
    copies: 2,
    symmetric: false,
    path: withoutNothing(path),
    details: [
      ...ribDetail(rib, 0, leg, rib),
      { kind: 'heel', path: [line(point(0, tall), point(0.55 * leg, sole), 'join')] },
      { kind: 'toe', path: [line(point(long - toe, tall), point(long - toe, sole), 'join')] },
    ],
    dimensions: [
      dim('leg', point(0, 0), point(leg, 0), 'top'),
      dim('leg-length', point(0, 0), point(0, tall), 'left'),
      ...(rib > 0 ? [dim('rib-depth', point(0, 0), point(0, rib), 'left')] : []),
      dim('foot', point(long - toe, tall), point(long - toe, sole), 'right', false),
      dim('foot-length', point(0, sole), point(long, sole), 'bottom'),
    ],
    shownOn: null,
  };
};

/** Lean of a thumb away from the hand, drawn so that both can be measured: 32°. */
const LEAN = (32 * Math.PI) / 180;

/**
 * A mitten, back of the hand up, fingertips at y = 0. Hand length runs from wrist to tips; the cuff
 * below is as deep as its ribbing. The thumb leans out to the right, from 0.5 of the hand's length.
 */
export const mitten = (ledger: Ledger, dim: Dimensioner): OutlinePiece => {
  const p = PROPORTIONS.mitten;
  const half = needLead(ledger, p) / 2;
  const wrist = needShare(ledger, p, 'hand-length');
  const cuff = needShare(ledger, p, 'cuff') / 2;
  const rib = Math.max(needShare(ledger, p, 'rib-depth'), 0);
  needShare(ledger, p, 'thumb');
  const wide = ledger.atMost(
    'thumb',
    0.8 * Math.min(wrist, 2 * half),
    'The thumb cannot be as wide as the hand',
  );
  const long = needShare(ledger, p, 'thumb-length');
  const tip = 0.45 * wrist;
  const crotch = point(half, 0.5 * wrist);
  /** A point of the thumb, `up` along its axis from the crotch and `out` across it. */
  const thumb = (up: number, out: number) =>
    point(
      crotch.x + up * Math.sin(LEAN) + out * Math.cos(LEAN),
      crotch.y - up * Math.cos(LEAN) + out * Math.sin(LEAN),
    );
  const dome = Math.min(0.5 * wide, 0.5 * long);
  const root = thumb(0, wide);
  const drop = wrist - root.y;
  const end = wrist + rib;
  const path = [
    cubic(point(0, 0), point(0.55 * half, 0), point(half, 0.35 * tip), point(half, tip), 'fold'),
    line(point(half, tip), crotch, 'fold'),
    line(crotch, thumb(long - dome, 0), 'fold'),
    cubic(
      thumb(long - dome, 0),
      thumb(long - 0.4 * dome, 0),
      thumb(long, 0.22 * wide),
      thumb(long, 0.5 * wide),
      'gathered',
    ),
    cubic(
      thumb(long, 0.5 * wide),
      thumb(long, 0.78 * wide),
      thumb(long - 0.4 * dome, wide),
      thumb(long - dome, wide),
      'gathered',
    ),
    line(thumb(long - dome, wide), root, 'fold'),
    cubic(
      root,
      point(root.x - Math.min(0.35 * drop * Math.tan(LEAN), 0.5 * wide), root.y + 0.35 * drop),
      point(cuff, wrist - 0.4 * drop),
      point(cuff, wrist),
      'fold',
    ),
    line(point(cuff, wrist), point(cuff, end), 'fold'),
    line(point(cuff, end), point(-cuff, end), 'cast-on'),
    line(point(-cuff, end), point(-cuff, wrist), 'fold'),
    cubic(
      point(-cuff, wrist),
      point(-cuff, 0.9 * wrist),
      point(-half, 0.85 * wrist),
      point(-half, 0.7 * wrist),
      'fold',
    ),
    line(point(-half, 0.7 * wrist), point(-half, tip), 'fold'),
    cubic(point(-half, tip), point(-half, 0.35 * tip), point(-0.55 * half, 0), point(0, 0), 'fold'),
  ];
  const across = 0.62 * wrist;
  return {
    name: 'mitten',
    copies: 2,
    symmetric: false,
    path: withoutNothing(path),
    details: [{ kind: 'wrist', path: [line(point(-cuff, wrist), point(cuff, wrist), 'cast-on')] }],
    dimensions: [
      dim('hand', point(-half, across), point(half, across), 'inside'),
      dim('hand-length', point(-half, 0), point(-half, wrist), 'left'),
      ...(rib > 0 ? [dim('rib-depth', point(-cuff, wrist), point(-cuff, end), 'left')] : []),
      dim('cuff', point(-cuff, end), point(cuff, end), 'bottom'),
      dim('thumb', thumb(0, 0), thumb(0, wide), 'right', false),
      dim('thumb-length', thumb(0, 0.5 * wide), thumb(long, 0.5 * wide), 'right', false),
    ],
    shownOn: null,
  };
};
