import {
  type Basis,
  type Evidence,
  fabricPosterior,
  type Kept,
  keptShare,
} from '../fabric/index.ts';
import { meanOf, type Posterior, posterior } from '../stats/index.ts';
import type { ForecastQuestion } from './forecast-types.ts';
import { overruledBy } from './overruled.ts';
import { passagesOf } from './passages.ts';
import { plannedEvidence } from './planned-evidence.ts';
import {
  logIn,
  NOTHING_OVERRULED,
  type Overruled,
  type SizeModel,
  sizeModel,
} from './size-model.ts';
import { distinct } from './stands-on.ts';
import type { Passage } from './state-lengths.ts';

/** Everything that is inferred before a single draw is made. */
export interface Known {
  readonly model: SizeModel;
  readonly passages: readonly Passage[];
  /** What each measures dried, at rest, by the evidence at rest: as heavy as that it hangs. */
  readonly restMm: readonly number[];
  readonly kept: Kept;
  readonly evidence: readonly Evidence[];
  /** What is known from one reading, by the name of its basis. */
  readonly evidenceOf: (basisId: string) => readonly Evidence[];
  readonly post: Posterior;
  readonly bases: readonly Basis[];
  /** What a tape on the garment has contradicted. */
  readonly overruled: Overruled;
}

/** Two passes: evidence at rest first, then readings whose state depends on pins and hang. */
const learnWith = (question: ForecastQuestion, overruled: Overruled): Known => {
  const model = sizeModel(question, overruled);
  const kept = keptShare(question, question.specimens);
  const rest = posterior(model.fabric.unknowns.count, model.evidence);
  const restMm = model.measurements.map((m) =>
    Math.exp(meanOf(rest, logIn(model.fabric, m.asKnit, m, 'dried'))),
  );
  const { chosen } = question;
  const hung = passagesOf(question, model)(restMm, { width: chosen, length: chosen });
  const planned = plannedEvidence(question, model, hung.passages, kept, rest);
  const evidence = [...model.evidence, ...planned];
  const post = planned.length === 0 ? rest : fabricPosterior(model.fabric, evidence);
  const bases = distinct([
    ...evidence.map((e) => e.basis),
    ...kept.bases.filter((b) => question.drying === 'pin' || b.kind === 'measured'),
    ...hung.bases,
    ...model.fabric.priors,
  ]);
  const { passages } = hung;
  const evidenceOf = byBasis(evidence);
  return { model, passages, restMm, kept, evidence, evidenceOf, post, bases, overruled };
};

const byBasis = (evidence: readonly Evidence[]): Known['evidenceOf'] => {
  const all = new Map<string, Evidence[]>();
  for (const each of evidence) {
    const these = all.get(each.basis.id);
    if (these === undefined) all.set(each.basis.id, [each]);
    else these.push(each);
  }
  return (id) => all.get(id) ?? [];
};

/** Learns from all the evidence; where a tape on the garment contradicts what was expected, the tape stands. */
export const learn = (question: ForecastQuestion): Known => {
  let known = learnWith(question, NOTHING_OVERRULED);
  for (;;) {
    const { model, evidence, post, overruled } = known;
    const more = overruledBy(model.measurements, evidence, post, overruled);
    if (more === null) return known;
    known = learnWith(question, more);
  }
};
