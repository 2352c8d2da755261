export { askEachSize, askForecast } from './ask/ask-forecast.ts';
export { inEachSize, inSize, isSizeOpen } from './ask/not-ready.ts';
export {
  faultsBesidePhotos,
  faultsOf,
  isDoubt,
  isQuestion,
  mustBeMended,
} from './check/faults-of.ts';
export { photoFaults } from './check/photo-faults.ts';
export { EXAMPLES, type Example, findExample } from './examples.ts';
export { duplicateRecord } from './make/duplicate-record.ts';
export { emptyRecord } from './make/empty-record.ts';
export { spareId } from './make/spare-id.ts';
export { type Loss, migrateDown, migrateUp, OLDEST_VERSION, STEPS } from './migrations/index.ts';
export * from './pins/index.ts';
export { type GoingOut, goingOut } from './private/going-out.ts';
export { questionsOf, type SpanQuestion, type SpanReading } from './questions/span-questions.ts';
export { type ReadRecord, readRecord } from './read/read-record.ts';
export * from './schema/index.ts';
export {
  awaitsSpan,
  directionOf,
  engineSpan,
  girthMm,
  mayGoAround,
  measurementOf,
  type Span,
  timesToEngine,
} from './spans/girths.ts';
export { marked, markedText } from './text/marked.ts';
export { writeRecord } from './write/write-record.ts';
