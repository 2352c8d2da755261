import { SMALL, textLine } from '../flow/text-block.ts';
import { INK } from '../sheet/inks.ts';
import type { Mark, Place } from '../sheet/sheet.ts';

/** Lengths of the two lines that a print is checked by, mm. 4 in is 101.6 mm exactly. */
export const CHECKS = [
  { text: '100 mm', lengthMm: 100 },
  { text: '4 in', lengthMm: 101.6 },
] as const;

const BAR = 1.4;
const APART = 8.5;
/** Height of both lines with their words, mm. */
export const CHECK_HEIGHT = 2 * APART;

const stroke = { colour: INK, widthMm: 0.25 };

const bar = ({ x, y }: Place): Mark => ({
  kind: 'line',
  from: { x, y: y - BAR },
  to: { x, y: y + BAR },
  stroke,
});

/** Both lines, one under the other, their left ends under each other at `at`. */
export const checkLines = ({ x, y }: Place): Mark[] =>
  CHECKS.flatMap(({ text, lengthMm }, k) => {
    const [from, to] = [x, x + lengthMm].map((end) => ({ x: end, y: y + 2 + k * APART })) as [
      Place,
      Place,
    ];
    return [
      { kind: 'line', from, to, stroke },
      bar(from),
      bar(to),
      textLine(
        `${text} on the tape, or the print is not to size`,
        { x: x + 2, y: from.y + 1 },
        { ...SMALL, sizeMm: 2.5 },
      ),
    ] satisfies Mark[];
  });
