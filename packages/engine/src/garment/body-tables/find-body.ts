import type { Cited } from '../../textile/index.ts';
import { fail, type Millimetres, mm, ok, type Result } from '../../units/index.ts';
import { BABIES } from './babies.ts';
import type { BodyTable } from './body-table.ts';
import { CHILDREN } from './children.ts';
import { HEADS } from './heads.ts';
import { MEN } from './men.ts';
import { WOMEN } from './women.ts';

/** Published sizes of bodies, as a start where no tape is at hand. Each row says how it was seen. */
export const BODY_TABLES: readonly BodyTable[] = [WOMEN, MEN, CHILDREN, BABIES, HEADS];

/** One measurement of one size. `middle` is what a form may start from. */
export type BodyStart = Cited & {
  readonly body: string;
  readonly name: string;
  readonly girth: boolean;
  readonly low: Millimetres;
  readonly middle: Millimetres;
  readonly high: Millimetres;
};

const listed = (names: readonly string[]): string => names.join(', ');

/** Every measurement that a table has for a size. An unknown table or size is a fault that lists the known ones. */
export const bodyFromTable = (table: string, size: string): Result<readonly BodyStart[]> => {
  const found = BODY_TABLES.find((each) => each.id === table);
  if (!found)
    return fail({
      code: 'body-table-unknown',
      field: 'table',
      given: table,
      problem: 'there is no size table of that name',
      mend: `Choose one of: ${listed(BODY_TABLES.map((each) => each.id))}.`,
    });
  const column = found.sizes.indexOf(size);
  if (column < 0)
    return fail({
      code: 'body-size-unknown',
      field: 'size',
      given: size,
      problem: `the table ${found.id} has no such size`,
      mend: `Choose one of: ${listed(found.sizes)}.`,
    });
  return ok(
    found.rows.flatMap(({ values, ...row }) => {
      const value = values[column];
      return value ? [{ ...row, ...value, middle: mm((value.low + value.high) / 2) }] : [];
    }),
  );
};
