/** Words of the engine's sentences in British use; they are written in American but for `fibre`. */
const BRITISH: readonly (readonly [RegExp, string])[] = [
  [/\bbound-off edge\b/g, 'cast-off edge'],
  [/\bbound off\b/g, 'cast off'],
  [/\bbind off\b/g, 'cast off'],
  [/\bseed stitch\b/g, 'moss stitch'],
  [/\bstockinette\b/g, 'stocking stitch'],
  [/\bswatch\b/g, 'tension square'],
  [/\bSwatch\b/g, 'Tension square'],
  [/\bgauge\b/g, 'tension'],
  [/\bGauge\b/g, 'Tension'],
  [/\bColors\b/g, 'Colours'],
  [/\bcolors\b/g, 'colours'],
  [/\bmold\b/g, 'mould'],
];
const AMERICAN: readonly (readonly [RegExp, string])[] = [
  [/\bfibre\b/g, 'fiber'],
  [/\bFibre\b/g, 'Fiber'],
];

/** A sentence of the engine in the reader's English; not for texts that the knitter wrote. */
export const inWords = (sentence: string, words: 'us' | 'uk'): string =>
  (words === 'uk' ? BRITISH : AMERICAN).reduce(
    (text, [from, to]) => text.replace(from, to),
    sentence,
  );
