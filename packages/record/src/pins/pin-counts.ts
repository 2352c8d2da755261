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

type Wires = Pick<MatWork, 'steps' | 'pinsForWires'>;

const wireLength = ({ kind, along }: MatStep): number =>
  kind === 'wire' ? (along?.lengthMm ?? 1) : 0;

/**
 * Straight pins that hold each step that is a wire, 0 for the others: `pinsForWires` shared out by
 * length in whole pins, so that together they are all of them. None where no step is a wire.
 */
export const pinsForEachWire = ({ steps, pinsForWires }: Wires): number[] => {
  const all = steps.reduce((sum, step) => sum + wireLength(step), 0);
  let [run, given] = [0, 0];
  return steps.map((step) => {
    run += wireLength(step);
    const due = all === 0 ? 0 : Math.round((pinsForWires * run) / all) - given;
    given += due;
    return due;
  });
};

const countOf = (work: Wires, counts: (step: MatStep) => boolean): PinCounts => {
  const forWires = pinsForEachWire(work);
  return sum(
    work.steps.flatMap((step, at) =>
      counts(step)
        ? [
            { ...NONE, [KIND_OF[step.kind]]: 1 },
            { ...NONE, straight: forWires[at] ?? 0 },
          ]
        : [],
    ),
  );
};

/**
 * Pins of one piece that went into the mat: steps that are in, pins beside the plan, and straight pins
 * at the wires that are in. Taking pins out does not lower it.
 */
export const pinsIn = (work: Wires & Pick<MatWork, 'extra'>): PinCounts =>
  add(
    countOf(work, ({ done }) => done === 'in'),
    work.extra ?? NONE,
  );

/** Pins of one piece that the plan still has to place. */
export const pinsToCome = (work: Wires): PinCounts =>
  countOf(work, ({ done }) => done === undefined);

/** Pins taken out, over all pieces that were on the mat. */
export const pinsOut = ({ onMat = [] }: Pick<GarmentRecord, 'onMat'>): PinCounts =>
  sum(onMat.map(({ out = NONE }) => out));

/** Pins that went in and are not out, over all pieces; a piece not unpinned yet misses all of its pins. */
export const pinsMissing = ({ onMat = [] }: Pick<GarmentRecord, 'onMat'>): PinCounts =>
  sum(onMat.map((work) => beyond(pinsIn(work), work.out ?? NONE)));
