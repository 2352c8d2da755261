import { fail, type Grams, grams, ok, type Result } from '../units/index.ts';
import type { Fibre } from './fibre-names.ts';
import { FIBRE_FACTS, factsOf } from './fibres.ts';

/**
 * Regain is water over dry mass, content is water over dry plus water; both are fractions. A regain
 * is 0 or more, a content at least 0 and below 1; anything else throws a RangeError.
 */
const checkRegain = (regain: number): number => {
  if (!(regain >= 0 && Number.isFinite(regain))) throw new RangeError(`regain ${regain}`);
  return regain;
};

export const contentOfRegain = (regain: number): number => checkRegain(regain) / (1 + regain);

export const regainOfContent = (content: number): number => {
  if (!(content >= 0 && content < 1)) throw new RangeError(`moisture content ${content}`);
  return content / (1 - content);
};

/** Oven-dry mass of what weighs `mass` at that regain. */
export const dryMass = (mass: Grams, regain: number): Grams =>
  grams(mass / (1 + checkRegain(regain)));

/** The same yarn weighed at another regain: `mass · (1 + to) / (1 + from)`. */
export const massAtRegain = (mass: Grams, from: number, to: number): Grams =>
  grams(dryMass(mass, from) * (1 + checkRegain(to)));

/** Which column of the regain table is meant. */
export type RegainKind = 'commercial' | 'agreed' | 'real';

export interface FibreShare {
  readonly fibre: Fibre;
  /** Share of the mass, 0 to 1. */
  readonly share: number;
}

/** Labels round each share to a percent, so three fibres may miss the whole by 1.5 %. */
const SHARE_SLACK = 0.02;

const extremes = (kind: RegainKind) => {
  const known = FIBRE_FACTS.map((each) => each.regain[kind]).filter((each) => each !== null);
  return {
    low: Math.min(...known.map((each) => each.low)),
    high: Math.max(...known.map((each) => each.high)),
  };
};

const dryMean = (parts: readonly { readonly share: number; readonly regain: number }[]): number => {
  const dry = parts.reduce((sum, each) => sum + each.share / (1 + each.regain), 0);
  const whole = parts.reduce((sum, each) => sum + each.share, 0);
  return whole / dry - 1;
};

/**
 * Regain of a blend whose shares are shares of conditioned mass, as labels state them: the dry
 * masses add, and the water adds. A fibre with no figure of that kind counts as anywhere between the
 * lowest and the highest fibre of the table, so its range is wide. Shares that miss the whole by up
 * to 2 % are scaled to it (labels round); by more, or none, is a fault.
 */
export const blendRegain = (
  fibres: readonly FibreShare[],
  kind: RegainKind,
): Result<{ readonly low: number; readonly high: number }> => {
  const total = fibres.reduce((sum, { share }) => sum + share, 0);
  const bad = fibres.some(({ share }) => !(share > 0)) || Math.abs(total - 1) > SHARE_SLACK;
  if (bad)
    return fail({
      code: 'fibre-shares',
      field: 'fibres',
      given: fibres.map(({ fibre, share }) => `${fibre} ${share * 100} %`).join(', '),
      problem: 'the shares of the fibres do not add up to 100 %',
      mend: 'Give each fibre its percentage from the label, so that together they make 100.',
    });
  const at = (end: 'low' | 'high') =>
    dryMean(
      fibres.map(({ fibre, share }) => ({
        share,
        regain: (factsOf(fibre).regain[kind] ?? extremes(kind))[end],
      })),
    );
  return ok({ low: at('low'), high: at('high') });
};
