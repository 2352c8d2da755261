/** Where the clock hangs: the device's own zone and manner of writing where left out. */
export interface Clock {
  readonly timeZone?: string;
  readonly locale?: string;
}

const MINUTE = 60_000;
const DAY = 24 * 60 * MINUTE;

const format = ({ timeZone, locale }: Clock, parts: Intl.DateTimeFormatOptions) =>
  new Intl.DateTimeFormat(locale, { ...parts, ...(timeZone !== undefined && { timeZone }) });

/** Days since 1970 as the calendar on the wall counts them: a day of 23 or 25 hours is one. */
const dayNumber = (ms: number, clock: Clock): number => {
  const [year, month, day] = format(
    { ...clock, locale: 'en-CA' },
    { year: 'numeric', month: '2-digit', day: '2-digit' },
  )
    .format(ms)
    .split('-')
    .map(Number) as [number, number, number];
  return Date.UTC(year, month - 1, day) / DAY;
};

const hand: Intl.DateTimeFormatOptions = { hour: 'numeric', minute: '2-digit' };

/** The hands stand like this twice where the clocks go back, by an hour or by half of one. */
const isTwice = (ms: number, clock: Clock): boolean => {
  const full = format(clock, { ...hand, day: 'numeric' });
  return [-60, -30, 30, 60].some((by) => full.format(ms + by * MINUTE) === full.format(ms));
};

/** `14:00` or `2:00 PM`; with the zone in the hour that the clock shows twice. */
export const timeWords = (ms: number, clock: Clock = {}): string =>
  format(clock, { ...hand, ...(isTwice(ms, clock) && { timeZoneName: 'short' }) }).format(ms);

const NEAR: Readonly<Record<number, string>> = { '-1': 'yesterday', 0: 'today', 1: 'tomorrow' };

/** `today`, `Thursday`; a date where a weekday alone would be of another week. */
export const dayWords = (ms: number, nowMs: number, clock: Clock = {}): string => {
  const away = dayNumber(ms, clock) - dayNumber(nowMs, clock);
  const near = NEAR[away];
  if (near !== undefined) return near;
  return Math.abs(away) < 7
    ? format(clock, { weekday: 'long' }).format(ms)
    : format(clock, { weekday: 'short', day: 'numeric', month: 'long' }).format(ms);
};

/** `Thursday 14:00`. */
export const momentWords = (ms: number, nowMs: number, clock: Clock = {}): string =>
  `${dayWords(ms, nowMs, clock)} ${timeWords(ms, clock)}`;

/** Minutes that a range so wide is told to; chosen so that it reads no surer than it is. */
const stepFor = (width: number): number => (width >= DAY / 4 ? 30 : width >= DAY / 12 ? 15 : 5);

/** `about Thursday 14:15`, to a quarter of an hour. Offsets of all zones in use are whole quarters. */
export const aboutWords = (ms: number, nowMs: number, clock: Clock = {}): string => {
  const step = 15 * MINUTE;
  return `about ${momentWords(Math.round(ms / step) * step, nowMs, clock)}`;
};

/** `between Thursday 14:00 and Friday 2:00`, rounded outwards. */
export const betweenWords = (
  fromMs: number,
  toMs: number,
  nowMs: number,
  clock: Clock = {},
): string => {
  const step = stepFor(toMs - fromMs) * MINUTE;
  const [from, to] = [Math.floor(fromMs / step) * step, Math.ceil(toMs / step) * step];
  const sameDay = dayNumber(from, clock) === dayNumber(to, clock);
  if (from === to) return `about ${momentWords(from, nowMs, clock)}`;
  if (sameDay)
    return `${dayWords(from, nowMs, clock)} between ${timeWords(from, clock)} and ${timeWords(to, clock)}`;
  return `between ${momentWords(from, nowMs, clock)} and ${momentWords(to, nowMs, clock)}`;
};

/** `4 hours`, `40 minutes`, `2½ days`: how long, to about a tenth. */
export const lastWords = (hours: number): string => {
  const minutes = Math.round((hours * 60) / 5) * 5;
  if (minutes < 90) return minutes === 60 ? '1 hour' : `${Math.max(5, minutes)} minutes`;
  if (hours < 36) return `${Math.round(hours)} hours`;
  const halves = Math.round(hours / 12);
  return `${Math.floor(halves / 2)}${halves % 2 === 1 ? '½' : ''} days`;
};

/** A sentence whose moments are written as ISO has them, in the reader's own words. */
export const withMoments = (text: string, nowMs: number, clock: Clock = {}): string =>
  text.replace(/\d{4}-\d\d-\d\dT[\d:.]+Z/g, (iso) => momentWords(Date.parse(iso), nowMs, clock));
