import type { GarmentKind } from '@dryflat/engine/garment';

/** Names of kinds of garment: one word for both, or [American, British]. */
const NAMES: Readonly<Record<GarmentKind, string | readonly [string, string]>> = {
  'pullover-drop-shoulder': 'Pullover, drop shoulder',
  'pullover-set-in': 'Pullover, set-in sleeves',
  'pullover-raglan': 'Pullover, raglan',
  'pullover-yoke': 'Pullover, round yoke',
  'cardigan-drop-shoulder': 'Cardigan, drop shoulder',
  'cardigan-set-in': 'Cardigan, set-in sleeves',
  'cardigan-raglan': 'Cardigan, raglan',
  'cardigan-yoke': 'Cardigan, round yoke',
  vest: ['Vest', 'Slipover or waistcoat'],
  top: 'Top',
  hat: 'Hat',
  sock: 'Sock',
  mitten: 'Mitten',
  'shawl-triangle': 'Shawl, triangle',
  'shawl-rectangle': 'Shawl or scarf, rectangle',
  'shawl-half-round': 'Shawl, half round',
  blanket: 'Blanket',
  other: 'Something else',
};

export const kindName = (kind: GarmentKind, words: 'us' | 'uk'): string => {
  const name = NAMES[kind] ?? kind;
  return typeof name === 'string' ? name : name[words === 'us' ? 0 : 1];
};
