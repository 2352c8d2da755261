import { type MatStep, type MatWork, pinsIn } from '@dryflat/record';
import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { goBack, goOn, leftOut, passBy, setDone, takeBack } from './progress.ts';

const NOW = '2031-02-20T10:00:00Z';
const LATER = '2031-02-20T11:00:00Z';

const step = (kind: MatStep['kind'] = 'straight'): MatStep => ({
  xMm: 0,
  yMm: 0,
  kind,
  edge: 'selvedge',
  from: [
    { name: 'a', mm: 1 },
    { name: 'b', mm: 1 },
  ],
  pullN: 0,
  ...((kind === 'comb' || kind === 'wire') && { along: { lengthMm: 900, dx: 1, dy: 0 } }),
});

const workOf = (steps: MatStep[]): MatWork => ({
  id: 'w',
  piece: 'back',
  copy: '',
  mirrored: false,
  layers: 1,
  gentle: true,
  begun: NOW,
  steps,
  at: 0,
  told: [],
  pinsForWires: steps.filter(({ kind }) => kind === 'wire').length,
});

test('PN4: next puts in and goes on, back takes nothing out, and past the last the time is noted once', () => {
  const work = workOf([step(), step('t-pin')]);
  goOn(work, NOW);
  goBack(work, NOW);
  expect([work.at, work.steps[0]!.done, work.pinned]).toEqual([0, 'in', undefined]);
  goOn(work, NOW);
  goOn(work, NOW);
  expect([work.at, work.pinned]).toEqual([2, NOW]);
  goBack(work, LATER);
  goOn(work, LATER);
  expect(work.pinned).toBe(NOW);
  goOn(work, LATER);
  expect(work.at).toBe(2);
});

test('PN4: what is left out stays out when it is passed again, until it is put in after all', () => {
  const work = workOf([step(), step(), step()]);
  passBy(work, NOW);
  goBack(work, NOW);
  goOn(work, NOW);
  expect(leftOut(work)).toEqual([0]);
  goOn(work, NOW);
  goOn(work, NOW);
  expect(work.pinned).toBe(NOW);
  expect(pinsIn(work).straight).toBe(2);
  goBack(work, NOW);
  takeBack(work);
  expect([work.steps[2]!.done, work.pinned]).toEqual([undefined, undefined]);
  setDone(work, 0, 'in');
  expect(leftOut(work)).toEqual([]);
});

test('PN4: the box loses what goes in and gets back what comes out, whatever is pressed', () => {
  const kinds = fc.array(fc.constantFrom('straight' as const, 't-pin', 'comb', 'wire'), {
    minLength: 1,
    maxLength: 8,
  });
  const moves = fc.array(fc.constantFrom(goOn, goBack, passBy, takeBack), { maxLength: 30 });
  fc.assert(
    fc.property(kinds, moves, (kinds, moves) => {
      const work = workOf(kinds.map(step));
      work.left = {
        straight: 50,
        tPins: 20,
        combs: [{ lengthMm: 900, count: 10 }],
        wires: [{ lengthMm: 900, count: 10 }],
      };
      for (const move of moves) move(work, NOW);
      const counts = pinsIn(work);
      expect(work.left.straight + counts.straight).toBe(50);
      expect(work.left.tPins + counts.tPins).toBe(20);
      expect(work.left.combs[0]!.count + counts.combs).toBe(10);
      expect(work.left.wires[0]!.count + counts.wires).toBe(10);
      expect(work.at).toBeGreaterThanOrEqual(0);
      expect(work.at).toBeLessThanOrEqual(work.steps.length);
    }),
  );
});
