import type { Fault } from '@dryflat/engine/units';
import type { core } from 'zod';
import { expectedAt } from './expected.ts';
import { nearest } from './nearest.ts';
import { givenText, type Path, pathText, valueAt } from './path.ts';

type Issue = core.$ZodIssue;
type KeysAt = (path: Path) => readonly string[];

/**
 * Turns one issue of the schema into faults in words of the file. `root` is the parsed value and
 * `keysAt` tells which keys the schema knows at a path.
 */
export const issueFaults = (issue: Issue, root: unknown, keysAt: KeysAt): Fault[] => {
  if (issue.code === 'unrecognized_keys')
    return issue.keys.map((key) => unknownKey(issue, key, root, keysAt));
  const value = valueAt(root, issue.path);
  const field = pathText(issue.path);
  if (value === undefined) return [missing(issue, field)];
  return [{ field, given: givenText(value), ...wrong(issue, value) }];
};

const unknownKey = (issue: Issue, key: string, root: unknown, keysAt: KeysAt): Fault => {
  const known = keysAt(issue.path);
  const meant = nearest(key, known);
  return {
    code: 'unknown-key',
    field: pathText([...issue.path, key]),
    given: givenText(valueAt(root, [...issue.path, key])),
    problem: `there is no field of this name here`,
    mend:
      meant === null
        ? `Remove it; the fields here are ${known.join(', ')}.`
        : `Rename it to "${meant}", or remove it.`,
  };
};

const missing = (issue: Issue, field: string): Fault => ({
  code: 'missing',
  field,
  given: '',
  problem: 'it is missing',
  mend: `Add it: ${expectation(issue)}.`,
});

type Wrong = Pick<Fault, 'code' | 'problem' | 'mend'>;

const wrong = (issue: Issue, value: unknown): Wrong => {
  if (issue.code === 'invalid_value' || issue.code === 'invalid_union')
    return notAmong(issue, value);
  if (issue.code === 'too_small' || issue.code === 'too_big') return outOfRange(issue);
  if (issue.code === 'invalid_format')
    return {
      code: 'wrong-format',
      problem: `it is not ${expectation(issue)}`,
      mend: `Write ${expectation(issue)}.`,
    };
  return {
    code: 'wrong-type',
    problem: `it is ${kindOf(value)}, but ${expectation(issue)} belongs here`,
    mend: mendType(issue, value),
  };
};

const mendType = (issue: Issue, value: unknown): string => {
  const number = expects(issue) === 'number' ? quotedNumber(value) : null;
  return number === null ? `Write ${expectation(issue)}.` : `Write it without quotes: ${number}.`;
};

/**
 * A number that somebody put into quotes, with a decimal point; null for anything else. A comma
 * before exactly three digits may be meant either way, so that is left to the knitter.
 */
const quotedNumber = (value: unknown): string | null => {
  const match = typeof value === 'string' ? /^\s*(-?\d+)(?:([.,])(\d+))?\s*$/.exec(value) : null;
  if (match === null) return null;
  const [, whole, sign, decimals] = match;
  if (sign === ',' && decimals?.length === 3) return null;
  return decimals === undefined ? String(whole) : `${whole}.${decimals}`;
};

const notAmong = (issue: Issue, value: unknown): Wrong => {
  const choices = choicesOf(issue);
  const meant = typeof value === 'string' ? nearest(value, choices) : null;
  return {
    code: 'not-among',
    problem:
      choices.length === 1
        ? 'it is not the one value allowed here'
        : 'it is none of the choices here',
    mend:
      meant === null || choices.length === 1
        ? `Write ${choices.length === 1 ? '' : 'one of '}${choices.map((each) => `"${each}"`).join(', ')}.`
        : `Write "${meant}", or another of ${choices.map((each) => `"${each}"`).join(', ')}.`,
  };
};

const outOfRange = (issue: Extract<Issue, { code: 'too_small' | 'too_big' }>): Wrong => {
  const bound = issue.code === 'too_small' ? issue.minimum : issue.maximum;
  if (issue.origin === 'string') return textTooLong(issue.code, Number(bound));
  const side =
    issue.code === 'too_small' ? (issue.inclusive ? 'at least' : 'more than') : 'at most';
  return {
    code: 'out-of-range',
    problem: `${expectation(issue)} must be ${side} ${String(bound)}`,
    mend: `Give ${expectation(issue)} of ${side} ${String(bound)}.`,
  };
};

const textTooLong = (code: 'too_small' | 'too_big', bound: number): Wrong =>
  code === 'too_small'
    ? { code: 'empty', problem: 'it is empty', mend: 'Write at least one letter or digit.' }
    : {
        code: 'too-long',
        problem: `it is longer than ${bound} letters`,
        mend: `Shorten it to ${bound} letters.`,
      };

const choicesOf = (issue: Issue): string[] => {
  if (issue.code === 'invalid_value') return issue.values.map(String);
  const { options = [] } = issue as { options?: readonly unknown[] };
  return options.map(String);
};

const expects = (issue: Issue): string => {
  if (issue.code === 'invalid_type') return String(issue.expected);
  if (issue.code === 'too_small' || issue.code === 'too_big') return String(issue.origin);
  return issue.code === 'invalid_union' ? 'object' : 'string';
};

const expectation = (issue: Issue): string => {
  const choices = choicesOf(issue);
  if (choices.length === 1) return `"${choices[0]}"`;
  if (choices.length > 1) return `one of ${choices.map((each) => `"${each}"`).join(', ')}`;
  return expectedAt(issue.path, expects(issue));
};

const kindOf = (value: unknown): string => {
  if (value === null) return 'null';
  if (Array.isArray(value)) return 'a list';
  const names: Record<string, string> = {
    string: 'a text',
    number: Number.isInteger(value) ? 'a number' : 'a number with a fraction',
    boolean: 'true or false',
    object: 'a group of fields',
  };
  return names[typeof value] ?? typeof value;
};
