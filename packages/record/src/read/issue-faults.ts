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
        ? `Write ${expectation(issue)}.`
        : `Write "${meant}", or another of ${quoted(choices)}.`,
  };
};

const quoted = (choices: readonly string[]): string =>
  choices.map((each) => (/^\d+$/.test(each) ? each : `"${each}"`)).join(', ');

type TooSmallOrBig = Extract<Issue, { code: 'too_small' | 'too_big' }>;

const outOfRange = (issue: TooSmallOrBig): Wrong => {
  const bound = issue.code === 'too_small' ? issue.minimum : issue.maximum;
  if (issue.origin === 'string') return textTooLong(issue.code, Number(bound));
  const side = sideOf(issue);
  if (issue.origin === 'array') return wrongLength(issue.exact ? 'exactly' : side, Number(bound));
  return {
    code: 'out-of-range',
    problem: `${expectation(issue)} must be ${side} ${String(bound)}`,
    mend: `Give ${expectation(issue)} of ${side} ${String(bound)}.`,
  };
};

const sideOf = ({ code, inclusive }: TooSmallOrBig): string => {
  if (code === 'too_small') return inclusive ? 'at least' : 'more than';
  return inclusive ? 'at most' : 'less than';
};

const wrongLength = (side: string, bound: number): Wrong => ({
  code: 'wrong-length',
  problem: `the list must have ${side} ${bound} entries`,
  mend: `Give ${side} ${bound} entries.`,
});

const textTooLong = (code: 'too_small' | 'too_big', bound: number): Wrong =>
  code === 'too_small'
    ? { code: 'empty', problem: 'it is empty', mend: 'Write at least one letter or digit.' }
    : {
        code: 'too-long',
        problem: `it is longer than ${bound} letters`,
        mend: `Shorten it to ${bound} letters.`,
      };

/** Words and numbers that a value may be; of a union those of all its branches. */
const choicesOf = (issue: Issue): string[] => {
  if (issue.code === 'invalid_value') return issue.values.map(String);
  const { options = [] } = issue as { options?: readonly unknown[] };
  return options.length > 0 ? options.map(String) : branchesOf(issue).flatMap(choicesOf);
};

const branchesOf = (issue: Issue): readonly Issue[] =>
  issue.code === 'invalid_union' ? (issue.errors ?? []).flat() : [];

/** What a union takes beside its words: of `wet`, a mass. */
const besides = (issue: Issue): string | null => {
  const other = branchesOf(issue).find((each) => each.code === 'invalid_type');
  return other === undefined ? null : expectedAt(issue.path, expects(other));
};

const expects = (issue: Issue): string => {
  if (issue.code === 'invalid_type') return String(issue.expected);
  if (issue.code === 'too_small' || issue.code === 'too_big') return String(issue.origin);
  return issue.code === 'invalid_union' ? 'object' : 'string';
};

const expectation = (issue: Issue): string => {
  const choices = choicesOf(issue);
  if (choices.length === 1) return quoted(choices);
  if (choices.length === 0) return expectedAt(issue.path, expects(issue));
  const other = besides(issue);
  return `${other === null ? '' : `${other}, or `}one of ${quoted(choices)}`;
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
