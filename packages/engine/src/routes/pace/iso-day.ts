const DAY_MS = 86_400_000;
const ISO = /^\d{4}-\d{2}-\d{2}$/;

/** Days since 1 January 1970 of an ISO day, by the Gregorian calendar; null for what is no day of the years 1900 to 2200. */
export const dayNumber = (iso: string): number | null => {
  if (!ISO.test(iso)) return null;
  const ms = Date.parse(`${iso}T00:00:00Z`);
  // A 30th of February is either refused or rolled over: it does not come back as it was.
  if (Number.isNaN(ms) || isoDay(ms / DAY_MS) !== iso) return null;
  return iso >= '1900-01-01' && iso < '2200-01-01' ? ms / DAY_MS : null;
};

/** The ISO day of a day number, whole. */
export const isoDay = (day: number): string => new Date(day * DAY_MS).toISOString().slice(0, 10);

/** 0 Monday to 6 Sunday. 1 January 1970 was a Thursday. */
export const weekday = (day: number): number => (((day + 3) % 7) + 7) % 7;
