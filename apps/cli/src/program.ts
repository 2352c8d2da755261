import { markedText } from '@dryflat/record';
import { Command, CommanderError } from 'commander';
import about from '../package.json' with { type: 'json' };
import { type BlockFlags, blockCommand } from './commands/block.ts';
import { checkCommand } from './commands/check.ts';
import { type CountsFlags, countsCommand } from './commands/counts.ts';
import { type DryFlags, dryCommand } from './commands/dry.ts';
import { exampleCommand } from './commands/example.ts';
import { type ForecastFlags, forecastCommand } from './commands/forecast.ts';
import type { OutputFlags } from './commands/give.ts';
import { type NewFlags, newCommand } from './commands/new.ts';
import { type PaceFlags, paceCommand } from './commands/pace.ts';
import { type PrintFlags, printCommand } from './commands/print.ts';
import { type ReportFlags, reportCommand } from './commands/report.ts';
import { type RoutesFlags, routesCommand } from './commands/routes.ts';
import { schemaCommand } from './commands/schema.ts';
import {
  BLOCK,
  CHECK,
  COUNTS,
  DRY,
  EXAMPLE,
  FORECAST,
  NEW,
  OVERVIEW,
  PACE,
  PRINT,
  REPORT,
  ROUTES,
  SCHEMA,
} from './help/pages.ts';
import type { Ending, Surroundings } from './surroundings.ts';

type Finish = (ending: Ending) => void;

const addForecast = (program: Command, surroundings: Surroundings, finish: Finish) =>
  program
    .command('forecast')
    .argument('<FILE>', 'a garment record, or - for standard input')
    .summary('what it will measure in each state, and how it will fit')
    .description(FORECAST.trim())
    .option('--json', 'one JSON object instead of the table')
    .option('--units <cm|in>', 'unit of the printed lengths', 'cm')
    .option('--words <us|uk>', 'American or British words of the craft', 'us')
    .option('--size <LABEL>', 'another of the pattern’s sizes than the one being knit')
    .option('--seed <N>', 'start of the random draws', '1')
    .option('--draws <N>', 'number of random draws', '10000')
    .action(async (file: string, flags: ForecastFlags) =>
      finish(await forecastCommand(file, flags, surroundings)),
    );

const addBlock = (program: Command, surroundings: Surroundings, finish: Finish) =>
  program
    .command('block')
    .argument('<FILE>', 'a garment record, or - for standard input')
    .summary('which pins where and in which order, and what pinning will not do')
    .description(BLOCK.trim())
    .option('--json', 'one JSON object instead of the list')
    .option('--svg <FILE>', 'a picture of the pieces on the mat, too')
    .option('--size <LABEL>', 'another of the pattern’s sizes than the one being knit')
    .option('--force', 'replace a picture that is there')
    .option('--to-measure', 'as far as the fabric goes, beyond what is called safe')
    .option('--units <cm|in>', 'unit of the printed lengths', 'cm')
    .option('--words <us|uk>', 'American or British words of the craft', 'us')
    .action(async (file: string, flags: BlockFlags) =>
      finish(await blockCommand(file, flags, surroundings)),
    );

const addPrint = (program: Command, surroundings: Surroundings, finish: Finish) =>
  program
    .command('print')
    .argument('<FILE>', 'a garment record, or - for standard input')
    .summary('pages to print: for the mat, at full size, or to fill in')
    .description(PRINT.trim())
    .option('--pdf <FILE>', 'write a PDF')
    .option('--svg <FILE>', 'write SVG, a file for each page')
    .option('--full-size', 'the outline at 1:1, tiled over sheets to tape together')
    .option('--piece <NAME>', 'with --full-size: this piece only')
    .option('--blank', 'a measuring sheet to fill in by pencil')
    .option('--paper <a4|letter>', 'size of the paper', 'a4')
    .option('--units <cm|in>', 'unit of the printed lengths', 'cm')
    .option('--words <us|uk>', 'American or British words of the craft', 'us')
    .option('--to-measure', 'pins as far as the fabric goes, beyond what is called safe')
    .option('--force', 'replace files that are there')
    .action(async (file: string, flags: PrintFlags) =>
      finish(await printCommand(file, flags, surroundings)),
    );

