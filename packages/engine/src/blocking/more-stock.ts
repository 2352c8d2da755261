import { dropPins, pinFirst, type Standing, standingOf } from './choose-pins.ts';
import type { Choosing } from './choosing.ts';
import type { PinState } from './pin-state.ts';
import { spacePins } from './space-pins.ts';
import { Supplies } from './supplies.ts';

/** More pins than anybody owns. */
const ENOUGH = 5000;

export interface MoreStock {
  readonly what: string;
  readonly gains: string;
}

const mm = (value: number): string => `{mm:${value.toFixed(1)}}`;

/** What the plan would be with as many pins as it takes; nothing where it has them or nothing is left to spend. */
export const moreStock = (
  state: PinState,
  standing: Standing,
  choosing: Choosing,
): { more: MoreStock[]; iterations: number } => {
  if (!state.sheet.effort.goOn()) return { more: [], iterations: 0 };
  const full = state.bare();
  const supplies = new Supplies({ straight: ENOUGH, tPins: 0, combs: [], wires: [] });
  pinFirst(full, supplies);
  for (const run of state.runs) if (!full.runs.includes(run)) full.runs.push(run);
  full.solve();
  spacePins(full, supplies, choosing);
  dropPins(full, supplies, choosing);
  const then = standingOf(full);
  const extra = full.pins.size - state.pins.size;
  const gains = [
    ...(then.scallop < standing.scallop - 0.5
      ? [`the deepest scallop falls from ${mm(standing.scallop)} to ${mm(then.scallop)}`]
      : []),
    ...standing.off.flatMap(({ ruler, by }) => {
      const after = then.off.find((o) => o.ruler.dimension.name === ruler.dimension.name)?.by ?? 0;
      return after < by - 0.5 ? [`${ruler.dimension.name} comes ${mm(by - after)} closer`] : [];
    }),
    ...(state.fixed().length < 2 ? ['the piece keeps its shape'] : []),
  ];
  if (extra <= 0 || gains.length === 0) return { more: [], iterations: full.iterations };
  const what = `${extra} more ${extra === 1 ? 'pin' : 'pins'}`;
  return { more: [{ what, gains: gains.join('; ') }], iterations: full.iterations };
};
