import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anyRecord } from '../arbitrary/index.ts';
import { sample } from '../malformed/sample.ts';
import { setAt } from '../malformed/set-at.ts';
import type { GarmentRecord } from '../schema/index.ts';
import { questionsOf } from './span-questions.ts';

const change = (...changes: [string, unknown][]): GarmentRecord =>
  changes.reduce<unknown>(
    (record, [path, value]) => setAt(record, path, value),
    sample(),
  ) as GarmentRecord;

describe('questionsOf', () => {
  it('R52: a chest of 20 in for a body of 36 in: both readings, and which is likely', () => {
    const record = change(
      ['pattern.measurements[0].span', undefined],
      ['pattern.measurements[0].values', [457.2, 508, 558.8]],
    );
    expect(questionsOf(record)[0]).toEqual({
      field: 'pattern.measurements[0].span',
      name: 'Chest',
      landmark: 'chest',
      valueMm: 508,
      size: 'M',
      bodyMm: 914,
      flat: {
        flatMm: 508,
        aroundMm: 1016,
        easeMm: 102,
        sentence:
          "If it is flat, it goes {mm:1016} around, {mm:102} more than the body's {mm:914}.",
      },
      around: {
        flatMm: 254,
        aroundMm: 508,
        easeMm: -406,
        sentence:
          "If it is around, it lies {mm:254} wide when flat, {mm:406} less than the body's {mm:914}.",
      },
      likely: 'flat',
      why: 'It reads like flat: the other way it would be {mm:508} around, which a body of {mm:914} makes unlikely.',
    });
  });

  it('R52: without a body the group is held against it, and without either nothing is', () => {
    const open = ['pattern.measurements[0].span', undefined] as [string, unknown];
    const noBody = ['wearer.body', []] as [string, unknown];
    expect(questionsOf(change(open, noBody))[0]).toMatchObject({
      bodyMm: null,
      likely: 'around',
      flat: { easeMm: null, sentence: 'If it is flat, it goes {mm:2000} around.' },
      why: 'It reads like around: the other way it would be {mm:2000} around, which the body of a woman makes unlikely.',
    });
    expect(questionsOf(change(open, noBody, ['wearer.group', 'nobody']))[0]).toMatchObject({
      likely: null,
      why: 'There is nothing to hold it against, so only you can say.',
    });
  });

  it('R52: where both readings make sense, nobody decides but the knitter', () => {
    const record = change(
      ['pattern.measurements[0].span', undefined],
      ['pattern.measurements[0].values', [690, 700, 710]],
    );
    expect(questionsOf(record)[0]).toMatchObject({
      likely: null,
      why: 'A body of {mm:914} does not tell which is meant, so only you can say.',
    });
  });

  it('R52: a tape on the garment is held against the pattern', () => {
    expect(questionsOf(change(['pieces[0].measured[0].span', undefined]))).toMatchObject([
      {
        field: 'pieces[0].measured[0].span',
        size: null,
        likely: 'flat',
        why: "It reads like flat: the other way it would be {mm:490} around, which the pattern's {mm:1000} around makes unlikely.",
      },
    ]);
  });

  it('R53: a width of her own is asked about, a length and a width across one layer are not', () => {
    const record = change(
      ['pattern.measurements[2].span', undefined],
      ['pattern.measurements[1].landmark', 'cross-back'],
    );
    expect(questionsOf(record).map(({ field }) => field)).toEqual(['pattern.measurements[2].span']);
    expect(
      questionsOf(
        change(
          ['pattern.measurements[2].span', undefined],
          ['pattern.measurements[2].direction', 'length'],
        ),
      ),
    ).toEqual([]);
  });

  it('R54: in any record, each question names a field that is empty, and answering all of them ends the asking', () => {
    fc.assert(
      fc.property(anyRecord, (record) => {
        const questions = questionsOf(record);
        const answered = questions.reduce<unknown>(
          (at, { field }) => setAt(at, field, 'flat'),
          record,
        ) as GarmentRecord;
        expect(questionsOf(answered)).toEqual([]);
        for (const { flat, around } of questions) {
          expect(flat.aroundMm).toBe(2 * around.aroundMm);
          expect(flat.flatMm * 2).toBe(flat.aroundMm);
        }
      }),
    );
  });
});
