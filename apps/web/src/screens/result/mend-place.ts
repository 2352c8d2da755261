import type { PlaceName } from '../../shell/place-names.ts';

/** Which place of the garment holds the field that a fault names. */
const PLACE_OF: readonly (readonly [RegExp, PlaceName])[] = [
  [/^(wearer|people)\b/, 'wearer'],
  [/^(pattern|kind)\b/, 'pattern'],
  [/^(yarns|left|stock|massG|needleMm|stitch)\b/, 'yarn'],
  [/^(evidence|weighed)\b/, 'evidence'],
  [/^pieces\b/, 'pieces'],
  [/^instructions\b/, 'counts'],
  [/^(outcomes|notes|forecasts)\b/, 'after'],
  [/^report\b/, 'report'],
  [/^(dryings|finished)\b/, 'dry'],
  [/^(plan\.)?weights\b/, 'routes'],
  [/^(pace|progress|plan\.finishBy|from|by|hours|away|log)\b/, 'pace'],
  [/^plan\b/, 'forecast'],
];

/** The place where a field is mended; the pattern where nothing tells. */
export const placeOfField = (field: string): PlaceName =>
  PLACE_OF.find(([path]) => path.test(field))?.[1] ?? 'pattern';

export const PLACE_LABELS: Readonly<Record<PlaceName, string>> = {
  forecast: 'Forecast',
  wearer: 'Wearer',
  pattern: 'Pattern',
  yarn: 'Yarn',
  evidence: 'Evidence',
  routes: 'Routes',
  counts: 'Counts',
  pieces: 'Pieces',
  pace: 'Pace',
  mat: 'Mat',
  pinning: 'Pinning',
  dry: 'Dry',
  after: 'After',
  paper: 'Paper',
  report: 'Report',
};
