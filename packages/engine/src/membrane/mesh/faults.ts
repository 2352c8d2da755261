import type { Fault } from '../../units/index.ts';
import type { Xy } from './mesh.ts';

const digits = (v: number): string => String(Number(v.toPrecision(6)));
export const place = ([x, y]: Xy): string => `(${digits(x)}, ${digits(y)}) mm`;

const fault = (
  code: string,
  field: string,
  given: string,
  problem: string,
  mend: string,
): Fault => ({ code: `mesh-${code}`, field, given, problem, mend });

export const numberFault = (field: string, given: string): Fault =>
  fault('number', field, given, 'This is not a finite number', 'Give both coordinates in mm.');

export const tooFewFault = (field: string, count: number, least: number): Fault =>
  fault(
    'few-points',
    field,
    `${count}`,
    `There are fewer than ${least} points`,
    `Give at least ${least} points.`,
  );

export const tagsFault = (field: string, given: string, wanted: number): Fault =>
  fault(
    'tags',
    field,
    given,
    'The tags do not match the edges',
    `Give ${wanted} whole numbers, one for each edge.`,
  );

export const zeroEdgeFault = (field: string, edge: number, at: Xy): Fault =>
  fault(
    'zero-edge',
    field,
    place(at),
    `Edge ${edge} has no length`,
    'Drop one of the two points that coincide.',
  );

export const areaFault = (field: string): Fault =>
  fault(
    'no-area',
    field,
    '',
    'All points lie on one line, so there is no area',
    'Move a point off the line.',
  );

/** Two edges that meet where they may not: `how` is crosses, touches or folds back over. */
export const meetingFault = (field: string, first: string, how: string, second: string, at: Xy) =>
  fault(
    'meeting',
    field,
    place(at),
    `${first} ${how} ${second}`,
    'Move or drop points until the edges are apart.',
  );

export const holeFault = (field: string, problem: string, at: Xy): Fault =>
  fault(
    'hole',
    field,
    place(at),
    problem,
    'Move the hole wholly inside the piece, or leave it out.',
  );

export const outsideFault = (field: string, what: string, at: Xy): Fault =>
  fault(
    'outside',
    field,
    place(at),
    `The ${what} is outside the piece`,
    'Move it onto the piece or its edge.',
  );

export const sizeFault = (given: string): Fault =>
  fault(
    'size',
    'size',
    given,
    'The wanted edge length is not positive',
    'Give a length above 0 mm.',
  );

export const angleFault = (given: number, largest: number): Fault =>
  fault(
    'angle',
    'minAngle',
    `${given}`,
    `The smallest angle cannot be kept to`,
    `Give 0 to ${largest} degrees.`,
  );

export const limitFault = (given: number, least: number, most: number): Fault =>
  fault(
    'limit',
    'maxPoints',
    `${given}`,
    'This many nodes cannot hold the piece',
    `Give a whole number from ${least} to ${most}.`,
  );

export const tangledFault = (field: string): Fault =>
  fault(
    'tangled',
    field,
    '',
    'Lines meet at distances too small to tell apart',
    'Let lines share a point or keep them apart.',
  );
