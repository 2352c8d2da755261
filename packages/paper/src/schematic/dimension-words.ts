import { findLandmark, type PieceName } from '@dryflat/engine/garment';
import { ownValue } from '@dryflat/engine/units';

export type Words = 'us' | 'uk';

/** Names short enough to stand beside a line; the full name is in the button's own name. */
const SHORT: Readonly<Record<string, string>> = {
  'body-length': 'to shoulder',
  'underarm-length': 'to underarm',
  'armhole-depth': 'armhole',
  'yoke-depth': 'yoke',
  'sleeve-length': 'sleeve',
  'front-neck-depth': 'front neck',
  'back-neck-depth': 'back neck',
  'neck-width': 'neck',
  'rib-depth': 'ribbing',
  'hat-height': 'height',
  span: 'top edge',
  depth: 'depth',
};

const SHORT_UK: Readonly<Record<string, string>> = { 'rib-depth': 'welt' };

export const fullName = (landmark: string, words: Words): string =>
  findLandmark(landmark)?.name[words] ?? landmark;

export const shortName = (landmark: string, words: Words): string =>
  (words === 'uk' ? ownValue(SHORT_UK, landmark) : undefined) ??
  ownValue(SHORT, landmark) ??
  fullName(landmark, words);

export const pieceCaption = (name: PieceName, copies: 1 | 2): string => {
  if (name === 'sleeve') return 'sleeve, folded';
  return name === 'front' && copies === 2 ? 'front, one of two' : name;
};

/** The three numbers of a dimension; null where there is none. All flat, in millimetres. */
export interface DimensionNumbers {
  readonly wanted: number | null;
  readonly p05: number | null;
  readonly p50: number | null;
  readonly p95: number | null;
}

/** `chest, flat: wanted 48.0 cm, forecast 45.1 cm to 47.2 cm, most likely 46.2 cm`. */
export const dimensionSentence = (
  landmark: string,
  numbers: DimensionNumbers,
  print: (mm: number) => string,
  words: Words,
): string => {
  const { wanted, p05, p50, p95 } = numbers;
  const flat = findLandmark(landmark)?.girth ? ', flat' : '';
  const parts = [
    ...(wanted === null ? [] : [`wanted ${print(wanted)}`]),
    ...(p05 === null || p95 === null ? [] : [`forecast ${print(p05)} to ${print(p95)}`]),
    ...(p50 === null ? [] : [`most likely ${print(p50)}`]),
  ];
  return `${fullName(landmark, words)}${flat}: ${parts.join(', ')}`;
};
