import type { ForecastState } from '@dryflat/engine/fabric';
import type { Measured } from '@dryflat/record';

export type TapeState = Measured['state'];

interface StateName {
  readonly label: string;
  /** What the fabric has been through by then. */
  readonly means: string;
}

/** The states of a fabric as a knitter calls them. */
export const STATE_NAMES: Readonly<Record<TapeState, StateName>> = {
  asKnit: { label: 'As knit', means: 'off the needles, rested, never wet' },
  wet: { label: 'Wet', means: 'soaked through, pressed, laid flat without stretch' },
  pinned: { label: 'Pinned', means: 'wet, held to a shape' },
  dried: { label: 'Dried', means: 'dry, pins out, rested' },
  worn: { label: 'Worn', means: 'after hanging under its own weight on a body' },
  rewashed: { label: 'Rewashed', means: 'after a later soak, dried without pins' },
};

/** The states that a forecast is given for, in the order in which they come. */
export const STATES_FORECAST: readonly ForecastState[] = [
  'asKnit',
  'wet',
  'dried',
  'worn',
  'rewashed',
];

export const stateChoices = <S extends TapeState>(states: readonly S[]) =>
  states.map((value) => ({ value, label: STATE_NAMES[value].label }));
