import { findLandmark, type GarmentKind, LANDMARKS_OF } from '@dryflat/engine/garment';

/** A place of the body, and how a tape goes there. Common practice, no source. */
export interface BodyPlace {
  readonly id: string;
  readonly name: string;
  readonly how: string;
}

const place = (id: string, name: string, how: string): BodyPlace => ({ id, name, how });

const PLACES: readonly BodyPlace[] = [
  place('chest', 'Chest or bust', 'Around the fullest part, tape level, arms hanging.'),
  place('waist', 'Waist', 'Around where the body bends to the side.'),
  place('hip', 'Hips', 'Around the widest part, feet together.'),
  place('cross-back', 'Across the back', 'From shoulder bone to shoulder bone, over the back.'),
  place('upper-arm', 'Upper arm', 'Around the thickest part, arm hanging loose.'),
  place('wrist', 'Wrist', 'Around, just above the bone.'),
  place(
    'back-length',
    'Back, neck to waist',
    'From the knob at the foot of the neck down to the waist.',
  ),
  place(
    'armhole-depth',
    'Armhole depth',
    'From the top of the shoulder straight down to the armpit.',
  ),
  place(
    'arm-length',
    'Arm, underarm to wrist',
    'Along the inside, arm a little away from the body.',
  ),
  place('head', 'Head', 'Around, above the ears and over the brow.'),
  place('hat-height', 'Head, height', 'From the brow or the ear up to the crown.'),
  place('foot', 'Foot, around', 'Around the ball of the foot, standing on it.'),
  place('foot-length', 'Foot, length', 'From heel to longest toe, standing on it.'),
  place('ankle', 'Ankle', 'Around, above the bones.'),
  place('hand', 'Hand, around', 'Around the palm above the thumb.'),
  place('hand-length', 'Hand, length', 'From the wrist to the tip of the middle finger.'),
];

const byId = new Map(PLACES.map((each) => [each.id, each]));

/** The place of that id; null for one that the knitter made up. */
export const findBodyPlace = (id: string): BodyPlace | null => byId.get(id) ?? null;

/** Measured first; everything else can be added. Common practice, no source. */
const FIRST = new Set([
  'chest',
  'hip',
  'upper-arm',
  'cross-back',
  'arm-length',
  'head',
  'foot',
  'foot-length',
  'hand',
  'hand-length',
]);

/** Places of the body that a kind of garment is compared with, those to measure first in front. */
export const bodyPlacesFor = (
  kind: GarmentKind,
): { readonly first: readonly string[]; readonly later: readonly string[] } => {
  const ids = [...new Set(LANDMARKS_OF[kind].flatMap((id) => findLandmark(id)?.body ?? []))];
  return { first: ids.filter((id) => FIRST.has(id)), later: ids.filter((id) => !FIRST.has(id)) };
};
