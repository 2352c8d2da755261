import { readSizeTable } from './read-size-table.ts';
import { GAUGE_LINES } from './testing/gauge-lines.ts';
import { WHOLE_PATTERN_NAMES, wholePattern } from './testing/whole-pattern.ts';

/** Characters of a whole pattern with all its instructions. */
const PATTERN = 24_000;

/** Least ms of a few readings: what the reading takes, and not what else the machine does. */
const msToRead = (text: string, times: number): number => {
  const once = (): number => {
    const began = performance.now();
    readSizeTable(text, { unit: 'in', kind: 'pullover-yoke' });
    return performance.now() - began;
  };
  return Math.min(...Array.from({ length: times }, once));
};

const gaugesRight = (): number =>
  GAUGE_LINES.filter(([text, stitches, rows, overMm, state]) => {
    const { gauges, rows: measured } = readSizeTable(text, { unit: 'in' });
    const [gauge] = gauges;
    const is = (read: 'stitches' | 'rows', count: number | null): boolean =>
      (gauge?.[read]?.count ?? null) === count &&
      (count === null || gauge?.[read]?.over === overMm);
    const right = is('stitches', stitches) && is('rows', rows) && gauge?.state === state;
    return right && gauges.length === 1 && measured.length === 0;
  }).length;

/** What reading a pasted pattern takes, and what it finds. */
export async function* figures(full: boolean) {
  const text = wholePattern(PATTERN);
  yield {
    name: 'time to read a pasted pattern of 24,000 characters',
    value: msToRead(text, full ? 40 : 8),
    unit: 'ms',
    goal: { most: 200 },
  };
  const { rows } = readSizeTable(text, { unit: 'in', kind: 'pullover-yoke' });
  yield {
    name: 'lines of that pattern taken for measurements that are none',
    value: rows.filter(({ name }) => !WHOLE_PATTERN_NAMES.includes(name)).length,
    unit: 'lines',
    goal: { exactly: 0 },
  };
  yield {
    name: `spellings of a gauge that are read right, of ${GAUGE_LINES.length}`,
    value: gaugesRight(),
    unit: 'lines',
    goal: { exactly: GAUGE_LINES.length },
  };
}