const addDry = (program: Command, surroundings: Surroundings, finish: Finish) =>
  program
    .command('dry')
    .argument('<FILE>', 'a garment record, or - for standard input')
    .summary('when the last drying of a record is over, and when to look')
    .description(DRY.trim())
    .option('--json', 'one JSON object instead of the list')
    .option('--weighings <N>', 'as it stood after the first N weighings')
    .option('--calendar <FILE>', 'a calendar file (.ics) with a reminder for each look, too')
    .option('--force', 'replace a calendar file that is there')
    .action(async (file: string, flags: DryFlags) =>
      finish(await dryCommand(file, flags, surroundings)),
    );

const addCounts = (program: Command, surroundings: Surroundings, finish: Finish) =>
  program
    .command('counts')
    .argument('<FILE>', 'a garment record, or - for standard input')
    .summary('stitches and rows of every piece at your own gauge')
    .description(COUNTS.trim())
    .option('--json', 'one JSON object instead of the instructions')
    .option('--piece <NAME>', 'one piece only; a wrong one lists them all')
    .option('--size <LABEL>', 'another of the pattern’s sizes than the one being knit')
    .option('--units <cm|in>', 'unit of the printed lengths', 'cm')
    .option('--words <us|uk>', 'American or British words of the craft', 'us')
    .action(async (file: string, flags: CountsFlags) =>
      finish(await countsCommand(file, flags, surroundings)),
    );

const addReport = (program: Command, surroundings: Surroundings, finish: Finish) =>
  program
    .command('report')
    .argument('<FILE>', 'a garment record, or - for standard input')
    .summary('one page for the designer or for yourself')
    .description(REPORT.trim())
    .option('--html <FILE>', 'write HTML, photos and all in one file')
    .option('--pdf <FILE>', 'write a PDF')
    .option('--markdown <FILE>', 'write Markdown; - prints it, as without any of these')
    .option('--with-body', 'with body measurements and names of persons')
    .option('--paper <a4|letter>', 'size of the paper', 'a4')
    .option('--units <cm|in>', 'unit of the printed lengths', 'cm')
    .option('--words <us|uk>', 'American or British words of the craft', 'us')
    .option('--force', 'replace files that are there')
    .action(async (file: string, flags: ReportFlags) =>
      finish(await reportCommand(file, flags, surroundings)),
    );

const addRoutes = (program: Command, surroundings: Surroundings, finish: Finish) =>
  program
    .command('routes')
    .argument('<FILE>', 'a garment record, or - for standard input')
    .summary('what to do now, in hours, yarn and chance')
    .description(ROUTES.trim())
    .option('--json', 'one JSON object instead of the list')
    .option('--size <LABEL>', 'another of the pattern’s sizes than the one being knit')
    .option('--today <DAY>', 'the day to plan from, like 2031-04-09; else the file’s, else today')
    .option('--units <cm|in>', 'unit of the printed lengths', 'cm')
    .option('--words <us|uk>', 'American or British words of the craft', 'us')
    .option('--seed <N>', 'start of the random draws', '1')
    .option('--draws <N>', 'number of random draws', '10000')
    .action(async (file: string, flags: RoutesFlags) =>
      finish(await routesCommand(file, flags, surroundings)),
    );

const addPace = (program: Command, surroundings: Surroundings, finish: Finish) =>
  program
    .command('pace')
    .argument('<FILE>', 'a garment record, or - for standard input')
    .summary('when it is done, and what takes the days')
    .description(PACE.trim())
    .option('--json', 'one JSON object instead of the list')
    .option('--size <LABEL>', 'another of the pattern’s sizes than the one being knit')
    .option('--today <DAY>', 'the day to plan from, like 2031-04-09; else the file’s, else today')
    .option('--calendar <FILE>', 'a calendar file (.ics) with a day for the end of each step, too')
    .option('--force', 'replace a calendar file that is there')
    .action(async (file: string, flags: PaceFlags) =>
      finish(await paceCommand(file, flags, surroundings)),
    );

