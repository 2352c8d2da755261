import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { draws } from '../../../../scripts/lib/draws.mjs';
import { garment } from './check/garments.ts';
import { promisesBroken } from './check/promises.ts';
import { routes } from './routes.ts';

describe('what a route says is what it gives', () => {
  it('O24: carried out row by row, a route gives the measurements that it promises', () => {
    let carriedOut = 0;
    fc.assert(
      fc.property(garment, (question) => {
        const found = routes(question, { draws: 100 });
        if (!found.ok) throw new Error(JSON.stringify(found.faults));
        carriedOut += found.value.routes.filter(({ knitting }) => knitting !== null).length;
        expect(promisesBroken(question, found.value)).toEqual([]);
      }),
      { numRuns: draws(40, 1000), seed: 4 },
    );
    expect(carriedOut).toBeGreaterThan(100);
  });
});
