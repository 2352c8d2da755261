import {
  type Measure,
  type Pitch,
  type RecountedLine,
  writeCounts,
  writeHeel,
} from '@dryflat/engine/counts';
import { explain } from '@dryflat/engine/units';
import type { ToldCounts, ToldPart, ToldText } from '../commands/told-counts.ts';
import { inUnits, type Units } from '../faults.ts';
import type { Words } from '../print/words.ts';

interface Reading {
  readonly units: Units;
  readonly words: Words;
}

/** Hundredths of a millimetre: finer than any tape. */
const length = (value: number): number => Math.round(value * 100) / 100 + 0;
/** A pitch is multiplied by hundreds of stitches. */
const fine = (value: number): number => Math.round(value * 10_000) / 10_000 + 0;

const gauge = ({ stitch, row, state }: Pitch) => ({
  state,
  stitchMm: fine(stitch),
  rowMm: fine(row),
});

const measure = (each: Measure) => ({
  landmark: each.landmark,
  direction: each.direction,
  count: each.count,
  wantedMm: length(each.wantedMm),
  mm: length(each.mm),
  errorMm: length(each.errorMm),
});

const part = ({ name, counts }: ToldPart, { units, words }: Reading) => ({
  name,
  copies: counts.copies,
  stitches: counts.stitches,
  measures: counts.measures.map(measure),
  fit: { worstStitches: fine(counts.fit.worst), rmsStitches: fine(counts.fit.rms) },
  steps: counts.steps,
  lines: writeCounts(counts.steps, { words, pitch: counts.pitch }).map((line) =>
    inUnits(line, units),
  ),
  notices: counts.notices,
});

const line = (each: RecountedLine, { units, words }: Reading) => ({
  theirs: writeCounts([each.theirs], { words }).map((text) => inUnits(text, units))[0] ?? '',
  mine: writeCounts(each.mine, { words }).map((text) => inUnits(text, units)),
  steps: each.mine,
  stitches:
    each.stitches === null ? null : { ...each.stitches, errorMm: length(each.stitches.errorMm) },
  rows: { ...each.rows, errorMm: length(each.rows.errorMm) },
});

const text = ({ piece, found }: ToldText, reading: Reading) => ({
  piece,
  lines: found.ok ? found.value.lines.map((each) => line(each, reading)) : [],
  faults: found.ok ? [] : found.faults.map((fault) => inUnits(explain(fault), reading.units)),
});

/**
 * Counts as one JSON object, keys always in this order, lengths in millimetres to 0.01. Where no size is
 * chosen `size` is null, and each of `sizes` has its own. `lines` are
 * instructions in the words and unit asked for; `steps` are the same as data. `errorMm` is what the
 * count measures less what is wanted. `notices` are those of the file, before the engine's.
 */
export const countsJson = (
  told: readonly ToldCounts[],
  notices: readonly string[],
  reading: Reading,
): string => {
  const [first] = told;
  const answer =
    told.length === 1
      ? countsOf(first!, notices, reading)
      : {
          name: first?.record.name,
          size: null,
          sizes: told.map((each) => ({
            size: each.record.pattern.chosen,
            ...countsOf(each, notices, reading),
          })),
        };
  return `${JSON.stringify(answer, null, 2)}\n`;
};

const countsOf = (told: ToldCounts, notices: readonly string[], reading: Reading) => {
  const said = (sentence: string) => inUnits(sentence, reading.units);
  return {
    name: told.record.name,
    gauge: gauge(told.pitch),
    patternGauge: told.theirs && gauge(told.theirs),
    repeat: told.repeat,
    pieces: told.parts.map((each) => part(each, reading)),
    heel: told.heel && {
      stitches: told.heel.stitches,
      turns: told.heel.turns,
      flat: told.heel.flat,
      rows: told.heel.rows.count,
      errorMm: length(told.heel.rows.errorMm),
      line: writeHeel(told.heel),
    },
    instructions: told.texts.map((each) => text(each, reading)),
    notices: [
      ...notices.map((each) => ({ code: 'file', text: said(each) })),
      ...told.notices.map(({ code, text: each }) => ({ code, text: said(each) })),
    ],
  };
};
