export { type PaceCalendarAsked, paceCalendar } from './calendar.ts';
export { drawPace } from './draw-pace.ts';
export { paceForecast } from './pace-forecast.ts';
export { restCaution } from './rest.ts';
export type * from './types.ts';
