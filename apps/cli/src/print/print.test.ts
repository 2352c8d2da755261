import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { chanceText } from './chance.ts';
import { styleFor, wantsColours } from './style.ts';
import { hanging, padEnd, padStart, widthOf, wrap } from './text.ts';
import { inWords } from './words.ts';

describe('chances', () => {
  // As the app prints them, and the engine in its sentences: the same chance is the same text everywhere.
  it.each([
    [0, 'under 1 %'],
    [0.0099, 'under 1 %'],
    [0.01, '1 %'],
    [0.5, '50 %'],
    [0.99, '99 %'],
    [0.9901, 'over 99 %'],
    [1, 'over 99 %'],
  ])('%d is %s', (chance, text) => {
    expect(chanceText(chance).replaceAll('\u00a0', ' ')).toBe(text);
  });
});

describe('words of the craft', () => {
  it.each([
    ['Knit a swatch: the gauge is all.', 'uk', 'Knit a tension square: the tension is all.'],
    ['Knit a swatch: the gauge is all.', 'us', 'Knit a swatch: the gauge is all.'],
    ['no animal fibre was pulled', 'us', 'no animal fiber was pulled'],
    ['who has not swatched', 'uk', 'who has not swatched'],
    ['the tension of a thread', 'us', 'the tension of a thread'],
  ] as const)('%s in %s', (sentence, words, said) => {
    expect(inWords(sentence, words)).toBe(said);
  });
});

describe('colours', () => {
  it.each([
    [true, {}, true],
    [false, {}, false],
    [true, { NO_COLOR: '1' }, false],
    // An empty NO_COLOR does not count: https://no-color.org
    [true, { NO_COLOR: '' }, true],
    [true, { TERM: 'dumb' }, false],
  ])('C7: terminal %s, environment %j: %s', (terminal, environment, wanted) => {
    expect(wantsColours(terminal, environment)).toBe(wanted);
  });

  it('C7: without colours every text stays as it is', () => {
    for (const mark of Object.values(styleFor(false))) expect(mark('chest')).toBe('chest');
    expect(styleFor(true).strong('chest')).toBe('\u001b[1mchest\u001b[22m');
  });
});

describe('text', () => {
  const word = fc.string({ unit: fc.constantFrom('a', 'é', '⅜', '–'), minLength: 1, maxLength: 9 });

  it('wrapping keeps every word and never goes over the width', () => {
    fc.assert(
      fc.property(
        fc.array(word, { maxLength: 30 }),
        fc.integer({ min: 9, max: 40 }),
        (all, width) => {
          const lines = wrap(all.join(' '), width);
          expect(lines.join(' ')).toBe(all.join(' '));
          for (const line of lines) expect(widthOf(line)).toBeLessThanOrEqual(width);
        },
      ),
    );
  });

  it('a space that does not break is kept in its line', () => {
    expect(wrap('about 21\u00a0%', 9)).toEqual(['about', '21\u00a0%']);
  });

  it('a hanging text stands under itself', () => {
    expect(hanging('- ', 'one two', 6)).toEqual(['- one', '  two']);
  });

  it('fractions count as one column', () => {
    expect(padStart('13⅜', 5)).toBe('  13⅜');
    expect(padEnd('13⅜', 5)).toBe('13⅜  ');
  });
});
