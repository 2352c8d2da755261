import type { Fault } from '../../units/index.ts';
import type { DraftRow, DraftRun } from './draft.ts';
import { implyUnits } from './imply-units.ts';
import { directionFromWords, measuresWhat, spanFromWords } from './names.ts';
import { readCell } from './read-cell.ts';
import { type Reading, tableFault } from './reading.ts';
import { spanOf } from './source.ts';
import { guessLandmark } from './synonyms.ts';
import type { PrintedUnit, PrintedVersion, SizeCell, SizeRow, SizeTableOptions } from './types.ts';

const fieldOf = (draft: DraftRow): string => draft.name || 'size table';

/** Every run under its unit: as tagged, as the line implies, as the head says, as the caller says. */
function withUnits(draft: DraftRow, unit: PrintedUnit | null): DraftRun[] {
  const implied =
    draft.hint === null || draft.runs.length > 1 ? implyUnits(draft.runs) : draft.runs;
  const named = (implied as readonly DraftRun[]).map((run) => ({
    ...run,
    unit: run.unit ?? draft.hint ?? unit,
  }));
  return [...new Set(named.map((run) => run.unit))].map((each) => ({
    unit: each,
    values: named.filter((run) => run.unit === each).flatMap((run) => run.values),
  }));
}

const unitMissing = (field: string): Fault =>
  tableFault('unit-missing', field, '', 'the numbers have no unit', 'Choose cm or in for them.');

const commasUnclear = (field: string): Fault =>
  tableFault(
    'commas-unclear',
    field,
    '',
    'the commas may mark decimals or separate sizes',
    'Put a space after each comma that separates, or use semicolons.',
  );

const strayNumber = (field: string): Fault =>
  tableFault(
    'number-stray',
    field,
    '',
    'this number has no unit and belongs to none of the sizes',
    'Leave it out, or add its unit.',
  );

const nameMissing: Fault = tableFault(
  'name-missing',
  'size table',
  '',
  'the numbers have no name',
  'Say what they measure, such as chest or sleeve length.',
);

/** The version in the unit asked for, else the first. */
const preferred = <T extends { unit: PrintedUnit | null }>(
  versions: readonly T[],
  unit: 'cm' | 'in' | undefined,
): T | undefined => versions.find((version) => version.unit === unit) ?? versions[0];

function refuseValues(runs: readonly DraftRun[], fault: Fault, reading: Reading): void {
  for (const { source, start, end } of runs.flatMap(({ values }) => values)) {
    const from = spanOf(source, start, end);
    reading.refuse(from, { ...fault, given: reading.text.slice(...from) });
  }
}

interface Numbers {
  readonly versions: readonly { unit: PrintedUnit | null; cells: SizeCell[] }[];
  readonly faults: readonly Fault[];
}

/** Numbers without a unit are kept as text where none has one, and refused beside others that do. */
function readNumbers(draft: DraftRow, unit: PrintedUnit | null, reading: Reading): Numbers {
  const field = fieldOf(draft);
  if (draft.commasUnclear) {
    refuseValues(draft.runs, commasUnclear(field), reading);
    return { versions: [], faults: [commasUnclear(field)] };
  }
  const runs = withUnits(draft, unit);
  const stray = runs.length > 1 ? runs.filter((run) => run.unit === null) : [];
  refuseValues(stray, strayNumber(field), reading);
  const versions = runs
    .filter((run) => !stray.includes(run))
    .map((run) => ({
      unit: run.unit,
      cells: run.values.map((value) => readCell(value, run.unit, field, reading)),
    }));
  return { versions, faults: versions[0]?.unit === null ? [unitMissing(field)] : [] };
}

const isPrinted = (
  version: Numbers['versions'][number],
): version is PrintedVersion & typeof version => version.unit !== null;

/** Numbers and guesses of one row. `unit`: of numbers that name none, null where nobody said. */
export function buildRow(
  draft: DraftRow,
  unit: PrintedUnit | null,
  options: SizeTableOptions,
  reading: Reading,
): SizeRow {
  const { versions, faults } = readNumbers(draft, unit, reading);
  const landmark = guessLandmark(draft.name, options.kind);
  return {
    name: draft.name,
    from: draft.from,
    landmark,
    direction: directionFromWords(draft.name, landmark),
    span: spanFromWords(`${draft.name} ${draft.spanWords}`),
    measures: measuresWhat(draft.name),
    cells: preferred(versions, options.unit)?.cells ?? [],
    printed: versions.filter(isPrinted),
    faults: [...(draft.name === '' ? [nameMissing] : []), ...draft.faults, ...faults],
  };
}
