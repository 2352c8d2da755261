/** A gauge as a pattern may print it, with what it says: stitches, rows, mm counted over, state. */
export type GaugeLine = readonly [
  text: string,
  stitches: number | null,
  rows: number | null,
  overMm: number,
  state: 'asKnit' | 'dried' | null,
];

const IN4 = 101.6;

/** Read for somebody who thinks in inches, where both units are printed. */
export const GAUGE_LINES: readonly GaugeLine[] = [
  ['Gauge 18 sts and 24 rows = 4 in', 18, 24, IN4, null],
  ['Gauge: 18 sts x 24 rows to 10 cm in St st', 18, 24, 100, null],
  ['Tension 22 sts and 30 rows to 10 cm', 22, 30, 100, null],
  ['20 sts/28 rows = 4" / 10 cm', 20, 28, IN4, null],
  ['20 sts / 28 rows = 4 in (10 cm)', 20, 28, IN4, null],
  ['20 sts & 28 rnds = 10 cm/4 in in stockinette', 20, 28, IN4, null],
  ['GAUGE: 18 STITCHES AND 24 ROWS = 4 INCHES', 18, 24, IN4, null],
  ['Gauge (blocked): 18 sts and 24 rows = 4 in', 18, 24, IN4, 'dried'],
  ['18 sts and 24 rows = 4 in in stockinette stitch, after blocking', 18, 24, IN4, 'dried'],
  ['Gauge: 22 sts and 32 rows to 10 cm, washed and laid flat', 22, 32, 100, 'dried'],
  ['22 sts and 32 rows to 10 cm before washing', 22, 32, 100, 'asKnit'],
  ['Gauge, unblocked: 18 sts and 24 rows = 4"', 18, 24, IN4, 'asKnit'],
  ['Tension: 22,5 sts and 30 rows over 10 cm', 22.5, 30, 100, null],
  ['Gauge: 18½ sts and 24½ rows = 4 in', 18.5, 24.5, IN4, null],
  ['5.5 sts and 7 rows per inch', 5.5, 7, 25.4, null],
  ['Gauge: 5 sts/in', 5, null, 25.4, null],
  ['5 sts to the inch', 5, null, 25.4, null],
  ['18 sts = 4 in', 18, null, IN4, null],
  ['Stitch gauge: 20 sts = 4 in\nRow gauge: 28 rows = 4 in', 20, 28, IN4, null],
  ['20 sts = 4 in; 28 rows = 4 in', 20, 28, IN4, null],
  ['Over 4 in: 20 sts, 28 rows', 20, 28, IN4, null],
  ['10 cm = 22 sts and 30 rows', 22, 30, 100, null],
  ['Gauge: 22 sts x 30 rows = 10 x 10 cm', 22, 30, 100, null],
  ['22 sts and 30 rows measure 10 cm square on larger needles', 22, 30, 100, null],
  ['Tension: 22 x 30 to 10 cm', 22, 30, 100, null],
  ['Gauge: 20/28 = 4 in', 20, 28, IN4, null],
  ['Tension square: 22 sts & 30 rows to 10 cm on 4 mm needles', 22, 30, 100, null],
  ['With larger needles, 18 sts and 24 rows = 4 in', 18, 24, IN4, null],
  ['Stockinette stitch: 18 sts and 24 rows = 4 in', 18, 24, IN4, null],
  ['18 sts and 24 rows over 4 in on US 7 (4.5 mm) needles, wet-blocked', 18, 24, IN4, 'dried'],
  ['18sts and 24rows=4in', 18, 24, IN4, null],
  ['18 stitches + 24 rounds equals 4 inches', 18, 24, IN4, null],
  ['Gauge: 9 sts and 12 rows = 2 in/5 cm', 9, 12, 50.8, null],
  ['18 sts and 24 rows\u00a0=\u00a04″ [10 cm]', 18, 24, IN4, null],
];

/** What holds counts or the word and is no gauge, or none that can be read: none of it measures anything. */
export const NO_GAUGES: readonly string[] = [
  'Cast on 20 sts and work 4 in in ribbing.',
  'Row 5: knit 20 sts to 4 in before the marker.',
  'Work 12 sts over 4 in in pattern.',
  'Decrease 1 st each end every 4 rows, 12 times.',
  'Gauge: 20-22 sts = 4 in',
  'Gauge: 18 (19, 20) sts = 4 in',
  'Check your gauge before you begin: 1 stitch matters',
];
