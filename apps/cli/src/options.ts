import { type Fault, fail, ok, type Result } from '@dryflat/engine/units';

const wrong = (option: string, given: string, problem: string, mend: string): Fault => ({
  code: 'option-unusable',
  field: option,
  given,
  problem,
  mend,
});

/** One of a few words. */
export const oneOf = <T extends string>(
  option: string,
  given: string,
  choices: readonly T[],
): Result<T> => {
  const chosen = choices.find((choice) => choice === given);
  if (chosen !== undefined) return ok(chosen);
  const list = choices.join(', ');
  return fail(wrong(option, given, 'this is not one of its choices', `Choose from: ${list}.`));
};

/** A whole number, both ends allowed; written with digits only. */
export const wholeNumber = (
  option: string,
  given: string,
  least: number,
  most: number,
): Result<number> => {
  const value = Number(given);
  if (/^\d+$/.test(given) && value >= least && value <= most) return ok(value);
  return fail(
    wrong(
      option,
      given,
      'this is not a whole number in its range',
      `Give a whole number from ${least} to ${most}.`,
    ),
  );
};

/** The faults of several results together. */
export const faultsIn = (...results: readonly Result<unknown>[]): readonly Fault[] =>
  results.flatMap((result) => (result.ok ? [] : result.faults));
