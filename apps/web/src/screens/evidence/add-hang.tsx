import type { Specimen } from '@dryflat/record';
import { useState } from 'react';
import { announce } from '../../kit/index.ts';
import { newId } from '../../store/index.ts';
import { AddForm } from './add-form.tsx';
import type { SpecimenEdits } from './change-specimen.ts';
import { DirectionChoice } from './direction-choice.tsx';
import { StateChoice, useChosenState } from './state-choice.tsx';
import { useTypedLength, useTypedMass } from './typed.ts';
import { TypedField } from './typed-field.tsx';

const STATES = ['asKnit', 'dried', 'rewashed'] as const;

/** A known weight on a clipped strip: how stiff this fabric is. */
export const AddHang = ({ specimen, edits }: { specimen: Specimen; edits: SpecimenEdits }) => {
  const [direction, setDirection] = useState<'width' | 'length'>('length');
  const chosen = useChosenState(specimen, STATES);
  const path = `evidence/${specimen.id}/new-hang`;
  const mass = useTypedMass(`${path}/mass`, 'Weight hung on, grams');
  const clipped = useTypedLength(`${path}/clipped`, 'Width that the clip holds');
  const before = useTypedLength(`${path}/before`, 'Length before');
  const after = useTypedLength(`${path}/after`, 'Length with the weight on');
  const send = (): void => {
    const [massG, clippedMm, beforeMm, afterMm] = [
      mass.read(),
      clipped.read(),
      before.read(),
      after.read(),
    ];
    const when = chosen.read();
    if (massG === null || clippedMm === null || beforeMm === null || afterMm === null) return;
    if (when === null) return;
    const { state } = when;
    edits.add({ kind: 'hang', id: newId(), direction, massG, clippedMm, beforeMm, afterMm, state });
    for (const typed of [mass, clipped, before, after]) typed.clear();
    announce('Added.');
  };
  return (
    <AddForm
      title="A weight hung from it"
      about="Clip a strip at the top, mark a length, hang a known weight from its foot and measure again: this tells how far the garment will hang."
      add="Add the hang weight"
      onSend={send}
      disabled={edits.readOnly}
    >
      <DirectionChoice value={direction} onChange={setDirection} readOnly={edits.readOnly} />
      <div className="df-three">
        <TypedField typed={mass} />
        <TypedField typed={clipped} />
        <TypedField typed={before} />
        <TypedField typed={after} />
      </div>
      <StateChoice of={chosen} readOnly={edits.readOnly} />
    </AddForm>
  );
};
