/**
 * The scale of the stretch field, our own: from deep indigo over walnut to straw yellow in even steps of
 * lightness. Yellow against blue is what people with red and green blindness tell apart, and lightness
 * alone carries the order, after Nuñez, Anderton and Renslow 2018, PLoS ONE 13(7), e0199239. Worked out
 * in OKLab (B. Ottosson 2020, "A perceptual color space for image processing").
 */
const LIGHT = { from: 0.3, to: 0.9 };
/** Places in the plane of hue, a and b of OKLab: blue, nearly grey, yellow. */
const HUES = [
  [-0.015, -0.105],
  [0.012, -0.015],
  [-0.01, 0.135],
] as const;

export type Rgb = readonly [number, number, number];

const mix = (a: number, b: number, t: number): number => a + (b - a) * t;

const hueAt = (share: number): readonly [number, number] => {
  const [from, to, t] =
    share < 0.5 ? [HUES[0], HUES[1], share * 2] : [HUES[1], HUES[2], share * 2 - 1];
  return [mix(from[0], to[0], t), mix(from[1], to[1], t)];
};

/** OKLab to linear sRGB: the inverse matrices of the publication. */
const linearOf = (l: number, a: number, b: number): Rgb => {
  const L = (l + 0.3963377774 * a + 0.2158037573 * b) ** 3;
  const M = (l - 0.1055613458 * a - 0.0638541728 * b) ** 3;
  const S = (l - 0.0894841775 * a - 1.291485548 * b) ** 3;
  return [
    4.0767416621 * L - 3.3077115913 * M + 0.2309699292 * S,
    -1.2684380046 * L + 2.6097574011 * M - 0.3413193965 * S,
    -0.0041960863 * L - 0.7034186147 * M + 1.707614701 * S,
  ];
};

/** Transfer function of sRGB, IEC 61966-2-1. */
const encoded = (v: number): number =>
  v <= 0.0031308 ? 12.92 * Math.max(0, v) : Math.min(1, 1.055 * v ** (1 / 2.4) - 0.055);

/** Colour of a share of the stretch there is, 0 to 1 (clamped): sRGB, 0 to 1 each. */
export const stretchColour = (share: number): Rgb => {
  const t = Math.min(1, Math.max(0, share));
  const [r, g, b] = linearOf(mix(LIGHT.from, LIGHT.to, t), ...hueAt(t));
  return [encoded(r), encoded(g), encoded(b)];
};

export const cssColour = (share: number): string =>
  `rgb(${stretchColour(share)
    .map((v) => Math.round(255 * v))
    .join(' ')})`;

/** The scale as a strip, for a legend. */
export const cssRamp = (steps = 16): string =>
  `linear-gradient(90deg, ${Array.from({ length: steps + 1 }, (_, i) => cssColour(i / steps)).join(', ')})`;

/** The scale as a row of pixels, RGBA. */
export const rampPixels = (size = 256): Uint8Array =>
  Uint8Array.from({ length: 4 * size }, (_, k) =>
    k % 4 === 3 ? 255 : Math.round(255 * stretchColour((k >> 2) / (size - 1))[k % 4]!),
  );
