import { create, type Font } from 'fontkit';
import type { Weight } from '../sheet/sheet.ts';
import { FACE_FILES, type FaceName, SCRIPTS, type Script } from './face-files.ts';

/** A stretch of text in one face. */
export interface Run {
  readonly face: FaceName;
  readonly text: string;
  readonly widthMm: number;
}

/** The letters that a page is set in, and how wide they run. */
export interface Faces {
  readonly bytes: ReadonlyMap<FaceName, Uint8Array>;
  /** The text in pieces of one face each, `sizeMm` high. */
  readonly runs: (text: string, sizeMm: number, weight: Weight) => readonly Run[];
  readonly widthOf: (text: string, sizeMm: number, weight: Weight) => number;
}

/** Halves, quarters and eighths come from one face, so that they match beside each other. */
const FRACTIONS = /[¼½¾⅐-⅞]/;
/** The space goes with the word before it where that face has one. */
const SPACE = /\s/;

const charactersOf = (bytes: Uint8Array): Font => {
  // The declared type asks for Node's buffer; any array of bytes will do.
  const made = create(bytes as Buffer);
  if ('fonts' in made) throw new TypeError('a face is one font, not a collection');
  return made;
};

const scriptFor = (
  char: string,
  has: (script: Script, point: number) => boolean,
  before: Script | null,
): Script => {
  const point = char.codePointAt(0)!;
  if (SPACE.test(char) && before !== null && has(before, point)) return before;
  const offered = FRACTIONS.test(char) ? SCRIPTS.slice(2) : SCRIPTS;
  // What no face has is drawn as the first face's empty box: it is seen to be missing.
  return offered.find((script) => has(script, point)) ?? 'latin';
};

const split = (
  text: string,
  has: (script: Script, point: number) => boolean,
): { script: Script; text: string }[] => {
  const runs: { script: Script; text: string }[] = [];
  for (const char of text) {
    const last = runs.at(-1);
    const script = scriptFor(char, has, last?.script ?? null);
    if (last?.script === script) last.text += char;
    else runs.push({ script, text: char });
  }
  return runs;
};

/**
 * Faces from the bytes of their files. Throws where one is missing or is no font: they come with the
 * program, not from a knitter.
 */
export const facesFrom = (bytes: ReadonlyMap<FaceName, Uint8Array>): Faces => {
  const fonts = new Map(
    FACE_FILES.map(({ name }) => {
      const given = bytes.get(name);
      if (given === undefined) throw new TypeError(`the face ${name} was not given`);
      return [name, charactersOf(given)];
    }),
  );
  const advances = new Map<string, number>();
  const advance = (face: FaceName, text: string): number => {
    const key = `${face} ${text}`;
    const known = advances.get(key);
    if (known !== undefined) return known;
    const font = fonts.get(face)!;
    const made = font.layout(text).advanceWidth / font.unitsPerEm;
    advances.set(key, made);
    return made;
  };
  const glyphs = new Map([...fonts.keys()].map((face) => [face, new Map<number, boolean>()]));
  const hasGlyph = (face: FaceName, point: number): boolean => {
    const these = glyphs.get(face)!;
    const known = these.get(point) ?? fonts.get(face)!.hasGlyphForCodePoint(point);
    these.set(point, known);
    return known;
  };
  const runs: Faces['runs'] = (text, sizeMm, weight) =>
    split(text, (script, point) => hasGlyph(`${script}-${weight}`, point)).map(
      ({ script, text: part }) => {
        const face: FaceName = `${script}-${weight}`;
        return { face, text: part, widthMm: sizeMm * advance(face, part) };
      },
    );
  return {
    bytes,
    runs,
    widthOf: (text, sizeMm, weight) =>
      runs(text, sizeMm, weight).reduce((sum, { widthMm }) => sum + widthMm, 0),
  };
};
