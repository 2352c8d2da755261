import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { runProgram } from '../program.ts';
import type { Ending, Surroundings } from '../surroundings.ts';

const installed = createRequire(import.meta.url);
const fonts = new Map<string, Promise<Uint8Array>>();

/** A folder that takes everything and a standard input that holds one text. */
const around = (text: string, written: Map<string, string | Uint8Array>): Surroundings => ({
  read: () => Promise.resolve(text),
  write: async (files) => {
    for (const [path, content] of files) written.set(path, content);
    return null;
  },
  font: (file) => {
    const read = fonts.get(file) ?? readFile(installed.resolve(file));
    fonts.set(file, read);
    return read;
  },
  random: () => 0.5,
  today: () => '2031-01-13',
  colours: false,
});

const FEW = ['--draws', '1000'];

type Line = readonly string[];

/** Every command that reads a record, as it is typed. */
export const QUICK: readonly Line[] = [
  ['forecast', '-', ...FEW],
  ['forecast', '-', '--json', '--units', 'cm', ...FEW],
  ['routes', '-', ...FEW],
  ['routes', '-', '--json', ...FEW],
  ['pace', '-', '--calendar', 'pace.ics'],
  ['pace', '-', '--json'],
  ['counts', '-'],
  ['counts', '-', '--json'],
  ['dry', '-', '--calendar', 'dry.ics'],
  ['dry', '-', '--json'],
  ['report', '-', '--with-body'],
  ['report', '-', '--html', 'report.html', '--pdf', 'report.pdf', '--markdown', 'report.md'],
  ['print', '-', '--blank', '--pdf', 'blank.pdf', '--svg', 'blank.svg'],
];

/** Those that plan pins, which takes them a second or so. */
export const PLANNING: readonly Line[] = [
  ['block', '-', '--svg', 'mat.svg'],
  ['block', '-', '--json', '--to-measure'],
  ['print', '-', '--pdf', 'mat.pdf', '--svg', 'mat-page.svg'],
  ['print', '-', '--full-size', '--pdf', 'outline.pdf', '--svg', 'outline.svg'],
];

export interface Complaint {
  readonly line: string;
  readonly what: string;
}

const NONSENSE = /\bNaN\b|\bInfinity\b|\bundefined\b|\[object |\bnull mm\b/;
/** Line feeds are ours, and carriage returns before them those of a calendar. */
const CONTROL =
  /[\p{Cc}\p{Zl}\p{Zp}\u061c\u200b\u202a-\u202e\u2060\u2066-\u2069\u{e0000}-\u{e007f}]/u;

/** Words of a text that nothing sensible says, but for those that the record itself has. */
const nonsenseIn = (said: string, given: string): string | null => {
  const control = CONTROL.exec(said.replace(/\r?\n/g, ''));
  if (control) return `a control character ${JSON.stringify(control[0])}`;
  const found = NONSENSE.exec(said);
  return found === null || given.includes(found[0])
    ? null
    : `“${said.slice(Math.max(0, found.index - 60), found.index + 30)}”`;
};

const IN_FILE = 'standard input: ';

/** That nothing dries is no fault of a record. */
const NO_DRYING = `${IN_FILE}dryings: the record has no drying. `;

/** Whether a line of a refusal is one of which `check` says that something waits for it. */
const isForetold = (line: string, check: Ending): boolean =>
  line.startsWith(NO_DRYING) ||
  (line.startsWith(IN_FILE) &&
    check.out.includes(` waits for this: ${line.slice(IN_FILE.length)}\n`));

/**
 * What is wrong with how a command ended on a record of which `check` said so much: one that is not sound
 * is refused with the same lines, a sound one for nothing that `check` does not name. One at the bounds may be more than a command can take on, and is told so by it.
 */
export const wrongWith = (
  ending: Ending,
  check: Ending,
  given: string,
  isAtBounds = false,
): string | null => {
  const told = `check says «${(check.out + check.err).slice(0, 300)}», this «${ending.err.slice(0, 300)}»`;
  if (ending.code === 2 && (ending.out !== '' || ending.err === ''))
    return `it failed and printed, or said nothing: ${told}`;
  if (check.code === 2 && (ending.code !== 2 || ending.err !== check.err)) return told;
  const lines = ending.code === 2 && check.code === 0 ? ending.err.trimEnd().split('\n') : [];
  const isFair = (line: string) =>
    isAtBounds ? line.startsWith(IN_FILE) : isForetold(line, check);
  if (!lines.every(isFair)) return told;
  return nonsenseIn(ending.out + ending.err, given);
};

const wrongInFiles = (
  written: ReadonlyMap<string, string | Uint8Array>,
  given: string,
): string | null => {
  for (const [path, content] of written) {
    const wrong = typeof content === 'string' ? nonsenseIn(content, given) : null;
    if (wrong !== null) return `${path}: ${wrong}`;
  }
  return null;
};

export interface Judged {
  readonly complaints: readonly Complaint[];
  readonly slowest: { readonly line: string; readonly ms: number };
  /** True where `check` finds no fault. */
  readonly sound: boolean;
}

/** Runs `check` and other commands on the text of a record: what is wrong with how they end. */
export const complaintsAbout = async (
  text: string,
  lines: readonly Line[],
  isAtBounds = false,
): Promise<Judged> => {
  const complaints: Complaint[] = [];
  let slowest = { line: '', ms: 0 };
  const run = async (line: Line, check: Ending | null): Promise<Ending | null> => {
    const written = new Map<string, string | Uint8Array>();
    const began = performance.now();
    let ending: Ending | null = null;
    let what: string | null;
    try {
      ending = await runProgram(line, around(text, written));
      what = wrongWith(ending, check ?? ending, text, isAtBounds) ?? wrongInFiles(written, text);
    } catch (error) {
      what = (error as Error).stack ?? String(error);
    }
    const ms = performance.now() - began;
    if (ms > slowest.ms) slowest = { line: line.join(' '), ms };
    if (what !== null) complaints.push({ line: line.join(' '), what });
    return ending;
  };
  const check = await run(['check', '-'], null);
  for (const line of lines) await run(line, check);
  return { complaints, slowest, sound: check?.code === 0 };
};
