const DAY = 86_400_000;

/** Days since 1970 of an ISO day. */
export const dayNumber = (day: string): number => Math.round(Date.parse(`${day}T00:00:00Z`) / DAY);

/** A day by its number, short: `9 Apr`, with the year where asked for. */
export const shortDay = (number: number, year = false): string =>
  new Date(number * DAY).toLocaleDateString(undefined, {
    day: 'numeric',
    month: 'short',
    timeZone: 'UTC',
    ...(year && { year: 'numeric' }),
  });
