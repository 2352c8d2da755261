import { fail, ok, type Result } from '@dryflat/engine/units';
import type { PageOptions, Report } from '@dryflat/paper';
import { refused } from '../faults.ts';
import { called, openRecord, save, written } from '../files.ts';
import { faultsIn, oneOf } from '../options.ts';
import { facesOf, NO_TIME, type Paper } from '../paper.ts';
import { done, type Ending, type NewFile, type Surroundings } from '../surroundings.ts';

/** Options as they are typed. */
export interface ReportFlags {
  readonly html?: string;
  readonly pdf?: string;
  readonly markdown?: string;
  readonly withBody?: boolean;
  readonly paper: string;
  readonly units: string;
  readonly words: string;
  readonly force?: boolean;
}

type Chosen = Omit<PageOptions, 'faces'>;

const notToFile = (option: string): Result<never> =>
  fail({
    code: 'option-unusable',
    field: option,
    given: '-',
    problem: 'it goes to a file, not to standard output',
    mend: 'Name a file; only --markdown goes to standard output.',
  });

const readFlags = (flags: ReportFlags): Result<Chosen> => {
  const paper = oneOf('--paper', flags.paper, ['a4', 'letter'] as const);
  const units = oneOf('--units', flags.units, ['cm', 'in'] as const);
  const words = oneOf('--words', flags.words, ['us', 'uk'] as const);
  const html = flags.html === '-' ? notToFile('--html') : ok(null);
  const pdf = flags.pdf === '-' ? notToFile('--pdf') : ok(null);
  if (paper.ok && units.ok && words.ok && html.ok && pdf.ok)
    return ok({ paper: paper.value, units: units.value, words: words.value });
  return fail(...faultsIn(paper, units, words, html, pdf));
};

const filesOf = async (
  report: Report,
  { html, pdf, markdown }: ReportFlags,
  chosen: Chosen,
  paper: Paper,
  surroundings: Surroundings,
): Promise<readonly NewFile[]> => {
  const files: NewFile[] = [];
  if (html !== undefined) files.push([html, paper.reportHtml(report, chosen)]);
  if (pdf !== undefined) {
    const faces = await facesOf(paper, surroundings);
    const sheets = paper.reportSheets(report, { ...chosen, faces });
    files.push([pdf, await paper.toPdf(sheets, { title: report.title, made: NO_TIME, faces })]);
  }
  if (markdown !== undefined && markdown !== '-')
    files.push([markdown, paper.reportMarkdown(report, chosen)]);
  return files;
};

/** `dryflat report FILE`: what the designer or the next knitter needs to know, as HTML, PDF and Markdown. */
export const reportCommand = async (
  path: string,
  flags: ReportFlags,
  surroundings: Surroundings,
): Promise<Ending> => {
  const chosen = readFlags(flags);
  if (!chosen.ok) return refused('dryflat report', chosen.faults);
  const opened = await openRecord(path, surroundings);
  if (!opened.ok) return refused(called(path), opened.faults, chosen.value.units);
  const paper = await import('@dryflat/paper');
  const body = flags.withBody ? { body: true } : {};
  const made = paper.reportOf(opened.value.record, body);
  if (!made.ok) return refused(called(path), made.faults, chosen.value.units);
  const files = await filesOf(made.value, flags, chosen.value, paper, surroundings);
  const unsaved = await save(files, flags, surroundings);
  if (unsaved) return unsaved;
  const printed = flags.markdown === '-' || files.length === 0;
  return done(
    printed ? paper.reportMarkdown(made.value, chosen.value) : '',
    written(files.map(([file]) => file)),
  );
};
