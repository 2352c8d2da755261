export type { BodyId, BodyRange, BodyRow, BodyTable } from './body-table.ts';
export { BODY_NAMES } from './body-table.ts';
export * from './ease-classes.ts';
export * from './find-body.ts';
export * from './letter-codes.ts';
