import type { Result } from '@dryflat/engine/units';

/** A share written in percent: `55`, `55 %`, `47,5%`. Above 0 and below 100. */
export const parsePercent = (text: string, field: string): Result<number> => {
  const [, digits] = /^(\d{1,3}(?:[.,]\d{1,2})?)\s*%?$/.exec(text.trim()) ?? [];
  const value = digits === undefined ? Number.NaN : Number(digits.replace(',', '.'));
  if (value > 0 && value < 100) return { ok: true, value };
  const unread = Number.isNaN(value);
  return {
    ok: false,
    faults: [
      {
        code: unread ? 'percent-unreadable' : 'percent-out-of-range',
        field,
        given: text,
        problem: unread ? 'this is not a percentage' : 'this is not above 0 and below 100 %',
        mend: 'Type a number such as 55.',
      },
    ],
  };
};
