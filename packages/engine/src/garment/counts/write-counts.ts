import { lengthToken } from '../../units/index.ts';
import { runningCounts } from './running-counts.ts';
import { takesTwoRows } from './schedule.ts';
import type { Evenly, Finish, Pitch, Shape, Shaping, Step, Work } from './types.ts';
import { capital, counted, ordinal, VOCABULARY, type Vocabulary, type Words } from './words.ts';

export interface WriteOptions {
  readonly words: Words;
  /** With a gauge each length and row count is followed by the other, and shaping by the stitches left. */
  readonly pitch?: Pick<Pitch, 'row'> | undefined;
}

interface Voice {
  readonly v: Vocabulary;
  readonly row: 'row' | 'round';
}

const verb = (by: Shaping, { bindOff }: Vocabulary): string =>
  by === 'bind-off' ? bindOff : by === 'cast-on' ? 'cast on' : by;

const PLACE: Readonly<Record<Shape['edge'], string>> = {
  each: 'at each end of',
  neck: 'at the neck edge of',
  side: 'at the side edge of',
  around: 'evenly in',
};

const times = (n: number): string => (n === 1 ? 'once' : n === 2 ? 'twice' : `${n} times`);

const every = (n: number, { v, row }: Voice): string => {
  if (n === 1) return `every ${row}`;
  return n === 2 ? `${v.other} ${row}` : `every ${ordinal(n)} ${row}`;
};

/** `every 4th row 6 times`, `the next row, then every 4th row 5 times more`, `the 8th row from here`. */
const beat = (step: Shape, voice: Voice): string => {
  if (step.first === step.every && (step.times > 1 || step.first > 1))
    return `${every(step.every, voice)} ${times(step.times)}`;
  const first =
    step.first === 1
      ? `the next ${voice.row}`
      : `the ${ordinal(step.first)} ${voice.row} from here`;
  if (step.times === 1) return first;
  return `${first}, then ${step.edge === 'around' ? 'in' : 'of'} ${every(step.every, voice)} ${times(step.times - 1)} more`;
};

const writeShape = (step: Shape, voice: Voice): string => {
  const stitches = `${verb(step.by, voice.v)} ${counted(step.stitches, 'stitch')}`;
  if (takesTwoRows(step) && step.first === 1 && step.every === 2)
    return `${stitches} at the beginning of the next ${2 * step.times} ${voice.row}s`;
  return `${stitches} ${PLACE[step.edge]} ${beat(step, voice)}`;
};

const writeWork = ({ fabric, extent }: Work, { v, row }: Voice): string => {
  const how = fabric === 'rib' ? 'in rib' : v.even;
  if ('rows' in extent) return `work ${counted(extent.rows, row)} ${how}`;
  if ('mm' in extent) return `work ${lengthToken(extent.mm)} ${how}`;
  return `work ${how} until the piece is ${lengthToken(extent.toMm)} long`;
};

const writeEvenly = ({ change, stitches }: Evenly, { row }: Voice): string =>
  `${change} ${counted(stitches, 'stitch')} evenly across the next ${row}`;

const writeFinish = (by: Finish['by'], { v }: Voice): string => {
  if (by === 'bind-off') return `${v.bindOff} the remaining stitches`;
  return by === 'gather'
    ? 'draw the yarn through the remaining stitches'
    : 'leave the remaining stitches on a holder';
};

const writeDivide = (stitches: number, { v, row }: Voice): string =>
  stitches > 0
    ? `${v.bindOff} the ${v.centre} ${counted(stitches, 'stitch')} and work each side separately`
    : `divide for the neck in the next ${row} and work each side separately`;

const sentence = (step: Step, voice: Voice): string => {
  switch (step.kind) {
    case 'cast-on':
      return `cast on ${counted(step.stitches, 'stitch')}${step.round ? ' and join in the round' : ''}`;
    case 'work':
      return writeWork(step, voice);
    case 'shape':
      return writeShape(step, voice);
    case 'evenly':
      return writeEvenly(step, voice);
    case 'divide':
      return writeDivide(step.stitches, voice);
    case 'mark':
      return 'shape both edges at the same time from here';
    case 'same-time':
      return 'at the same time, counted again from where the neck shaping begins';
    case 'finish':
      return writeFinish(step.by, voice);
    case 'reverse':
      return 'work the other side to match, reversing shapings';
  }
};

const lengthOf = (step: Step, row: number): string => {
  if (step.kind !== 'work') return '';
  const { extent } = step;
  return 'rows' in extent ? ` (${lengthToken(Math.round(extent.rows * row * 10) / 10)})` : '';
};

const CHANGES: ReadonlySet<Step['kind']> = new Set(['shape', 'evenly', 'divide']);

/**
 * Steps as written instructions, one sentence a line, in American or British words. Lengths are
 * `{mm:…}` tokens. `readCounts` reads every line back as the step that it was.
 */
export const writeCounts = (steps: readonly Step[], options: WriteOptions): string[] => {
  const round = steps.some((step) => step.kind === 'cast-on' && step.round);
  const voice: Voice = { v: VOCABULARY[options.words], row: round ? 'round' : 'row' };
  const left = runningCounts(steps);
  return steps.map((step, i) => {
    const now = left[i];
    const remark =
      options.pitch && CHANGES.has(step.kind) && now != null ? ` (${counted(now, 'stitch')})` : '';
    const length = options.pitch ? lengthOf(step, options.pitch.row) : '';
    return `${capital(sentence(step, voice))}${length}${remark}.`;
  });
};
