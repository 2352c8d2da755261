/** Kinds of garment that come with landmarks and an outline of their own. */
export const GARMENT_KINDS = [
  'pullover-drop-shoulder',
  'pullover-set-in',
  'pullover-raglan',
  'pullover-yoke',
  'cardigan-drop-shoulder',
  'cardigan-set-in',
  'cardigan-raglan',
  'cardigan-yoke',
  'vest',
  'top',
  'hat',
  'sock',
  'mitten',
  'shawl-triangle',
  'shawl-rectangle',
  'shawl-half-round',
  'blanket',
  'other',
] as const;

export type GarmentKind = (typeof GARMENT_KINDS)[number];
