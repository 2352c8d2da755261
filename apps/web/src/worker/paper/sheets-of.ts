import { planBlock } from '@dryflat/engine/blocking';
import { ok, type Result } from '@dryflat/engine/units';
import {
  blankInput,
  type Faces,
  fullSize,
  measuringSheet,
  type PaperGiven,
  paperInput,
  planPage,
  type Sheet,
} from '@dryflat/paper';
import type { GarmentRecord } from '@dryflat/record';
import { askBlockingWith } from '@dryflat/record/block';
import type { PaperQuestion } from './protocol.ts';

/** Hears the share of the plan that is done, 0 to 1. */
type Hear = (done: number) => void;

interface Kept {
  readonly key: string;
  readonly plan: Result<PaperGiven>;
}
/** The last plan: other paper, units or words ask for no other. */
let kept: Kept | null = null;

const planned = (record: GarmentRecord, gentle: boolean, hear: Hear): Result<PaperGiven> => {
  const asked = askBlockingWith(record, gentle);
  if (!asked.ok) return asked;
  const onStep = ({ done }: { done: number }): boolean => {
    hear(done);
    return true;
  };
  const made = planBlock(asked.value.question, { onStep });
  return made.ok ? ok({ plan: made.value, notices: asked.value.assumed }) : made;
};

const planOf = ({ record, gentle }: PaperQuestion, hear: Hear): Result<PaperGiven> => {
  const key = JSON.stringify([record, gentle]);
  if (kept?.key !== key) kept = { key, plan: planned(record, gentle, hear) };
  return kept.plan;
};

/** The sheets that are asked for. Takes the time of a plan of the mat, but for the blank sheet. */
export const sheetsOf = (
  question: PaperQuestion,
  faces: Faces,
  hear: Hear,
): Result<readonly Sheet[]> => {
  const { record, what, paper, units, words, piece } = question;
  const options = { paper, units, words, faces };
  if (what === 'blank') return ok(measuringSheet(blankInput(record), options));
  const plan = planOf(question, hear);
  if (!plan.ok) return plan;
  const input = paperInput(record, plan.value);
  if (!input.ok) return input;
  if (what === 'mat') return ok(planPage(input.value, options));
  return fullSize(input.value, piece === null ? options : { ...options, piece });
};
