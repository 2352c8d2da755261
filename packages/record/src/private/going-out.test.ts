import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anyRecord } from '../arbitrary/index.ts';
import { sample } from '../malformed/sample.ts';
import type { GarmentRecord } from '../schema/index.ts';
import { goingOut } from './going-out.ts';

const garment = (name: string, pattern: string, change: Partial<GarmentRecord> = {}) => ({
  ...sample(),
  name,
  pattern: { ...sample().pattern, name: pattern },
  people: [],
  ...change,
});
const wearer = (name: string): Partial<GarmentRecord> => ({
  wearer: { ...sample().wearer, name },
});

describe('what a garment is called in what may be sent', () => {
  it.each([
    [
      'by its pattern, though nobody is known by name',
      'Cardigan for Emlen',
      'Quay Walk',
      {},
      'Quay Walk',
      'quay-walk',
    ],
    [
      'by what it is, where the pattern has no name',
      'For Emlen',
      ' ',
      { kind: 'sock' },
      'Socks',
      'socks',
    ],
    [
      'by what it is, where the pattern is named after the wearer',
      'X',
      'Emlen’s yoke',
      { kind: 'pullover-yoke', ...wearer('Emlen Varr') },
      'Pullover',
      'pullover',
    ],
    [
      'by what it is, where the pattern is named after somebody else',
      'X',
      'Ida’s hat',
      { kind: 'hat', people: [{ id: 'q', name: 'Ida', group: 'woman', body: [] }] },
      'Hat',
      'hat',
    ],
    ['whatever the script', 'X', '  Føtter & Tær/2 ', {}, 'Føtter & Tær/2', 'føtter-tær-2'],
    ['never by nothing', 'X', '../..', { kind: 'other' }, 'Garment', 'garment'],
  ] as const)('R97: %s', (_, name, pattern, change, called, file) => {
    const out = goingOut(garment(name, pattern, change as Partial<GarmentRecord>));
    expect([out.name, out.fileName]).toEqual([called, file]);
  });

  it('R97: by its own name once that is chosen, in the record or for once', () => {
    const record = garment('Cardigan for Emlen', 'Quay Walk', wearer('Emlen'));
    const own = { name: 'Cardigan for Emlen', fileName: 'cardigan-for-emlen' };
    const chosen = { ...record, report: { changes: '', fitNotes: '', photos: [], body: true } };
    expect(goingOut(chosen)).toMatchObject(own);
    expect(goingOut(chosen).said('Emlen')).toBe('Emlen');
    expect(goingOut(record, true)).toMatchObject(own);
    expect(goingOut(chosen, false).name).toBe('Quay Walk');
  });

  it('R96: the wearer and everybody else is taken out of a text', () => {
    const record = garment('X', 'Y', {
      ...wearer('Emlen Varr'),
      people: [{ id: 'q', name: 'Ida Bow', group: 'woman', body: [] }],
    });
    expect(goingOut(record).said('Emlen’s, too tight for Ida')).toBe(
      'the wearer’s, too tight for somebody',
    );
  });

  it('R97: any record has a name, and one that every system takes for a file', () => {
    fc.assert(
      fc.property(anyRecord, fc.boolean(), (record, withPersons) => {
        const { name, fileName } = goingOut(record, withPersons);
        expect(name.trim()).not.toBe('');
        expect(fileName).toMatch(/^[\p{L}\p{N}]+(-[\p{L}\p{N}]+)*$/u);
      }),
    );
  });
});

it('R98: signs that steer what shows a text are marks, whoever may read it; lines stay lines', () => {
  const steering = 'a\u0000b\u001b[31m\u202ec\nd';
  const marks = 'a␀b␛[31m‹U+202E›c\nd';
  for (const withPersons of [true, false]) {
    const { name, said } = goingOut(garment('x\u0007', 'y\u0007'), withPersons);
    expect(said(steering)).toBe(marks);
    expect(name).toBe(withPersons ? 'x␇' : 'y␇');
  }
});
