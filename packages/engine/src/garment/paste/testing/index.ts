export { GAUGE_LINES, NO_GAUGES } from './gauge-lines.ts';
export { WHOLE_PATTERN_NAMES, wholePattern } from './whole-pattern.ts';
