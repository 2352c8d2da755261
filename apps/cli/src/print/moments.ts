const HOUR = 3_600_000;

/** `2030-11-07 06:30`, universal time, to the minute. */
export const momentText = (ms: number): string =>
  new Date(ms).toISOString().slice(0, 16).replace('T', ' ');

/** So many hours after an ISO moment, as text. */
export const hoursAfter = (begun: string, hours: number): string =>
  momentText(Date.parse(begun) + hours * HOUR);
