import {
  type Basis,
  type Evidence,
  fabricPosterior,
  type Kept,
  keptShare,
} from '../fabric/index.ts';
import { type Posterior, posterior } from '../stats/index.ts';
import type { ForecastQuestion } from './forecast-types.ts';
import { passagesOf } from './passages.ts';
import { plannedEvidence } from './planned-evidence.ts';
import { type SizeModel, sizeModel } from './size-model.ts';
import { distinct } from './stands-on.ts';
import type { Passage } from './state-lengths.ts';

/** Everything that is inferred before a single draw is made. */
export interface Known {
  readonly model: SizeModel;
  readonly passages: readonly Passage[];
  readonly kept: Kept;
  readonly evidence: readonly Evidence[];
  readonly post: Posterior;
  readonly bases: readonly Basis[];
}

/** Two passes: evidence at rest first, then readings whose state depends on pins and hang. */
export const learn = (question: ForecastQuestion): Known => {
  const model = sizeModel(question);
  const kept = keptShare(question, question.specimens);
  const rest = posterior(model.fabric.unknowns.count, model.evidence);
  const hung = passagesOf(question, model, rest);
  const planned = plannedEvidence(question, model, hung.passages, kept, rest);
  const evidence = [...model.evidence, ...planned];
  const post = planned.length === 0 ? rest : fabricPosterior(model.fabric, evidence);
  const bases = distinct([
    ...evidence.map((e) => e.basis),
    ...kept.bases.filter((b) => question.drying === 'pin' || b.kind === 'measured'),
    ...hung.bases,
    ...model.fabric.priors,
  ]);
  return { model, passages: hung.passages, kept, evidence, post, bases };
};