const addCheck = (program: Command, surroundings: Surroundings, finish: Finish) =>
  program
    .command('check')
    .argument('<FILE...>', 'garment records, or - for standard input')
    .summary('whether files are sound, and what to mend')
    .description(CHECK.trim())
    .action(async (files: string[]) => finish(await checkCommand(files, surroundings)));

const addNew = (program: Command, surroundings: Surroundings, finish: Finish) =>
  program
    .command('new')
    .summary('a record to fill in')
    .description(NEW.trim())
    .option('--kind <KIND>', 'kind of garment; a wrong one lists them all', 'other')
    .option('--name <NAME>', 'what you call it', 'A new garment')
    .option('-o, --output <FILE>', 'file to write; printed where left out')
    .option('--force', 'replace a file that is there')
    .action(async (flags: NewFlags) => finish(await newCommand(flags, surroundings)));

const addExample = (program: Command, surroundings: Surroundings, finish: Finish) =>
  program
    .command('example')
    .argument('[NAME]', 'one of the list')
    .summary('list the examples, or print one')
    .description(EXAMPLE.trim())
    .option('-o, --output <FILE>', 'file to write; printed where left out')
    .option('--force', 'replace a file that is there')
    .action(async (name: string | undefined, flags: OutputFlags) =>
      finish(await exampleCommand(name, flags, surroundings)),
    );

const addSchema = (program: Command, finish: Finish) =>
  program
    .command('schema')
    .summary('the JSON Schema of a record')
    .description(SCHEMA.trim())
    .action(() => finish(schemaCommand()));

/** Commander's own complaint in our form: what is wrong, then where to read more. */
const complaint = (error: CommanderError): string => {
  const [, problem = '', hint = ''] =
    /^(?:error: )?(.*?)\.?(?:\n\((Did you mean [^\n]+)\))?$/s.exec(error.message) ?? [];
  const more = hint === '' ? '' : ` ${hint}`;
  return `dryflat: ${markedText(problem)}.${more} See: dryflat --help\n`;
};

/**
 * Runs one command line (without the program's name) and gives back its ending; prints nothing.
 * Bugs throw.
 */
export const runProgram = async (
  line: readonly string[],
  surroundings: Surroundings,
): Promise<Ending> => {
  let ending: Ending = { code: 0, out: '', err: '' };
  let help = '';
  const finish: Finish = (given) => {
    ending = given;
  };
  const program = new Command('dryflat')
    .usage('COMMAND [options]')
    .description(OVERVIEW.trim())
    .version(about.version, '-V, --version', 'print the version')
    .exitOverride()
    .configureOutput({
      writeOut: (text) => {
        help += text;
      },
      writeErr: () => {},
      getOutHelpWidth: () => 80,
      getOutHasColors: () => false,
    });
  // Sub-commands take over exitOverride and the output, so these come after.
  addForecast(program, surroundings, finish);
  addBlock(program, surroundings, finish);
  addPrint(program, surroundings, finish);
  addReport(program, surroundings, finish);
  addDry(program, surroundings, finish);
  addCounts(program, surroundings, finish);
  addRoutes(program, surroundings, finish);
  addPace(program, surroundings, finish);
  addCheck(program, surroundings, finish);
  addNew(program, surroundings, finish);
  addExample(program, surroundings, finish);
  addSchema(program, finish);
  if (line.length === 0) return { code: 2, out: '', err: program.helpInformation() };
  try {
    await program.parseAsync([...line], { from: 'user' });
    return ending;
  } catch (error) {
    if (!(error instanceof CommanderError)) throw error;
    if (error.exitCode === 0) return { code: 0, out: help, err: '' };
    return { code: 2, out: '', err: complaint(error) };
  }
};
