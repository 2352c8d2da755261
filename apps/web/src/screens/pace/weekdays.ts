/** Names of the days, Monday first, as the knitter's device has them. */
export const weekdays = (weekday: 'long' | 'short' = 'long'): string[] =>
  // 1 January 2024 was a Monday.
  Array.from({ length: 7 }, (_, day) =>
    new Date(Date.UTC(2024, 0, 1 + day)).toLocaleDateString(undefined, {
      weekday,
      timeZone: 'UTC',
    }),
  );
