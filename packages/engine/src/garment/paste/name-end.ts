import { trimmedEnd } from './names.ts';

const VALUE =
  /(?<![\p{L}\d])(?:[([{]\s*)?(?:\d|\.\d)|(?<=\s)-+(?=\s|$)|(?<![\p{L}\d])n\/?a(?![\p{L}\d])/iu;

/** The first colon outside brackets, after a name: `Chest (cm): 34`, but not `Chest 34:38:42`. */
function colonAfterName(plain: string): number {
  let depth = 0;
  for (let i = 0; i < plain.length; i++) {
    if ('([{'.includes(plain[i]!)) depth++;
    if (')]}'.includes(plain[i]!)) depth--;
    if (plain[i] !== ':' || depth > 0) continue;
    const before = plain.slice(0, i);
    return /\p{L}/u.test(before) && !/\s\d[\d.,]*\s*$/.test(before) ? i : -1;
  }
  return -1;
}

/** `Finished measurements: Chest 34`: words between the colon and the first number go on with the name. */
const namesOn = (rest: string): boolean => /^[^\d([{-]*\p{L}{3}/u.test(rest) && VALUE.test(rest);

/** Where the name of a line ends and where its values start; null where it holds no value. */
export function nameEnd(plain: string): { name: number; values: number } | null {
  const colon = colonAfterName(plain);
  if (colon >= 0 && !namesOn(plain.slice(colon + 1))) return { name: colon, values: colon + 1 };
  const first = VALUE.exec(plain);
  if (!first) return null;
  const lead = /^-+/.exec(first[0]);
  const leads = lead !== null && /^-+\s*[([{]?\s*\d/.test(plain.slice(first.index));
  const values = leads ? first.index + lead[0].length : first.index;
  const name = trimmedEnd(plain.slice(0, first.index), ' \t=,.|:-').length;
  return { name, values };
}
