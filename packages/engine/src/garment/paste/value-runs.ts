import type { PrintedUnit } from './types.ts';
import { gapAfter, isGap, type Value, valueAt } from './value-at.ts';
import { unitNamed, type ValuePiece } from './value-pieces.ts';

/** Values that one unit word covers; null where none does. */
export interface ValueRun {
  readonly unit: PrintedUnit | null;
  readonly values: readonly Value[];
}

class Runs {
  readonly done: ValueRun[] = [];
  pending: Value[] = [];

  /** Gives the values that wait to `unit`, joining an earlier run of the same unit. */
  tag(unit: PrintedUnit | null): void {
    if (this.pending.length === 0) return;
    const at = unit === null ? -1 : this.done.findIndex((run) => run.unit === unit);
    const before = this.done[at];
    if (before) this.done[at] = { unit, values: [...before.values, ...this.pending] };
    else this.done.push({ unit, values: this.pending });
    this.pending = [];
  }

  /** `in/cm` after pairs: every other value belongs to the second unit. */
  tagPairs(first: PrintedUnit, second: PrintedUnit): void {
    const all = this.pending;
    this.pending = all.filter((_, i) => i % 2 === 0);
    this.tag(first);
    this.pending = all.filter((_, i) => i % 2 === 1);
    this.tag(second);
  }
}

/** Two units side by side, as in `in/cm` or `in (cm)`, with another number of pieces between. */
function secondUnit(pieces: readonly ValuePiece[], i: number): ValuePiece | null {
  const joined = pieces[i + 1]?.kind === 'separator' || pieces[i + 1]?.kind === 'open';
  const second = pieces[i + 2];
  return joined && second?.kind === 'unit' ? second : null;
}

/** Does a line have brackets, but no slash inside them? Then a slash outside parts two versions. */
function hasVersions(pieces: readonly ValuePiece[]): boolean {
  let depth = 0;
  let bracketed = false;
  for (const { kind, text } of pieces) {
    if (kind === 'open') bracketed = ++depth > 0;
    if (kind === 'close') depth--;
    if (depth > 0 && text === '/') return false;
  }
  return bracketed;
}

/** A slash or `=` outside brackets parts two versions of a line that has brackets. */
const partsVersions = (piece: ValuePiece, depth: number, bracketed: boolean): boolean =>
  bracketed && depth === 0 && piece.kind === 'separator' && '/=|'.includes(piece.text);

/** Takes the unit at piece `i`, or the pair of units that starts there; says where to go on. */
function takeUnit(pieces: readonly ValuePiece[], i: number, runs: Runs): number {
  const [unit, second] = [unitNamed(pieces[i]!.text), secondUnit(pieces, i)];
  if (!second) {
    runs.tag(unit);
    return i + 1;
  }
  runs.tagPairs(unit, unitNamed(second.text));
  return i + 3;
}

/** Sorts the numbers of a line under the units that follow them. */
export function valueRuns(pieces: readonly ValuePiece[]): ValueRun[] {
  const runs = new Runs();
  const bracketed = hasVersions(pieces);
  let depth = 0;
  for (let i = 0; i < pieces.length; ) {
    const piece = pieces[i]!;
    if (piece.kind === 'open') depth++;
    if (piece.kind === 'close') depth = Math.max(0, depth - 1);
    if (partsVersions(piece, depth, bracketed)) runs.tag(null);
    const taken = valueAt(pieces, i);
    if (taken) runs.pending.push(taken.value);
    if (isGap(pieces, i)) runs.pending.push(gapAfter(piece));
    if (piece.kind === 'unit') i = takeUnit(pieces, i, runs);
    else i = taken?.next ?? i + 1;
  }
  runs.tag(null);
  return runs.done;
}
