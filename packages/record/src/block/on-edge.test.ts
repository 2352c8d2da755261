import { expect, it } from 'vitest';
import { onEdge } from './on-edge.ts';

const square = [
  { x: 0, y: 0 },
  { x: 10, y: 0 },
  { x: 10, y: 10 },
  { x: 0, y: 10 },
];

it.each([
  ['on an edge, itself', { x: 4, y: 0 }, { x: 4, y: 0 }],
  ['outside, straight onto it', { x: 3, y: -5 }, { x: 3, y: 0 }],
  ['inside, to the nearer edge', { x: 9, y: 4 }, { x: 10, y: 4 }],
  ['beyond a corner, the corner', { x: -2, y: 13 }, { x: 0, y: 10 }],
])('R68: a pin is %s', (_, from, to) => {
  expect(onEdge(square, from)).toEqual(to);
});
