import { explain, type Fault } from '@dryflat/engine/units';
import {
  askEachSize,
  askForecast,
  faultsOf,
  type GarmentRecord,
  inEachSize,
  isDoubt,
  markedText,
  mustBeMended,
} from '@dryflat/record';
import { askRoutes } from '@dryflat/record/routes';
import { faultLines, inUnits } from '../faults.ts';
import { called, readFileRecord } from '../files.ts';
import type { Ending, Surroundings } from '../surroundings.ts';
import { tellDrying } from './dry.ts';
import { tellPace } from './pace.ts';

interface Checked {
  readonly out: string;
  readonly err: string;
}

/** Enough to see what cannot be told. */
const FEW = 100;

/** Why the last drying of a record cannot be told, and why the time that is left cannot. */
const waitingBeside = (record: GarmentRecord, today: string) => {
  const drying = record.dryings?.length ? tellDrying(record) : null;
  const [asked] = inEachSize(record).map((each) => askRoutes(each, today));
  const pace = asked?.ok ? tellPace({ question: asked.value }, { draws: FEW }) : asked;
  const faults = (told: typeof drying | typeof pace): readonly Fault[] =>
    told?.ok === false ? told.faults.filter(mustBeMended) : [];
  return [
    ...faults(drying).map((each) => ['its drying', each] as const),
    ...faults(pace).map((each) => ['the time it takes', each] as const),
  ];
};

/** Whether a file is sound, what in it is doubtful, and what a forecast still waits for. */
const checkOne = async (path: string, surroundings: Surroundings): Promise<Checked> => {
  const where = called(path);
  const opened = await readFileRecord(path, surroundings);
  if (!opened.ok) return { out: '', err: faultLines(where, opened.faults, 'cm') };
  const { record, notices } = opened.value;
  const found = faultsOf(record);
  const faults = found.filter(mustBeMended);
  if (faults.length > 0) return { out: '', err: faultLines(where, faults, 'cm') };
  const sized = askForecast(record);
  const asked = askEachSize(record) ?? sized;
  const waiting = asked.ok ? [] : asked.faults.filter(mustBeMended).map(explain);
  const size = sized.ok ? [] : sized.faults.filter(({ code }) => code === 'question-size');
  const remarks = [
    ...notices,
    ...[...found, ...size].map(
      (each) => `${isDoubt(each) ? 'worth a second look' : 'only you can say'}: ${explain(each)}`,
    ),
    ...waiting.map((each) => `a forecast waits for this: ${each}`),
    ...waitingBeside(record, surroundings.today())
      .map(([what, each]) => [what, explain(each)] as const)
      .filter(([, each]) => !waiting.includes(each))
      .map(([what, each]) => `${what} waits for this: ${each}`),
  ];
  const verdict = asked.ok ? 'sound, and ready for a forecast' : 'sound';
  const lines = [verdict, ...remarks.map((remark) => markedText(inUnits(remark, 'cm')))];
  return { out: lines.map((line) => `${where}: ${line}\n`).join(''), err: '' };
};

/** `dryflat check FILE…`: every file is looked at; one that is not sound makes the whole end with 2. */
export const checkCommand = async (
  paths: readonly string[],
  surroundings: Surroundings,
): Promise<Ending> => {
  const checked: Checked[] = [];
  for (const path of paths) checked.push(await checkOne(path, surroundings));
  const err = checked.map((each) => each.err).join('');
  if (err !== '') return { code: 2, out: '', err };
  return { code: 0, out: checked.map((each) => each.out).join(''), err: '' };
};
