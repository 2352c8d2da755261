import type { Specimen } from '@dryflat/record';
import { useState } from 'react';
import { announce, ChoiceChips } from '../../kit/index.ts';
import { STATE_NAMES } from '../result/state-names.ts';
import type { GridState } from './grid-rows.ts';

/** A state to read in; what dried on pins is told from what dried laid flat. */
export type ReadState = GridState | 'onPins';

const LABELS: Readonly<Record<ReadState, string>> = {
  asKnit: STATE_NAMES.asKnit.label,
  wet: STATE_NAMES.wet.label,
  dried: 'Dried, laid flat',
  onPins: 'Dried, on pins',
  rewashed: STATE_NAMES.rewashed.label,
};

/** The parts of a reading that a chosen state stands for. */
export const readIn = (chosen: ReadState): { state: GridState; pinned?: boolean } =>
  chosen === 'onPins'
    ? { state: 'dried', pinned: true }
    : { state: chosen, ...(chosen === 'dried' && { pinned: false }) };

export interface ChosenState<S extends ReadState> {
  readonly offered: readonly S[];
  readonly value: S | null;
  readonly choose: (state: S) => void;
  /** It was wanted, and nothing was chosen. */
  readonly missing: boolean;
  /** The state that was chosen; asks for it, and gives null, where none was. */
  readonly read: () => S | null;
}

/** A state that is chosen for nobody: a reading waits, as typed, until the knitter says when it was. */
export const useChosenState = <S extends ReadState>(
  { washed }: Specimen,
  states: readonly S[],
): ChosenState<S> => {
  const [chosen, setChosen] = useState<S | null>(null);
  const [wanted, setWanted] = useState(false);
  const offered = states.filter((state) => washed !== 'not' || state === 'asKnit');
  const value = chosen !== null && offered.includes(chosen) ? chosen : null;
  return {
    offered,
    value,
    choose: setChosen,
    missing: wanted && value === null,
    read: () => {
      setWanted(value === null);
      if (value === null) announce('Not added yet: say when it was.');
      return value;
    },
  };
};

export const StateChoice = <S extends ReadState>({
  of: { offered, value, choose, missing },
  readOnly,
}: {
  of: ChosenState<S>;
  readOnly: boolean;
}) => (
  <ChoiceChips
    label="When it was"
    value={value}
    onChange={choose}
    readOnly={readOnly}
    choices={offered.map((state) => ({ value: state, label: LABELS[state] }))}
    hint={
      offered.length === 1
        ? 'Say above how it was washed, to enter what was read after the wash.'
        : undefined
    }
    fault={missing && 'Say when it was: before any wash, or after. It is kept as typed until then.'}
  />
);
