import type { Direction } from '../fabric/index.ts';
import type { GarmentKind } from './kinds.ts';

/**
 * A place on a garment that is measured.
 *
 * - `girth`: the place goes around something, so a number may be meant flat or around and the
 *   knitter has to say which. Lengths and one-layer widths have no such doubt.
 * - `body`: the body measurement that it is compared with to give ease; null where there is none.
 * - `worked`: how patterns usually reach it: `counted` (a number of stitches or rows fixes it) or
 *   `to-length` (knit until a tape says so).
 */
export interface Landmark {
  readonly id: string;
  readonly direction: Direction;
  readonly girth: boolean;
  readonly body: string | null;
  readonly worked: 'counted' | 'to-length';
  /** Name in American and in British words of the craft. */
  readonly name: { readonly us: string; readonly uk: string };
}

const landmark = (
  id: string,
  direction: Direction,
  girth: boolean,
  body: string | null,
  worked: 'counted' | 'to-length',
  us: string,
  uk: string = us,
): Landmark => ({ id, direction, girth, body, worked, name: { us, uk } });

export const LANDMARKS: readonly Landmark[] = [
  landmark('chest', 'width', true, 'chest', 'counted', 'chest'),
  landmark('waist', 'width', true, 'waist', 'counted', 'waist'),
  landmark('hip', 'width', true, 'hip', 'counted', 'hip'),
  landmark('hem', 'width', true, 'hip', 'counted', 'hem'),
  landmark('cross-back', 'width', false, 'cross-back', 'counted', 'cross back'),
  landmark('neck-width', 'width', false, null, 'counted', 'neck width'),
  landmark('upper-arm', 'width', true, 'upper-arm', 'counted', 'upper arm'),
  landmark('cuff', 'width', true, 'wrist', 'counted', 'cuff'),
  landmark(
    'body-length',
    'length',
    false,
    'back-length',
    'to-length',
    'body length, hem to shoulder',
  ),
  landmark('underarm-length', 'length', false, null, 'to-length', 'body length, hem to underarm'),
  landmark('armhole-depth', 'length', false, 'armhole-depth', 'to-length', 'armhole depth'),
  landmark('yoke-depth', 'length', false, 'armhole-depth', 'counted', 'yoke depth'),
  landmark(
    'sleeve-length',
    'length',
    false,
    'arm-length',
    'to-length',
    'sleeve length to underarm',
  ),
  landmark('front-neck-depth', 'length', false, null, 'counted', 'front neck depth'),
  landmark('back-neck-depth', 'length', false, null, 'counted', 'back neck depth'),
  landmark('rib-depth', 'length', false, null, 'to-length', 'ribbing depth', 'rib depth (welt)'),
  landmark('brim', 'width', true, 'head', 'counted', 'brim'),
  landmark('hat-height', 'length', false, 'hat-height', 'to-length', 'hat height'),
  landmark('foot', 'width', true, 'foot', 'counted', 'foot'),
  landmark('foot-length', 'length', false, 'foot-length', 'to-length', 'foot length'),
  landmark('leg', 'width', true, 'ankle', 'counted', 'leg'),
  landmark('leg-length', 'length', false, null, 'to-length', 'leg length'),
  landmark('hand', 'width', true, 'hand', 'counted', 'hand'),
  landmark('hand-length', 'length', false, 'hand-length', 'to-length', 'hand length'),
  landmark('thumb', 'width', true, null, 'counted', 'thumb'),
  landmark('thumb-length', 'length', false, null, 'to-length', 'thumb length'),
  landmark('span', 'width', false, null, 'counted', 'top edge (span)'),
  landmark('depth', 'length', false, null, 'counted', 'depth at the centre'),
  landmark('width', 'width', false, null, 'counted', 'width'),
  landmark('length', 'length', false, null, 'to-length', 'length'),
];

const UPPER = [
  'chest',
  'waist',
  'hem',
  'body-length',
  'underarm-length',
  'neck-width',
  'front-neck-depth',
  'back-neck-depth',
  'rib-depth',
];
const SLEEVES = ['upper-arm', 'cuff', 'sleeve-length'];
const SET_IN = [...UPPER, 'cross-back', 'armhole-depth'];
const DROP = [...UPPER, ...SLEEVES, 'armhole-depth'];
const YOKE = [...UPPER, ...SLEEVES, 'yoke-depth'];

/** Landmarks offered for each kind, in the order they are asked for. Others may always be added. */
export const LANDMARKS_OF: Readonly<Record<GarmentKind, readonly string[]>> = {
  'pullover-drop-shoulder': DROP,
  'pullover-set-in': [...SET_IN, ...SLEEVES],
  'pullover-raglan': YOKE,
  'pullover-yoke': YOKE,
  'cardigan-drop-shoulder': DROP,
  'cardigan-set-in': [...SET_IN, ...SLEEVES],
  'cardigan-raglan': YOKE,
  'cardigan-yoke': YOKE,
  vest: SET_IN,
  top: [...SET_IN, 'upper-arm'],
  hat: ['brim', 'hat-height', 'rib-depth'],
  sock: ['foot', 'foot-length', 'leg', 'leg-length', 'rib-depth'],
  mitten: ['hand', 'hand-length', 'cuff', 'thumb', 'thumb-length', 'rib-depth'],
  'shawl-triangle': ['span', 'depth'],
  'shawl-rectangle': ['width', 'length'],
  'shawl-half-round': ['span', 'depth'],
  blanket: ['width', 'length'],
  other: ['width', 'length'],
};

/** Parts of a garment that are knit and handled each by itself. */
export type PartName = 'body' | 'sleeve';

const SLEEVE_LANDMARKS: ReadonlySet<string> = new Set(SLEEVES);

/** The part that a landmark is measured on. */
export const partOf = (landmark: string): PartName =>
  SLEEVE_LANDMARKS.has(landmark) ? 'sleeve' : 'body';

const byId = new Map(LANDMARKS.map((each) => [each.id, each]));

/** The landmark of that id, or null for one that the knitter made up. */
export const findLandmark = (id: string): Landmark | null => byId.get(id) ?? null;

/** Lengths that end in a point, which one pin holds. How far that goes is no matter of load over width. */
const TO_POINTS: Readonly<Partial<Record<GarmentKind, readonly string[]>>> = {
  'shawl-triangle': ['span', 'depth'],
  'shawl-half-round': ['span'],
};

export const endsInPoints = (kind: GarmentKind, landmark: string): boolean =>
  TO_POINTS[kind]?.includes(landmark) ?? false;
