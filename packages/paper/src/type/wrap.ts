import type { Weight } from '../sheet/sheet.ts';
import type { Faces } from './faces.ts';

export interface Setting {
  readonly sizeMm: number;
  readonly weight: Weight;
}

/** As many letters of a word as fit, at least one. */
const headOf = (word: string, widthMm: number, fits: (text: string, width: number) => boolean) => {
  const letters = [...word];
  let taken = letters.length;
  while (taken > 1 && !fits(letters.slice(0, taken).join(''), widthMm)) taken -= 1;
  return [letters.slice(0, taken).join(''), letters.slice(taken).join('')] as const;
};

/**
 * Lines no wider than `widthMm`, broken at spaces (not at those that do not break) and at line
 * breaks; a word that is wider by itself is broken between letters. An empty text is one empty line.
 */
export const wrap = (
  text: string,
  widthMm: number,
  { sizeMm, weight }: Setting,
  faces: Faces,
): string[] => {
  const fits = (each: string, width: number) => faces.widthOf(each, sizeMm, weight) <= width;
  return text.split('\n').flatMap((paragraph) => {
    const lines: string[] = [];
    let line = '';
    const words = paragraph.split(/[ \t\r]+/).filter((word) => word !== '');
    for (let word = words.shift(); word !== undefined; word = words.shift()) {
      const longer = line === '' ? word : `${line} ${word}`;
      if (fits(longer, widthMm)) line = longer;
      else if (line !== '') {
        lines.push(line);
        line = '';
        words.unshift(word);
      } else {
        const [head, tail] = headOf(word, widthMm, fits);
        lines.push(head);
        if (tail !== '') words.unshift(tail);
      }
    }
    return line === '' && lines.length > 0 ? lines : [...lines, line];
  });
};
