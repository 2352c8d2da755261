/** The part of the record room that needs the schemas; load it with `import()`, and nothing else of it. */
export { readRecord, writeRecord } from '@dryflat/record';
export { cleanFile } from '@dryflat/record/photo';
