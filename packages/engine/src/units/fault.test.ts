import { expect, test } from 'vitest';
import { explain } from './fault.ts';

test('a fault reads as field, problem, what was given and the mend', () => {
  const fault = {
    code: 'x',
    field: 'wearer.name',
    given: '',
    problem: 'a name is missing',
    mend: 'Type one.',
  };
  expect(explain(fault)).toBe('wearer.name: a name is missing. Type one.');
  expect(explain({ ...fault, given: '7' })).toBe(
    'wearer.name: a name is missing (given: 7). Type one.',
  );
});
