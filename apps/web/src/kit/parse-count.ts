import type { Result } from '@dryflat/engine/units';

const FRACTIONS: Readonly<Record<string, number>> = {
  '½': 0.5,
  '¼': 0.25,
  '¾': 0.75,
  '⅓': 1 / 3,
  '⅔': 2 / 3,
};
const COUNT = /^(\d{1,5})(?:[.,](\d{1,3}))?\s*([½¼¾⅓⅔])?$/;
const FRACTION = /^(?:(\d{1,5})[ -]+)?(\d{1,2})\/(\d{1,2})$/;

/**
 * A count of stitches, rows or skeins: `22`, `21,5`, `21.5`, `21½`, `21 1/2`. More than zero; halves
 * because a swatch's edge cuts a stitch. `whole`: only whole numbers. `orNone`: 0 is a count too, as of what
 * is left in a box.
 */
export const parseCount = (
  text: string,
  field: string,
  whole = false,
  orNone = false,
): Result<number> => {
  const value = readCount(text.trim());
  const fault = (code: string, problem: string, mend: string): Result<number> => ({
    ok: false,
    faults: [{ code, field, given: text, problem, mend }],
  });
  if (value === null)
    return fault('count-unreadable', 'this is not a count', 'Type a number such as 22 or 21½.');
  if (value < 0 || (value === 0 && !orNone) || value > 100_000)
    return fault('count-out-of-range', 'a count is more than 0', 'Type how many there are.');
  if (whole && !Number.isInteger(value))
    return fault('count-not-whole', 'this has to be a whole number', 'Leave out the fraction.');
  return { ok: true, value };
};

const readCount = (text: string): number | null => {
  const plain = COUNT.exec(text);
  if (plain && !(plain[2] && plain[3]))
    return Number(`${plain[1]}.${plain[2] ?? 0}`) + (FRACTIONS[plain[3] ?? ''] ?? 0);
  if (text in FRACTIONS) return FRACTIONS[text] ?? null;
  const [, units = '0', part, of] = FRACTION.exec(text) ?? [];
  if (part === undefined || Number(of) === 0 || Number(part) >= Number(of)) return null;
  return Number(units) + Number(part) / Number(of);
};

/** A count as knitters write it: `22`, `21½`, else to the third decimal. */
export const formatCount = (value: number): string => {
  const whole = Math.floor(value);
  const sign = Object.entries(FRACTIONS).find(([, part]) => Math.abs(value - whole - part) < 1e-9);
  if (sign) return whole === 0 ? sign[0] : `${whole}${sign[0]}`;
  return `${Math.round(value * 1000) / 1000}`;
};
