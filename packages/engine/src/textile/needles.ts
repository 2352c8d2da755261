import { fail, type Millimetres, mm, ok, type Result } from '../units/index.ts';
import type { Cited } from './references.ts';

/** One size of needle: its diameter and its names in the US and old UK systems, null where it has none. */
export type Needle = Cited & {
  readonly size: Millimetres;
  readonly us: string | null;
  readonly ukOld: string | null;
};

const read = (size: number, us: string | null, ukOld: string | null): Needle => ({
  size: mm(size),
  us,
  ukOld,
  source: 'needle-charts',
  standing: 'read',
});
const remembered = (size: number, us: string | null, ukOld: string | null): Needle => ({
  size: mm(size),
  us,
  ukOld,
  source: null,
  standing: 'from-memory',
});

/**
 * Thinnest first. Charts agree from 2 to 10 mm; for the largest they do not (17 is 12 or 12.75 mm,
 * 35 is 19 or 20), and the value kept is the one of the yarn weight system or of the inch sizes.
 */
export const NEEDLES: readonly Needle[] = [
  remembered(1.5, '000', '16'),
  remembered(1.75, '00', '15'),
  read(2, '0', '14'),
  read(2.25, '1', '13'),
  read(2.5, '1½', null),
  read(2.75, '2', '12'),
  read(3, '2½', '11'),
  read(3.25, '3', '10'),
  read(3.5, '4', null),
  read(3.75, '5', '9'),
  read(4, '6', '8'),
  read(4.5, '7', '7'),
  read(5, '8', '6'),
  read(5.5, '9', '5'),
  read(6, '10', '4'),
  read(6.5, '10½', '3'),
  read(7, null, '2'),
  read(7.5, null, '1'),
  read(8, '11', '0'),
  read(9, '13', '00'),
  read(10, '15', '000'),
  remembered(12, null, null),
  { ...read(12.75, '17', null), source: 'cyc-yarn-weights', standing: 'read' },
  read(15, '19', null),
  remembered(19, '35', null),
  read(25, '50', null),
];

/** `10 1/2`, `10.5` and `10½` are the same size; so are `US 8` and `8`. */
const tidy = (text: string): string =>
  text
    .trim()
    .replace(/^(us|uk)\s*/i, '')
    .replace(/\s*1\/2$|[.,]50?$/, '½');

const look = (text: string, system: 'us' | 'ukOld', example: string): Result<Millimetres> => {
  const found = NEEDLES.find((each) => each[system] === tidy(text));
  if (found) return ok(found.size);
  return fail({
    code: 'needle-unknown',
    field: 'needle',
    given: text,
    problem: `no ${system === 'us' ? 'US' : 'old UK'} needle size of that name is known`,
    mend: `Give the diameter in millimetres, or a size such as ${example}.`,
  });
};

/** Diameter of a US size: `needleFromUs('10½')` is 6.5 mm. Unknown names are a fault. */
export const needleFromUs = (text: string): Result<Millimetres> => look(text, 'us', '7 or 10½');

/** Diameter of an old UK size, where a larger number is a thinner needle. */
export const needleFromUkOld = (text: string): Result<Millimetres> =>
  look(text, 'ukOld', '8 or 000');

/** The size of the table nearest to a diameter; the thinner one on a tie. */
export const nearestNeedle = (diameter: Millimetres): Needle =>
  NEEDLES.reduce((best, each) =>
    Math.abs(each.size - diameter) < Math.abs(best.size - diameter) ? each : best,
  );
