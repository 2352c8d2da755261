import { type Fault, fail, ok, type Result } from '@dryflat/engine/units';
import { parse } from '@humanwhocodes/momoa';

/**
 * Levels of brackets within brackets. A record has nine; a newer version may have more, but what goes
 * deeper than this is no record, and would exhaust whatever walks through it.
 */
const DEEPEST = 40;

/**
 * Parses JSON; a text that is none gives one fault with the line and the column of the first error, and
 * one that is nested too deeply is refused before anything walks through it.
 */
export const parseJson = (text: string): Result<unknown> => {
  const deep = tooDeepAt(text);
  if (deep !== null) return fail(tooDeep(text, deep));
  try {
    return ok(JSON.parse(text));
  } catch {
    return fail({
      code: 'not-json',
      field: 'file',
      given: excerpt(text),
      problem: `this is not JSON: ${whereItBreaks(text)}`,
      mend: 'Mend the text there, or export the record again.',
    });
  }
};

/** Where the first bracket beyond the deepest level stands, or null. Needs no well-formed text. */
const tooDeepAt = (text: string): number | null => {
  let depth = 0;
  let quoted = false;
  for (let at = 0; at < text.length; at++) {
    const sign = text[at];
    if (quoted) {
      if (sign === '\\') at += 1;
      else if (sign === '"') quoted = false;
    } else if (sign === '"') quoted = true;
    else if (sign === '[' || sign === '{') depth += 1;
    else if (sign === ']' || sign === '}') depth -= 1;
    if (depth > DEEPEST) return at;
  }
  return null;
};

const tooDeep = (text: string, index: number): Fault => {
  const before = text.slice(0, index).split('\n');
  return {
    code: 'too-deep',
    field: 'file',
    given: '',
    problem: `at line ${before.length}, column ${(before.at(-1)?.length ?? 0) + 1} brackets are nested more than ${DEEPEST} deep, which no garment record is`,
    mend: 'Choose a file that was exported as a garment record.',
  };
};

const excerpt = (text: string): string => {
  const line = text.trim().split('\n', 1)[0] ?? '';
  return line.length > 40 ? `${line.slice(0, 39)}…` : line;
};

/** `JSON.parse` words its errors differently in every browser, so the place is found by a parser of our choice. */
const whereItBreaks = (text: string): string => {
  if (text.trim() === '') return 'it is empty';
  try {
    parse(text, { mode: 'json' });
  } catch (error) {
    const { line, column } = error as { line?: number; column?: number };
    if (line !== undefined && column !== undefined)
      return `it breaks at line ${line}, column ${column}`;
  }
  return 'it breaks somewhere';
};
