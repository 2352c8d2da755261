import { describe, expect, it } from 'vitest';
import { sparseBackend } from './backend.ts';
import { heldStiffness } from './check/plane-stress-grid.ts';
import { largestDifference, waves } from './check/random-symmetric.ts';
import { factorise } from './factor.ts';
import { solve } from './solve.ts';
import { analyse } from './symbolic.ts';
import { growTo, layOut } from './wasm-memory.ts';

const small = heldStiffness(6, 6, 1);
const large = heldStiffness(40, 40, 1);

const memoryBytes = (backend: ReturnType<typeof sparseBackend>): number =>
  backend.bound!.x.buffer.byteLength;

describe('memory', () => {
  it('SP9: 5,000 refactorisations take no more memory than one, and the last is right', () => {
    const backend = sparseBackend('wasm');
    const symbolic = analyse(small.pattern, 2);
    factorise(symbolic, small.values, { backend });
    const before = memoryBytes(backend);
    const expected = solve(factorise(symbolic, small.values, { backend }), waves(72));
    for (let k = 1; k <= 5000; k++)
      solve(factorise(symbolic, small.values, { backend, shift: k }), waves(72));
    expect(memoryBytes(backend)).toBe(before);
    expect(solve(factorise(symbolic, small.values, { backend }), waves(72))).toEqual(expected);
  });

  it('SP9: it grows for a larger analysis and is used again for a smaller one', () => {
    const backend = sparseBackend('wasm');
    const symbolics = [analyse(small.pattern, 2), analyse(large.pattern, 2)] as const;
    factorise(symbolics[0], small.values, { backend });
    const little = memoryBytes(backend);
    const factor = factorise(symbolics[1], large.values, { backend });
    const much = memoryBytes(backend);
    expect(much).toBeGreaterThan(little);
    expect(solve(factor, waves(3200)).every(Number.isFinite)).toBe(true);
    for (let k = 0; k < 200; k++) {
      factorise(symbolics[0], small.values, { backend });
      factorise(symbolics[1], large.values, { backend });
    }
    expect(memoryBytes(backend)).toBe(much);
    const again = solve(factorise(symbolics[0], small.values, { backend }), waves(72));
    expect(again).toEqual(solve(factorise(symbolics[0], small.values), waves(72)));
  });

  it('SP9: it is no larger than its arrays, to a page', () => {
    const backend = sparseBackend('wasm');
    const symbolic = analyse(large.pattern, 2);
    factorise(symbolic, large.values, { backend });
    expect(memoryBytes(backend) - layOut(symbolic, 0).end).toBeLessThan(2 * 65536);
  });

  it('SP9: a thousand solvers one after another leave room for the next', () => {
    const b = waves(72);
    const expected = solve(factorise(analyse(small.pattern, 2), small.values), b);
    for (let k = 0; k < 1000; k++) {
      const factor = factorise(analyse(small.pattern, 2), small.values);
      expect(factor.backend.name).toBe('wasm');
      if (k === 999) expect(largestDifference(solve(factor, b), expected)).toBe(0);
    }
  });

  it('SP9: arrays lie one after another on multiples of 16 bytes', () => {
    const at = layOut(analyse(small.pattern, 2), 8);
    const addresses = Object.entries(at).filter(([name]) => name !== 'end');
    const places = addresses.map(([, address]) => address);
    expect(places.every((address) => address % 16 === 0 && address >= 8)).toBe(true);
    expect(places).toEqual(places.toSorted((a, b) => a - b));
    expect(at.end).toBeGreaterThan(at.filled);
  });

  it('SP9: memory grows by whole pages and never shrinks', () => {
    const memory = new WebAssembly.Memory({ initial: 1 });
    growTo(memory, 65537);
    expect(memory.buffer.byteLength).toBe(2 * 65536);
    growTo(memory, 1);
    expect(memory.buffer.byteLength).toBe(2 * 65536);
  });
});
