import type { Specimen } from '@dryflat/record';
import { useState } from 'react';
import { announce, ChoiceChips } from '../../kit/index.ts';
import { stateChoices } from '../result/state-names.ts';
import type { GridState } from './grid-rows.ts';
import { PinsChoice } from './pins-choice.tsx';

/** When something was read and, of what was dried, whether on pins; left out where nobody said. */
interface ReadWhen<S extends GridState> {
  readonly state: S;
  readonly pinned?: boolean;
}

export interface ChosenState<S extends GridState> {
  readonly offered: readonly S[];
  readonly value: S | null;
  readonly choose: (state: S) => void;
  readonly pinned: boolean | undefined;
  readonly choosePins: (pinned: boolean) => void;
  /** It was wanted, and nothing was chosen. */
  readonly missing: boolean;
  /** What was chosen; asks for it, and gives null, where no state was. */
  readonly read: () => ReadWhen<S> | null;
}

/** A state that is chosen for nobody: a reading waits, as typed, until the knitter says when it was. */
export const useChosenState = <S extends GridState>(
  { washed }: Specimen,
  states: readonly S[],
): ChosenState<S> => {
  const [chosen, setChosen] = useState<S | null>(null);
  const [pinned, setPinned] = useState<boolean>();
  const [wanted, setWanted] = useState(false);
  const offered = states.filter((state) => washed !== 'not' || state === 'asKnit');
  const value = chosen !== null && offered.includes(chosen) ? chosen : null;
  return {
    offered,
    value,
    choose: (state) => {
      setChosen(state);
      setPinned(undefined);
    },
    pinned,
    choosePins: setPinned,
    missing: wanted && value === null,
    read: () => {
      setWanted(value === null);
      if (value === null) announce('Not added yet: say when it was.');
      return value && { state: value, ...(pinned !== undefined && { pinned }) };
    },
  };
};

/** `pins`: of what was dried it is asked, too, whether on pins. */
export const StateChoice = <S extends GridState>({
  of: { offered, value, choose, pinned, choosePins, missing },
  readOnly,
  pins = false,
}: {
  of: ChosenState<S>;
  readOnly: boolean;
  pins?: boolean;
}) => (
  <>
    <ChoiceChips
      label="When it was"
      value={value}
      onChange={choose}
      readOnly={readOnly}
      choices={stateChoices(offered)}
      hint={
        offered.length === 1
          ? 'Say above how it was washed, to enter what was read after the wash.'
          : undefined
      }
      fault={
        missing && 'Say when it was: before any wash, or after. It is kept as typed until then.'
      }
    />
    {pins && value === 'dried' && (
      <PinsChoice
        pinned={pinned}
        onChange={choosePins}
        readOnly={readOnly}
        hint="May stay open; where it was pinned, it counts for little then."
      />
    )}
  </>
);
