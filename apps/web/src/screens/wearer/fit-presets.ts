import { EASE_CLASSES, findLandmark } from '@dryflat/engine/garment';

/** A ready range of ease over the body, in millimetres; negative where it stretches. */
export interface FitPreset {
  readonly id: string;
  readonly label: string;
  readonly minMm: number;
  readonly maxMm: number;
}

export interface Presets {
  readonly presets: readonly FitPreset[];
  /** Where they come from; lengths are `{mm:…}` tokens. */
  readonly from: string;
}

const preset = (id: string, label: string, minMm: number, maxMm: number): FitPreset => ({
  id,
  label,
  minMm,
  maxMm,
});

/** The guide leaves its ends open; a range needs both, so these close them. Ours, no source. */
const TIGHTEST = -4 * 25.4;
const WIDEST = 10 * 25.4;

const ofTheGuide = EASE_CLASSES.filter(({ edition }) => edition === 'older').map((each) =>
  preset(
    each.name.replaceAll(' ', '-'),
    each.name.charAt(0).toUpperCase() + each.name.slice(1),
    each.low ?? TIGHTEST,
    each.high ?? WIDEST,
  ),
);

const TRUNK: Presets = {
  presets: ofTheGuide,
  from: `Ranges of ease at the chest from the craft council's guide, from memory. The guide leaves both ends open; here they stop at {mm:${TIGHTEST}} and {mm:${WIDEST}}.`,
};

const ARM: Presets = {
  presets: [
    preset('close', 'Close', 0, 30),
    preset('easy', 'Easy', 30, 80),
    preset('roomy', 'Roomy', 80, 160),
  ],
  from: 'Common practice, no source.',
};

/** Shares of the girth: what hugs a head or a foot stretches with it. */
const hugging = (bodyMm: number): Presets => ({
  presets: [
    preset('snug', 'Snug', -0.12 * bodyMm, -0.06 * bodyMm),
    preset('gentle', 'Just holds', -0.06 * bodyMm, 0),
    preset('loose', 'Loose', 0, 0.08 * bodyMm),
  ],
  from: 'Common practice, no source: snug is 6 to 12 % smaller than the body.',
});

const FROM_THE_WAIST: Presets = {
  presets: [
    preset('to-waist', 'To the waist', -20, 30),
    preset('to-high-hip', 'To the top of the hips', 70, 130),
    preset('to-hip', 'Over the hips', 130, 210),
    preset('tunic', 'To the thigh', 210, 350),
  ],
  from: 'Common practice for grown bodies, no source. Counted from the waist.',
};

const ALONG: Presets = {
  presets: [
    preset('shorter', 'Shorter', -60, -15),
    preset('as-body', 'As the body', -15, 15),
    preset('longer', 'Longer', 15, 60),
  ],
  from: 'Common practice, no source.',
};

/** Used until the body is measured, so that the choice can be made first. Adult, from memory. */
const NOMINAL: Readonly<Record<string, number>> = { head: 560, foot: 230, ankle: 220, hand: 190 };

/** Ready ranges of ease at a landmark; none where no part of the body sets it. */
export const presetsFor = (landmark: string, bodyMm: number | null): Presets => {
  const body = findLandmark(landmark)?.body ?? null;
  if (body === null) return { presets: [], from: '' };
  if (['chest', 'waist', 'hip'].includes(body)) return TRUNK;
  if (['upper-arm', 'wrist'].includes(body)) return ARM;
  const nominal = NOMINAL[body];
  if (nominal !== undefined) return hugging(bodyMm ?? nominal);
  return body === 'back-length' ? FROM_THE_WAIST : ALONG;
};

/** The preset of exactly this range, to half a millimetre (far below a tape's mark); null for one's own. */
export const presetOf = (
  presets: readonly FitPreset[],
  range: { readonly minMm: number; readonly maxMm: number },
): FitPreset | null =>
  presets.find(
    ({ minMm, maxMm }) =>
      Math.abs(minMm - range.minMm) < 0.5 && Math.abs(maxMm - range.maxMm) < 0.5,
  ) ?? null;
