import type { CountReading, Specimen } from '@dryflat/record';
import { useState } from 'react';
import { announce, ChoiceChips } from '../../kit/index.ts';
import { newId } from '../../store/index.ts';
import { stateChoices } from '../result/state-names.ts';
import { AddForm } from './add-form.tsx';
import type { SpecimenEdits } from './change-specimen.ts';
import { DirectionChoice } from './direction-choice.tsx';
import type { GridState } from './grid-rows.ts';
import { ReadChoice } from './read-choice.tsx';
import { useTypedCount, useTypedLength } from './typed.ts';
import { TypedField } from './typed-field.tsx';

/** The whole extent by tape, best with the number of stitches or rows that it holds. */
export const AddExtent = ({ specimen, edits }: { specimen: Specimen; edits: SpecimenEdits }) => {
  const [direction, setDirection] = useState<'width' | 'length'>('width');
  const [chosen, setState] = useState<GridState>('asKnit');
  const [read, setRead] = useState<CountReading['read']>('flat');
  const path = `evidence/${specimen.id}/new-extent`;
  const length = useTypedLength(`${path}/mm`, 'From edge to edge');
  const count = useTypedCount(`${path}/count`, 'Stitches or rows in it (may stay empty)');
  const washed = specimen.washed !== 'not';
  const state = washed ? chosen : 'asKnit';
  const send = (): void => {
    const mm = length.read();
    const known = count.isEmpty ? undefined : count.read();
    if (mm === null || known === null) return;
    edits.add({
      kind: 'extent',
      id: newId(),
      direction,
      mm,
      ...(known !== undefined && { count: known }),
      state,
      read,
    });
    length.clear();
    count.clear();
    announce('Added.');
  };
  return (
    <AddForm
      title="The whole width or length"
      about="A tape from edge to edge. With the number of stitches on it, this is worth more than a count over a ruler; without it, it still tells what the wash changes."
      add="Add the length"
      onSend={send}
      disabled={edits.readOnly}
    >
      <DirectionChoice value={direction} onChange={setDirection} readOnly={edits.readOnly} />
      <div className="df-three">
        <TypedField typed={length} />
        <TypedField typed={count} />
      </div>
      {washed && (
        <ChoiceChips
          label="When it was"
          value={state}
          onChange={setState}
          readOnly={edits.readOnly}
          choices={stateChoices(['asKnit', 'wet', 'dried', 'rewashed'] as const)}
        />
      )}
      <ReadChoice value={read} onChange={setRead} readOnly={edits.readOnly} />
    </AddForm>
  );
};
