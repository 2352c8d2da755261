import { findLandmark } from '@dryflat/engine/garment';
import type { CountReading, Specimen } from '@dryflat/record';
import { isOfGarment } from '@dryflat/record/routes';
import { useState } from 'react';
import { announce, Select } from '../../kit/index.ts';
import { newId, useGarment } from '../../store/index.ts';
import { AddForm } from './add-form.tsx';
import type { SpecimenEdits } from './change-specimen.ts';
import { DirectionChoice } from './direction-choice.tsx';
import { ReadChoice } from './read-choice.tsx';
import { StateChoice, useChosenState } from './state-choice.tsx';
import { useTypedCount, useTypedLength } from './typed.ts';
import { TypedField } from './typed-field.tsx';

const STATES = ['asKnit', 'wet', 'dried', 'rewashed'] as const;

/** The whole extent by tape, best with the number of stitches or rows that it holds. */
export const AddExtent = ({ specimen, edits }: { specimen: Specimen; edits: SpecimenEdits }) => {
  const [direction, setDirection] = useState<'width' | 'length'>('width');
  const state = useChosenState(specimen, STATES);
  const [read, setRead] = useState<CountReading['read']>('flat');
  const [place, setPlace] = useState<string | null>(null);
  const places = usePlaces(specimen, direction);
  const path = `evidence/${specimen.id}/new-extent`;
  const length = useTypedLength(`${path}/mm`, 'From edge to edge');
  const count = useTypedCount(`${path}/count`, 'Stitches or rows in it (may stay empty)');
  const send = (): void => {
    const mm = length.read();
    const known = count.isEmpty ? undefined : count.read();
    const when = state.read();
    if (mm === null || known === null || when === null) return;
    edits.add({
      kind: 'extent',
      id: newId(),
      direction,
      mm,
      ...(known !== undefined && { count: known }),
      ...when,
      read,
      ...(place !== null && places.includes(place) && { place }),
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
      {places.length > 0 && (
        <Select
          label="Where it was taken"
          hint="With its stitches, the garment is foretold as wide as it is there."
          value={place}
          onChange={setPlace}
          readOnly={edits.readOnly}
          options={places.map((name) => ({ value: name, label: name }))}
        />
      )}
      <StateChoice of={state} pins readOnly={edits.readOnly} />
      <ReadChoice value={read} onChange={setRead} readOnly={edits.readOnly} />
    </AddForm>
  );
};

/** Widths of the pattern that a piece of the garment may be measured at, by their names; none of a swatch. */
const usePlaces = (specimen: Specimen, direction: 'width' | 'length'): readonly string[] => {
  const { record } = useGarment();
  if (direction !== 'width' || !isOfGarment(specimen)) return [];
  return record.pattern.measurements
    .filter(({ landmark }) => findLandmark(landmark)?.direction === 'width')
    .map(({ name }) => name);
};
