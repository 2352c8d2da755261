import type { Specimen } from '@dryflat/record';
import { useState } from 'react';
import { announce, Notice } from '../../kit/index.ts';
import { newId } from '../../store/index.ts';
import { AddForm } from './add-form.tsx';
import type { SpecimenEdits } from './change-specimen.ts';
import { DirectionChoice } from './direction-choice.tsx';
import { useTypedLength } from './typed.ts';
import { TypedField } from './typed-field.tsx';

/** The same marks at rest, pinned and dried: how much of a stretch stays. */
export const AddSet = ({ specimen, edits }: { specimen: Specimen; edits: SpecimenEdits }) => {
  const [direction, setDirection] = useState<'width' | 'length'>('width');
  const path = `evidence/${specimen.id}/new-set`;
  const rest = useTypedLength(`${path}/rest`, 'Wet, at rest');
  const pinned = useTypedLength(`${path}/pinned`, 'Pinned');
  const dried = useTypedLength(`${path}/dried`, 'Dry, pins out');
  const send = (): void => {
    const [restMm, pinnedMm, driedMm] = [rest.read(), pinned.read(), dried.read()];
    if (restMm === null || pinnedMm === null || driedMm === null) return;
    edits.add({ kind: 'set', id: newId(), direction, restMm, pinnedMm, driedMm });
    for (const typed of [rest, pinned, dried]) typed.clear();
    announce('Added.');
  };
  const washed = specimen.washed !== 'not';
  return (
    <AddForm
      title="A strip pinned out"
      about="Mark two points, measure between them wet and at rest, pinned out, and dry with the pins taken out: this tells how much of a stretch stays."
      add="Add the pinned strip"
      onSend={send}
      disabled={edits.readOnly || !washed}
    >
      {!washed && <Notice>Say above how it was washed: a strip is pinned wet.</Notice>}
      <DirectionChoice value={direction} onChange={setDirection} readOnly={edits.readOnly} />
      <div className="df-three">
        <TypedField typed={rest} />
        <TypedField typed={pinned} />
        <TypedField typed={dried} />
      </div>
    </AddForm>
  );
};
