import { fail, ok, type Result } from '@dryflat/engine/units';
import { parse } from '@humanwhocodes/momoa';

/** Parses JSON; a text that is none gives one fault with the line and the column of the first error. */
export const parseJson = (text: string): Result<unknown> => {
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
