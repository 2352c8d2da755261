import type { GarmentKind } from '../kinds.ts';
import { LANDMARKS_OF } from '../landmarks.ts';

/** Words of the trade for each landmark, American and British; the first that matches wins. */
const WORDS: readonly (readonly [RegExp, string])[] = [
  [/\bback neck (?:depth|drop)|\bneck depth\b.*\bback\b/, 'back-neck-depth'],
  [
    /\b(?:front neck|neck(?:line)?) (?:depth|drop)|\bneck depth\b.*\bfront\b|depth of front neck/,
    'front-neck-depth',
  ],
  [
    /\b(?:neck|back neck|neckline) (?:width|opening)|\bwidth of (?:back )?neck|\bback neck\b/,
    'neck-width',
  ],
  [
    /\b(?:cross|x)[- ]?back|\bacross (?:the )?back|\bback width\b|\bshoulder to shoulder/,
    'cross-back',
  ],
  [/\barm ?hole|\barmscye|\bscye\b/, 'armhole-depth'],
  [/\byoke\b/, 'yoke-depth'],
  [
    /\bsleeve (?:seam|length)|\bunderarm seam|\blength of sleeve|\barm length|\bsleeve to underarm/,
    'sleeve-length',
  ],
  [
    /\bupper (?:arm|sleeve)|\bbiceps?\b|\bsleeve (?:width|circumference|top)|\btop of sleeve|\barm circumference/,
    'upper-arm',
  ],
  [
    /\b(?:rib|ribbing|welt|hem|border|band) (?:depth|height|length)|\bdepth of (?:rib|welt)|\b(?:rib|ribbing|welt)\b/,
    'rib-depth',
  ],
  [/\bthumb\b.*\blength|\blength of thumb/, 'thumb-length'],
  [/\bthumb\b/, 'thumb'],
  [/\bhand\b.*\blength|\blength of hand/, 'hand-length'],
  [/\bhand\b|\bpalm\b/, 'hand'],
  [/\bfoot\b.*\blength|\blength of foot|\bsole length/, 'foot-length'],
  [/\bfoot\b|\bball of foot/, 'foot'],
  [/\bleg\b.*\b(?:length|height)|\blength of leg/, 'leg-length'],
  [/\bleg\b|\bankle\b|\bcalf\b/, 'leg'],
  [/\bcuff\b|\bwrist\b/, 'cuff'],
  [/\bbust\b|\bchest\b/, 'chest'],
  [
    /\b(?:length|side)\b.*\b(?:to|from) (?:the )?(?:underarm|armpit)|\bside (?:seam|length)|\bunderarm (?:length|to hem)|\b(?:underarm|armpit) to (?:hem|lower)/,
    'underarm-length',
  ],
  [
    /\b(?:body|back|full|total|centre back|center back|front) length|\blength (?:from|at)\b.*\b(?:shoulder|back|neck)|\b(?:shoulder|nape|neck) to (?:hem|lower)|\bhem to (?:shoulder|neck)/,
    'body-length',
  ],
  [/\bwaist\b/, 'waist'],
  [/\bhem\b|\blower edge|\bbottom edge|\bcast[- ]on edge/, 'hem'],
  [/\bhips?\b/, 'hip'],
  [/\bbrim\b|\bhead\b|\bhat circumference/, 'brim'],
  [/\b(?:hat|crown|cap) (?:height|depth|length)/, 'hat-height'],
  [/\bwing ?span|\btop edge|\bspan\b|\blong(?:est)? edge/, 'span'],
  [/^ *sleeves? *$/, 'sleeve-length'],
];

const UPPER = /^(?:pullover|cardigan|vest|top)/;
/** Words that mean different places on different garments. */
const BY_KIND: readonly (readonly [RegExp, RegExp, string])[] = [
  [/\blength\b|\blong\b/, UPPER, 'body-length'],
  [/\bheight\b|\bdepth\b|\blength\b/, /^hat$/, 'hat-height'],
  [/\bcircumference\b|\bwidth\b/, /^hat$/, 'brim'],
  [/\blength\b/, /^sock$/, 'foot-length'],
  [/\bcircumference\b|\bwidth\b/, /^sock$/, 'foot'],
  [/\blength\b/, /^mitten$/, 'hand-length'],
  [/\bcircumference\b|\bwidth\b/, /^mitten$/, 'hand'],
  [/\bdepth\b|\bheight\b|\blength\b/, /^shawl-(?:triangle|half-round)$/, 'depth'],
  [/\bwidth\b|\bwide\b/, /^shawl-(?:triangle|half-round)$/, 'span'],
  [/\bwidth\b|\bwide\b/, /^(?:shawl-rectangle|blanket|other)$/, 'width'],
  [/\blength\b|\blong\b/, /^(?:shawl-rectangle|blanket|other)$/, 'length'],
];

/** The landmark that a name most likely means, `custom` where no word of it is known. */
export function guessLandmark(name: string, kind: GarmentKind | undefined): string {
  const words = name.toLowerCase().replace(/[^\p{L}\p{N}]+/gu, ' ');
  const matches = WORDS.filter(([pattern]) => pattern.test(words)).map(([, id]) => id);
  const offered: readonly string[] = kind ? LANDMARKS_OF[kind] : [];
  const known = matches.find((id) => offered.includes(id)) ?? matches[0];
  if (known) return known;
  const byKind = BY_KIND.find(([word, kinds]) => word.test(words) && kinds.test(kind ?? ''));
  return byKind?.[2] ?? 'custom';
}
