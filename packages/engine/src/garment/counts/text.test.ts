import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { mm } from '../../units/index.ts';
import { steps } from './check/arbitrary.ts';
import { readCounts } from './read-counts.ts';
import { tidySteps } from './tidy.ts';
import type { Step } from './types.ts';
import { writeCounts } from './write-counts.ts';

const read = (text: string): readonly Step[] => {
  const result = readCounts(text);
  if (!result.ok) throw new Error(JSON.stringify(result.faults));
  return result.value;
};
const after = (text: string) => read(`Cast on 112.\nWork 10 rows.\n${text}`).slice(2);

describe('written counts', () => {
  it('CN9: what is written is read back as the same steps, in American and British words', () => {
    fc.assert(
      fc.property(steps, fc.constantFrom('us' as const, 'uk' as const), (list, words) => {
        const tidy = tidySteps(list, { row: mm(4) });
        if (!tidy.ok) return;
        const text = writeCounts(tidy.value, { words }).join('\n');
        expect(readCounts(text)).toEqual({ ok: true, value: tidy.value });
        const remarked = writeCounts(tidy.value, { words, pitch: { row: mm(4) } }).join('\n');
        expect(readCounts(remarked)).toEqual({ ok: true, value: tidy.value });
      }),
      { numRuns: 300 },
    );
  });

  it('CN9: lengths are kept, as rows, a length or a height', () => {
    expect(read('Cast on 112 sts. Work 6 cm in rib. Work to 37 cm. Work 4 rows even.')).toEqual([
      { kind: 'cast-on', stitches: 112, round: false },
      { kind: 'work', fabric: 'rib', extent: { mm: 60 } },
      { kind: 'work', fabric: 'main', extent: { toMm: 370 } },
      { kind: 'work', fabric: 'main', extent: { rows: 4 } },
    ]);
    expect(read('Cast on 112. Rib 2 1/2 in. Continue until piece measures 14½"')).toMatchObject([
      {},
      { fabric: 'rib', extent: { mm: 63.5 } },
      { extent: { toMm: 368.3 } },
    ]);
    expect(read('Cast on 9\nwork 6 cm / 20 rows in rib')[1]).toMatchObject({
      extent: { rows: 20 },
    });
    const kept = read('Cast on 9\nWork 6 cm in rib\nWork until the piece measures 20 cm');
    expect(read(writeCounts(kept, { words: 'uk' }).join('\n'))).toEqual(kept);
  });

  it('CN9: shaping as patterns print it', () => {
    const dec = { kind: 'shape', by: 'decrease', edge: 'each', stitches: 1 };
    expect(after('decrease 1 each end every 2nd row 7 times')).toEqual([
      { ...dec, first: 2, every: 2, times: 7 },
    ]);
    expect(after('Dec 1 st at each end of next and every foll 4th row 6 times.')).toEqual([
      { ...dec, first: 1, every: 4, times: 6 },
    ]);
    expect(after('Dec 1 st at both ends of the next row, then every 4th row 5 times more')).toEqual(
      [{ ...dec, first: 1, every: 4, times: 6 }],
    );
    expect(after('inc 1 st at each end of every foll alt row twice')).toEqual([
      { ...dec, by: 'increase', first: 2, every: 2, times: 2 },
    ]);
    expect(after('Increase 1 st each end of every 6th row until there are 132 sts')).toEqual([
      { ...dec, by: 'increase', first: 6, every: 6, times: 10 },
    ]);
    expect(after('Cast off 5 sts at beg of next 2 rows (102 sts)')).toEqual([
      { ...dec, by: 'bind-off', stitches: 5, first: 1, every: 2, times: 1 },
    ]);
    expect(after('Inc 8 sts evenly across next row')).toEqual([
      { kind: 'evenly', change: 'increase', stitches: 8 },
    ]);
  });

  it('CN9: neck, shoulder and end', () => {
    const text = `Bind off center 20 sts and work each side separately.
      Dec 1 st at neck edge every row 3 times. Cast off 8 at armhole edge every alt row 3 times.
      Bind off remaining sts. Work the other side to match, reversing shapings.`;
    expect(after(text).map((step) => step.kind)).toEqual([
      'divide',
      'shape',
      'shape',
      'finish',
      'reverse',
    ]);
    expect(
      read(
        'Cast on 96 and join in the round. Dec 8 evenly every 2nd round 4 times. Draw yarn through rem sts',
      ),
    ).toEqual([
      { kind: 'cast-on', stitches: 96, round: true },
      { kind: 'shape', by: 'decrease', edge: 'around', stitches: 8, first: 2, every: 2, times: 4 },
      { kind: 'finish', by: 'gather' },
    ]);
  });

  it('CN9: American and British words are the same steps', () => {
    const us = read(
      'Cast on 60. Bind off 5 at the beginning of the next 2 rows. Bind off remaining.',
    );
    expect(
      read('Cast on 60. Cast off 5 at the beginning of the next 2 rows. Cast off remaining.'),
    ).toEqual(us);
    expect(writeCounts(us, { words: 'us' })[1]).toBe(
      'Bind off 5 stitches at the beginning of the next 2 rows.',
    );
    expect(writeCounts(us, { words: 'uk' })[1]).toBe(
      'Cast off 5 stitches at the beginning of the next 2 rows.',
    );
  });

  it('CN12: each line that cannot be used is a fault with its line, its words and its mend', () => {
    const bad: [string, string][] = [
      ['', 'counts-nothing'],
      ['CO 112', 'counts-co'],
      ['Cast on 60 with the tail of a fox', 'counts-words'],
      ['Cast on 0', 'step-cast-on'],
      ['Work 10 rows', 'step-no-cast-on'],
      ['Cast on 60. Cast on 60', 'step-second-cast-on'],
      ['Cast on 60. Work in rib', 'counts-how-far'],
      ['Cast on 60. Work 0 rows', 'step-rows'],
      ['Cast on 60. Work 5 rows upside down', 'counts-words'],
      ['Cast on 60. Work to 20 cm. Work to 10 cm', 'step-already-longer'],
      ['Cast on 60. Decrease 1', 'counts-no-edge'],
      ['Cast on 60. Decrease 1 each end', 'counts-no-rows'],
      ['Cast on 60. Decrease 1 each end of every 4th row', 'counts-how-often'],
      ['Cast on 60. Decrease 1 each end now and then', 'counts-rhythm'],
      ['Cast on 60. Decrease 1 each end of every 4th row 40 times', 'no-stitches-left'],
      ['Cast on 60. Decrease 1 each end of every row until 41 sts remain', 'counts-until'],
      ['Cast on 60. Decrease 0 each end of next row', 'step-numbers'],
      ['Cast on 60. Bind off 5 at the beginning of the next row', 'counts-odd-rows'],
      ['Cast on 60. Bind off 5 at the beginning of every row', 'counts-which-edge'],
      ['Cast on 60. Bind off 5 at the beginning of the next 2 rows (52 sts)', 'counts-do-not-add'],
      ['Cast on 60. At the same time, decrease 1 each end of next row', 'step-same-time'],
      ['Cast on 60. Bind off centre 4. Bind off centre 4', 'divided-twice'],
      [
        'Cast on 60 and join in the round. Decrease 1 each end of next round',
        'no-edges-in-a-round',
      ],
      ['Cast on 60. Decrease 4 evenly every 2nd row 3 times', 'no-round'],
      ['Cast on 60. Dec 1 at neck edge of next row. Bind off centre 4', 'edge-before-divide'],
      ['Cast on 60. Bind off remaining. Work 4 rows', 'step-after-end'],
      ['Cast on 60. Sing', 'counts-unreadable'],
      ['Cast on 60. Work 200000 rows', 'step-rows'],
      ['Cast on 60. Work 90000 rows. Work 90000 rows', 'step-too-many-rows'],
    ];
    for (const [text, code] of bad) {
      const result = readCounts(text);
      expect([text, result.ok ? null : result.faults[0]!.code]).toEqual([text, code]);
      if (result.ok) continue;
      const [fault] = result.faults;
      expect(fault!.field).toBe('instructions, line 1');
      expect(fault!.mend).toMatch(/^[A-Z].+\.$/);
      expect(fault!.problem).not.toMatch(/undefined|NaN/);
    }
  });

  it('CN12: faults of several lines come together, each with its own', () => {
    const result = readCounts('Cast on 60\nSing\n\nWork 10 rows\nDecrease 1', { field: 'back' });
    expect(result).toMatchObject({
      faults: [
        { field: 'back, line 2', given: 'Sing' },
        { field: 'back, line 5', given: 'Decrease 1' },
      ],
    });
  });

  it('CN12: no text throws', () => {
    const bits = fc.constantFrom(
      'cast on',
      'bind off',
      '12',
      'every',
      '4th',
      'row',
      'times',
      'at each end of',
      'work',
      'cm',
      '.',
      '\n',
      '(',
      ')',
      'centre',
      'neck edge',
      '½',
      '{mm:',
      'until',
      'next',
      'evenly',
      '-1',
      '1e999',
    );
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string(),
          fc.array(bits, { maxLength: 30 }).map((b) => b.join(' ')),
        ),
        (text) => {
          const result = readCounts(text);
          return result.ok || result.faults.every((fault) => fault.field.includes('line'));
        },
      ),
      { numRuns: 500 },
    );
  });
});
