import type { Route, RoutesResult, SizeAtNeedle } from '@dryflat/engine/routes';
import { expect, test } from 'vitest';
import type { RoutesAnswer } from '../../worker/routes/index.ts';
import { ROUTES, type RoutesNow } from '../routes/use-routes.ts';
import { taken } from './use-routes-worker.ts';

const turn = 1;
const route = (id: string) => ({ id }) as Route;
const result = { routes: [route('b'), route('a')] } as unknown as RoutesResult;
const sizes = [{ size: '1' }] as unknown as SizeAtNeedle[];
const after = (...told: RoutesAnswer[]): RoutesNow =>
  told.reduce((was, each) => taken(ROUTES, was, each), ROUTES.start);
const first: RoutesAnswer[] = [
  { kind: 'route', turn, route: route('a') },
  { kind: 'route', turn, route: route('b') },
];

test('RT2: routes are shown as they come, then in order, then sizes', () => {
  expect(after(...first).arriving.map(({ id }) => id)).toEqual(['a', 'b']);
  expect(after(...first)).toMatchObject({ pending: true, result: null });
  const ordered = after(...first, { kind: 'routes', turn, result });
  expect(ordered).toMatchObject({ pending: false, arriving: [], result });
  expect(after(...first, { kind: 'routes', turn, result }, { kind: 'sizes', turn, sizes })).toEqual(
    {
      ...ordered,
      sizes,
    },
  );
});

test('RT2: what was in order stays while the next is worked out, and goes where it fails', () => {
  const ordered = after({ kind: 'routes', turn, result });
  const again = { ...ordered, ...ROUTES.again, pending: true };
  expect(again.result).toBe(result);
  const fault = { code: 'c', field: 'f', given: '', problem: 'p', mend: 'm' };
  const failed = taken(ROUTES, again, { kind: 'faults', turn, faults: [fault] });
  expect(failed).toMatchObject({ result: null, pending: false, faults: [fault] });
  const broken = taken(ROUTES, again, { kind: 'broken', turn, message: 'oh' });
  expect(broken).toMatchObject({ result: null, pending: false, broken: 'oh' });
  expect(taken(ROUTES, broken, { kind: 'routes', turn, result }).broken).toBeNull();
});
