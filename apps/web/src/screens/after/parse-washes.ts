import type { Result } from '@dryflat/engine/units';

/** How often it has been washed: a whole number, 0 to 10,000. */
export const parseWashes = (text: string, field: string): Result<number> => {
  const value = /^\d{1,5}$/.test(text.trim()) ? Number(text) : Number.NaN;
  if (value <= 10_000) return { ok: true, value };
  return {
    ok: false,
    faults: [
      {
        code: 'washes-unreadable',
        field,
        given: text,
        problem: 'this is not a number of washes',
        mend: 'Type a whole number such as 0, 1 or 6.',
      },
    ],
  };
};
