import { describe, expect, it } from 'vitest';
import { WorkList } from './work-list.ts';

describe('work list', () => {
  it('M21: worst first, in order of arrival, without what has changed since', () => {
    const stamps = Int32Array.from([1, 1, 1, 1]);
    const list = new WorkList();
    list.push(3, 0, 1);
    list.push(40, 1, 1);
    list.push(3, 2, 1);
    list.push(47, 3, 0);
    expect(list.pop(stamps)).toBe(1);
    list.push(3, 1, 1);
    expect([list.pop(stamps), list.pop(stamps), list.pop(stamps)]).toEqual([0, 2, 1]);
    expect(list.pop(stamps)).toBe(-1);
    list.push(0, 3, 1);
    expect(list.pop(stamps)).toBe(3);
  });
});
