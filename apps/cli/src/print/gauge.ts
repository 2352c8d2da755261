import { FORECAST_STATES } from '@dryflat/engine/fabric';
import type { Forecast, Range } from '@dryflat/engine/garment';
import { countOfPitch } from '@dryflat/engine/units';
import type { Units } from '../faults.ts';
import { padEnd, padStart } from './text.ts';
import { gaugeWord, STATE_WORDS, type Words } from './words.ts';

const OVER = { cm: '10cm', in: '4in' } as const;
const OVER_WORDS = { cm: '10 cm', in: '4 in' } as const;
const COLUMN = 13;
const NAME = 10;

/** A wider stitch is a lower count, so the ends of the range change places. */
const counts = (pitch: Range, unit: Units): [string, string] => {
  const count = (millimetres: number) => countOfPitch(millimetres, OVER[unit]).toFixed(1);
  return [count(pitch.p50Mm), `${count(pitch.p95Mm)}–${count(pitch.p05Mm)}`];
};

const line = (name: string, cells: readonly string[]): string =>
  padEnd(name, NAME) + cells.map((cell) => padStart(cell, COLUMN)).join('');

/** Stitches and rows in each state, the likeliest count over its range. */
export const gaugeLines = ({ gauge }: Forecast, unit: Units, words: Words): string[] => {
  const row = (name: string, pitches: Readonly<Record<string, Range>>) => {
    const each = FORECAST_STATES.flatMap((state) => {
      const pitch = pitches[state];
      return pitch === undefined ? [] : [counts(pitch, unit)];
    });
    return [
      line(
        name,
        each.map(([median]) => median),
      ),
      line(
        '',
        each.map(([, range]) => range),
      ),
    ];
  };
  return [
    `${gaugeWord(words)}, over ${OVER_WORDS[unit]}`,
    line(
      '',
      FORECAST_STATES.map((state) => STATE_WORDS[state]),
    ),
    ...row('stitches', gauge.stitch),
    ...row('rows', gauge.row),
  ];
};
