import { describe, expect, it } from 'vitest';
import { markedText } from './marked.ts';

describe('signs that are not seen', () => {
  it.each([
    ['a\u001b[31m\u0007\u007f', 'a␛[31m␇␡'],
    ['a\u009b31m\u2028', 'a‹U+009B›31m‹U+2028›'],
    ['\u061c\u200e\u200f\u202e\u2066', '‹U+061C›‹U+200E›‹U+200F›‹U+202E›‹U+2066›'],
    ['a\u200bb\u2060c\ufeff', 'a‹U+200B›b‹U+2060›c‹U+FEFF›'],
    ['\u{e0001}\u{e0041}\u{e007f}', '‹U+E0001›‹U+E0041›‹U+E007F›'],
  ])('R98: %j goes out as marks', (text, marks) => {
    expect(markedText(text)).toBe(marks);
    expect(markedText(marks)).toBe(marks);
  });

  it('R98: what joins letters or keeps them apart stays, and what selects a shape', () => {
    const text = '👩\u200d🌾 می\u200cخواهم ❤\ufe0f';
    expect(markedText(text)).toBe(text);
  });
});
