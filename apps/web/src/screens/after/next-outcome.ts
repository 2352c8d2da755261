import type { Outcome } from '@dryflat/record';
import { garmentHash } from '../../shell/hash.ts';
import { newId } from '../../store/index.ts';
import { today } from '../result/today.ts';

/** States in which a finished garment is measured. */
export const AFTER_STATES = ['dried', 'worn', 'rewashed'] as const;
export type AfterState = (typeof AFTER_STATES)[number];

/** Today, with one wash unless it had more before. */
export const nextOutcome = (outcomes: readonly Outcome[]): Outcome => ({
  id: newId(),
  on: today(),
  washes: Math.max(1, ...outcomes.map(({ washes }) => washes)),
  remark: '',
  measured: [],
});

/** With a day ready to be filled in for a state: today's, or one that was begun and holds nothing. */
export const outcomeFor = (outcomes: readonly Outcome[], state: AfterState): Outcome[] => {
  const last = outcomes.at(-1);
  if (last !== undefined && (last.on === today() || last.measured.length === 0))
    return [...outcomes];
  const next = nextOutcome(outcomes);
  const again = state === 'rewashed' && outcomes.length > 0;
  return [...outcomes, again ? { ...next, washes: next.washes + 1 } : next];
};

/** Address of the outcomes, the fields of a state ready. */
export const afterHash = (garment: string, state: AfterState): string =>
  `${garmentHash(garment, 'after')}/${state}`;

/** The state whose fields an address asks for; null where it names none. */
export const stateAsked = (hash: string): AfterState | null =>
  AFTER_STATES.find((state) => hash.endsWith(`/after/${state}`)) ?? null;
