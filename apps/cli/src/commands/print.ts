import { planBlock } from '@dryflat/engine/blocking';
import { fail, ok, type Result } from '@dryflat/engine/units';
import type { PageOptions, PaperName, Sheet } from '@dryflat/paper';
import { type GarmentRecord, goingOut } from '@dryflat/record';
import { askBlockingWith } from '@dryflat/record/block';
import { refused, type Units } from '../faults.ts';
import { called, openRecord, save, written } from '../files.ts';
import { faultsIn, oneOf } from '../options.ts';
import { facesOf, NO_TIME, type Paper } from '../paper.ts';
import type { Words } from '../print/words.ts';
import { done, type Ending, type Surroundings } from '../surroundings.ts';

/** Options as they are typed. */
export interface PrintFlags {
  readonly pdf?: string;
  readonly svg?: string;
  readonly fullSize?: boolean;
  readonly piece?: string;
  readonly blank?: boolean;
  readonly paper: string;
  readonly units: string;
  readonly words: string;
  readonly force?: boolean;
  readonly toMeasure?: boolean;
}

interface Chosen {
  readonly paper: PaperName;
  readonly units: Units;
  readonly words: Words;
}

const unusable = (field: string, problem: string, mend: string): Result<never> =>
  fail({ code: 'option-unusable', field, given: '', problem, mend });

/** What the options say of each other. */
const together = ({ pdf, svg, fullSize, piece, blank }: PrintFlags): Result<null> => {
  if (pdf === undefined && svg === undefined)
    return unusable('--pdf', 'no file is named to print to', 'Add --pdf FILE, --svg FILE or both.');
  if (pdf === '-' || svg === '-')
    return unusable('--pdf', 'pages go to a file, not to standard output', 'Name a file.');
  if (fullSize && blank)
    return unusable('--blank', 'it goes with no other page', 'Leave out --full-size or --blank.');
  if (piece !== undefined && !fullSize)
    return unusable('--piece', 'only a full-size drawing is of one piece', 'Add --full-size.');
  return ok(null);
};

const readFlags = (flags: PrintFlags): Result<Chosen> => {
  const paper = oneOf('--paper', flags.paper, ['a4', 'letter'] as const);
  const units = oneOf('--units', flags.units, ['cm', 'in'] as const);
  const words = oneOf('--words', flags.words, ['us', 'uk'] as const);
  const joined = together(flags);
  if (paper.ok && units.ok && words.ok && joined.ok)
    return ok({ paper: paper.value, units: units.value, words: words.value });
  return fail(...faultsIn(paper, units, words, joined));
};

const planned = (record: GarmentRecord, gentle: boolean) => {
  const asked = askBlockingWith(record, gentle);
  if (!asked.ok) return asked;
  const made = planBlock(asked.value.question);
  return made.ok ? ok({ plan: made.value, notices: asked.value.assumed }) : made;
};

const sheetsOf = (
  record: GarmentRecord,
  flags: PrintFlags,
  options: PageOptions,
  paper: Paper,
): Result<readonly Sheet[]> => {
  if (flags.blank) return ok(paper.measuringSheet(paper.blankInput(record), options));
  const plan = planned(record, !(flags.toMeasure ?? false));
  if (!plan.ok) return plan;
  const input = paper.paperInput(record, plan.value);
  if (!input.ok) return input;
  if (!flags.fullSize) return ok(paper.planPage(input.value, options));
  const { piece } = flags;
  return paper.fullSize(input.value, piece === undefined ? options : { ...options, piece });
};

/** `out.svg` for one sheet; `out-1.svg`, `out-2.svg` and so on for more. */
const svgPaths = (path: string, count: number): string[] => {
  if (count === 1) return [path];
  const [, stem = path, ending = ''] = /^(.+?)(\.[^./\\]+)?$/.exec(path) ?? [];
  return Array.from({ length: count }, (_, k) => `${stem}-${k + 1}${ending}`);
};

const pages = (count: number) => `${count} page${count === 1 ? '' : 's'}`;

/** `dryflat print FILE`: the page for the mat, a full-size outline or a sheet to fill in, as PDF and SVG. */
export const printCommand = async (
  path: string,
  flags: PrintFlags,
  surroundings: Surroundings,
): Promise<Ending> => {
  const chosen = readFlags(flags);
  if (!chosen.ok) return refused('dryflat print', chosen.faults);
  const opened = await openRecord(path, surroundings);
  if (!opened.ok) return refused(called(path), opened.faults, chosen.value.units);
  const { record } = opened.value;
  const paper = await import('@dryflat/paper');
  const faces = await facesOf(paper, surroundings);
  const made = sheetsOf(record, flags, { ...chosen.value, faces }, paper);
  if (!made.ok) return refused(called(path), made.faults, chosen.value.units);
  const sheets = made.value;
  const about = { title: goingOut(record).name, made: NO_TIME, faces };
  const svg = flags.svg === undefined ? [] : svgPaths(flags.svg, sheets.length);
  const files = [
    ...(flags.pdf === undefined ? [] : [[flags.pdf, await paper.toPdf(sheets, about)] as const]),
    ...svg.map((file, k) => [file, paper.toSvg(sheets[k]!)] as const),
  ];
  const unsaved = await save(files, flags, surroundings);
  if (unsaved) return unsaved;
  const names = [
    ...(flags.pdf === undefined ? [] : [flags.pdf]),
    ...(svg.length === 0 ? [] : [svg.length === 1 ? svg[0]! : `${svg[0]} to ${svg.at(-1)}`]),
  ];
  return done('', written([names.join(' and ')], `${pages(sheets.length)} written`));
};
