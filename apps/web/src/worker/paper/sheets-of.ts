import { planBlock } from '@dryflat/engine/blocking';
import { forecast } from '@dryflat/engine/garment';
import { ok, type Result } from '@dryflat/engine/units';
import {
  blankInput,
  type Faces,
  fullSize,
  measuringSheet,
  type PaperGiven,
  paperInput,
  planPage,
  reportHtml,
  reportMarkdown,
  reportOf,
  reportSheets,
  type Sheet,
} from '@dryflat/paper';
import { askForecast, type GarmentRecord, goingOut } from '@dryflat/record';
import { askBlockingWith } from '@dryflat/record/block';
import { SEED } from '../protocol.ts';
import type { PaperQuestion, ReportTexts } from './protocol.ts';

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

export interface Made {
  readonly sheets: readonly Sheet[];
  /** Of the file. */
  readonly title: string;
  readonly report: ReportTexts | null;
}

const reported = (question: PaperQuestion, faces: Faces): Result<Made> => {
  const { record, paper, units, words } = question;
  const made = reportOf(record);
  if (!made.ok) return made;
  const { title } = made.value;
  const telling = { units, words };
  return ok({
    sheets: reportSheets(made.value, { ...telling, paper, faces }),
    title,
    report: {
      title,
      html: reportHtml(made.value, telling),
      markdown: reportMarkdown(made.value, telling),
    },
  });
};

const forMat = (question: PaperQuestion, faces: Faces, hear: Hear): Result<readonly Sheet[]> => {
  const { record, what, paper, units, words, piece } = question;
  const options = { paper, units, words, faces };
  if (what === 'blank') return ok(measuringSheet(blankInput(record), options));
  const asked = askForecast(record);
  if (!asked.ok) return asked;
  const plan = planOf(question, hear);
  if (!plan.ok) return plan;
  // The same luck as the forecast on the screen: its numbers are those that are printed.
  const told = forecast(asked.value, { seed: SEED });
  const input = paperInput(record, { ...plan.value, forecast: told });
  if (!input.ok) return input;
  if (what === 'mat') return ok(planPage(input.value, options));
  return fullSize(input.value, piece === null ? options : { ...options, piece });
};

/** What is asked for. Takes the time of a plan of the mat, but for the blank sheet and the report. */
export const sheetsOf = (question: PaperQuestion, faces: Faces, hear: Hear): Result<Made> => {
  if (question.what === 'report') return reported(question, faces);
  const sheets = forMat(question, faces, hear);
  return sheets.ok
    ? ok({ sheets: sheets.value, title: goingOut(question.record).name, report: null })
    : sheets;
};
