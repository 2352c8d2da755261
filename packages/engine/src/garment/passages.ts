import { type Basis, type FabricGive, fabricGive, hangingTube } from '../fabric/index.ts';
import { meanOf, type Posterior } from '../stats/index.ts';
import type { ForecastQuestion } from './forecast-types.ts';
import { garmentMass } from './garment-mass.ts';
import { hangShares } from './hang-shares.ts';
import { inSpan, logIn, type SizedMeasurement, type SizeModel } from './size-model.ts';
import type { Passage } from './state-lengths.ts';

/**
 * How every measurement passes from state to state: what it is pinned to, how far pins may stretch
 * it, and how far it hangs while worn under the garment's own weight.
 */
export const passagesOf = (
  question: ForecastQuestion,
  model: SizeModel,
  rest: Posterior,
): { readonly passages: readonly Passage[]; readonly bases: readonly Basis[] } => {
  const give = { width: fabricGive(question, 'width'), length: fabricGive(question, 'length') };
  const driedMm = (m: SizedMeasurement): number =>
    Math.exp(meanOf(rest, logIn(model.fabric, m.asKnit, m.wanted, 'dried')));
  const lengths = model.measurements.map(driedMm);
  const hang = hangs(question, model, lengths, give.length);
  const passages = model.measurements.map((m, k) => {
    const own = m.wanted.stitch === question.stitch ? give : giveOf(question, m);
    return {
      direction: m.wanted.direction,
      pinnedTo: pinnedTo(question, m),
      pinLimit: own[m.wanted.direction].strainAt(PIN_LOAD),
      hang: hang.strains[k] ?? 0,
      hangLogSd: give.length.logSd,
    };
  });
  return { passages, bases: hang.bases };
};

/** Line load that pinning by hand is trusted with, N/mm: the middle of the measured table. Assumption. */
const PIN_LOAD = 0.1;

type Gives = Readonly<Record<'width' | 'length', FabricGive>>;

const giveOf = (question: ForecastQuestion, m: SizedMeasurement): Gives => {
  const other = { ...question, stitch: m.wanted.stitch };
  return { width: fabricGive(other, 'width'), length: fabricGive(other, 'length') };
};

/** Ribbing is left to draw in; a length that was pinned and measured counts as what it is pinned to. */
const pinnedTo = (question: ForecastQuestion, m: SizedMeasurement): number | null => {
  if (question.drying !== 'pin') return null;
  const said = question.pinTo.find((p) => p.measurement === m.wanted.id);
  if (said !== undefined) return said.value;
  const seen = m.measured.findLast((x) => x.state === 'pinned');
  if (seen !== undefined) return inSpan(seen, m.wanted.span);
  return m.wanted.stitch === 'rib-1x1' ? null : m.targetMm;
};

const hangs = (
  question: ForecastQuestion,
  model: SizeModel,
  lengths: readonly number[],
  give: FabricGive,
): { strains: readonly number[]; bases: readonly Basis[] } => {
  const lengthOf = (landmark: string): number | null => {
    const at = model.measurements.findIndex((m) => m.wanted.landmark === landmark);
    return at < 0 ? null : (lengths[at] ?? null);
  };
  const mass = garmentMass(question, lengthOf);
  const girth = lengthOf('chest');
  if (mass === null || girth === null) return { strains: [], bases: [] };
  const strains = model.measurements.map((m) => {
    const share = hangShares(question.kind, m.wanted.landmark);
    if (share === null) return 0;
    const tube = hangingTube(give, {
      hung: mass.grams * share.own,
      below: mass.grams * share.below,
      girthMm: girth * share.girth,
    });
    return m.wanted.direction === 'length' ? tube.longer : tube.narrower;
  });
  return { strains, bases: [...mass.bases, ...give.bases] };
};
