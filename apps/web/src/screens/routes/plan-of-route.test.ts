import type { Route, RouteKind } from '@dryflat/engine/routes';
import { faultsOf, isDoubt } from '@dryflat/record';
import { EXAMPLES } from '@dryflat/record/examples';
import { expect, test } from 'vitest';
import { placeOfRoute, planOfRoute } from './plan-of-route.ts';

const waistcoat = () => {
  const found = EXAMPLES.find(({ record }) => record.id === 'waistcoat');
  if (found === undefined) throw new Error('the waistcoat is gone');
  return structuredClone(found.record);
};
const route = (kind: RouteKind, more: Partial<Route> = {}): Route =>
  ({ id: kind, kind, recipient: null, measurements: [], ...more }) as unknown as Route;
const after = (taken: Route) => {
  const record = waistcoat();
  planOfRoute(taken)?.(record);
  expect(faultsOf(record).filter((each) => !isDoubt(each))).toEqual([]);
  return record;
};

test('RT5: laid flat and pinned to the schematic follow the pattern alone', () => {
  expect(after(route('schematic')).plan).toMatchObject({ drying: 'pin', pinTo: [] });
  expect(after(route('lay')).plan).toMatchObject({ drying: 'lay', pinTo: [] });
});

test('RT5: a gentle block pins to its own lengths, those that are pinned', () => {
  const measurements = [
    { id: 'chest', span: 'around', pinnedMm: 1030 },
    { id: 'rib-depth', span: 'flat', pinnedMm: null },
    { id: 'not-there', span: 'flat', pinnedMm: 100 },
  ] as unknown as Route['measurements'];
  const { plan } = after(route('gentle', { measurements }));
  expect(plan).toMatchObject({
    drying: 'pin',
    pinTo: [{ measurement: 'chest', mm: 1030, span: 'around' }],
  });
});

test('RT5: another size is chosen and begun afresh; one that the pattern has not changes nothing', () => {
  const record = after(route('size', { id: 'size:5' }));
  expect(record.pattern.chosen).toBe('5');
  expect(record.progress).toBeUndefined();
  expect(after(route('size', { id: 'size:44' }))).toEqual(waistcoat());
});

test('RT5: what the record cannot hold is worked out elsewhere', () => {
  for (const kind of ['needle', 'rip-length', 'leave', 'harder'] as const)
    expect(planOfRoute(route(kind))).toBeNull();
  expect(planOfRoute(route('lay', { recipient: 'p1' }))).toBeNull();
  expect(placeOfRoute(route('rip-width'))).toBe('counts');
  expect(placeOfRoute(route('leave'))).toBeNull();
});
