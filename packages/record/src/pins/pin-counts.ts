import type { GarmentRecord, MatStep, MatWork, PinCounts } from '../schema/index.ts';

/** Kinds of pins in the order in which they are told. */
export const PIN_KINDS = ['straight', 'tPins', 'combs', 'wires'] as const;
export type PinKind = (typeof PIN_KINDS)[number];

const NONE: PinCounts = { straight: 0, tPins: 0, combs: 0, wires: 0 };

const KIND_OF: Readonly<Record<MatStep['kind'], PinKind>> = {
  straight: 'straight',
  't-pin': 'tPins',
  comb: 'combs',
  wire: 'wires',
};

/** Counts of two put together kind by kind. */
const together = (
  a: PinCounts,
  b: PinCounts,
  how: (one: number, other: number) => number,
): PinCounts => ({
  straight: how(a.straight, b.straight),
  tPins: how(a.tPins, b.tPins),
  combs: how(a.combs, b.combs),
  wires: how(a.wires, b.wires),
});

const add = (a: PinCounts, b: PinCounts): PinCounts => together(a, b, (one, other) => one + other);
const sum = (list: readonly PinCounts[]): PinCounts => list.reduce(add, NONE);

/** What is in `a` beyond `b`, kind by kind; 0 where `b` has as many. */
export const beyond = (a: PinCounts, b: PinCounts): PinCounts =>
  together(a, b, (one, other) => Math.max(0, one - other));

export const pinTotal = (counts: PinCounts): number =>
  counts.straight + counts.tPins + counts.combs + counts.wires;

/** Pins that hold the ends of those wires that are in: all of `pinsForWires` once all wires are. */
const pinsAtWires = ({ steps, pinsForWires }: MatWork): number => {
  const wires = steps.filter(({ kind }) => kind === 'wire');
  const placed = wires.filter(({ done }) => done === 'in').length;
  return placed === 0 ? 0 : Math.ceil((pinsForWires * placed) / wires.length);
};

/**
 * Pins of one piece that went into the mat: steps that are in, pins beside the plan, and straight pins
 * at the ends of the wires that are in. Taking pins out does not lower it.
 */
export const pinsIn = (work: MatWork): PinCounts =>
  sum([
    ...work.steps
      .filter(({ done }) => done === 'in')
      .map(({ kind }) => ({ ...NONE, [KIND_OF[kind]]: 1 })),
    work.extra ?? NONE,
    { ...NONE, straight: pinsAtWires(work) },
  ]);

/** Pins taken out, over all pieces that were on the mat. */
export const pinsOut = ({ onMat = [] }: Pick<GarmentRecord, 'onMat'>): PinCounts =>
  sum(onMat.map(({ out = NONE }) => out));

/** Pins that went in and are not out, over all pieces; a piece not unpinned yet misses all of its pins. */
export const pinsMissing = ({ onMat = [] }: Pick<GarmentRecord, 'onMat'>): PinCounts =>
  sum(onMat.map((work) => beyond(pinsIn(work), work.out ?? NONE)));
