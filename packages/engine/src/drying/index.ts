export { TOLERANCE } from './assumptions.ts';
export { type CalendarAsked, dryingCalendar } from './calendar.ts';
export { escapeText, foldLine, utcStamp } from './calendar-text.ts';
export { forecastDrying } from './drying.ts';
export type { Solved } from './falling-root.ts';
export {
  airPressure,
  dewPoint,
  latentHeat,
  psychrometricConstant,
  saturationPressure,
  vapourPressure,
  wetBulb,
  wetFaceRate,
} from './psychrometrics.ts';
export type * from './types.ts';
