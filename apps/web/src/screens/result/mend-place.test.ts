import { expect, it } from 'vitest';
import { placeOfField } from './mend-place.ts';

it.each([
  ['pattern.sizes', 'pattern'],
  ['pattern.measurements[2].span', 'pattern'],
  ['evidence[0].readings[1].count', 'evidence'],
  ['wearer.body[0].mm', 'wearer'],
  ['yarns[0].fibres', 'yarn'],
  ['needleMm', 'yarn'],
  ['pieces[0].measured[0].mm', 'pieces'],
  ['outcomes[0].measured[0].span', 'after'],
  ['dryings[0].wet', 'dry'],
  ['finished.missing', 'dry'],
  ['plan.pinTo[0].mm', 'forecast'],
  ['plan.weights', 'routes'],
  ['weights.fit', 'routes'],
  ['plan.finishBy', 'pace'],
  ['pace.hours[2]', 'pace'],
  ['people[0].body[0].mm', 'wearer'],
  ['left[0].massG', 'yarn'],
  ['something.else', 'pattern'],
])('%s is mended under %s', (field, place) => {
  expect(placeOfField(field)).toBe(place);
});
