import { mm, parseCountOver } from '@dryflat/engine/units';
import type { CountReading, Specimen } from '@dryflat/record';
import { type FormEvent, useState } from 'react';
import { announce, Button, ChoiceChips, Disclosure } from '../../kit/index.ts';
import { newId, useView } from '../../store/index.ts';
import type { SpecimenEdits } from './change-specimen.ts';
import { readingsOf } from './counted-readings.ts';
import { ReadChoice } from './read-choice.tsx';
import { StateChoice, useChosenState } from './state-choice.tsx';
import { useTyped } from './typed.ts';
import { TypedField } from './typed-field.tsx';

const STATES = ['asKnit', 'wet', 'dried', 'rewashed'] as const;
const OVER = { cm: mm(100), in: mm(101.6) } as const;

/** One line for a count, as it is said: `21½ over 10 cm`. */
export const QuickCount = ({ specimen, edits }: { specimen: Specimen; edits: SpecimenEdits }) => {
  const { units } = useView();
  const [counted, setCounted] = useState<'stitches' | 'rows'>('stitches');
  const state = useChosenState(specimen, STATES);
  const [read, setRead] = useState<CountReading['read']>('flat');
  const path = `evidence/${specimen.id}/new`;
  const count = useTyped(`${path}/count`, 'Counted', (text, field) =>
    parseCountOver(text, { field, bare: counted, over: OVER[units] }),
  );
  const place = useTyped(`${path}/place`, 'Where on it', (text) => ({
    ok: true,
    value: text.trim(),
  }));
  const send = (event: FormEvent): void => {
    event.preventDefault();
    const parsed = count.read();
    const when = state.read();
    if (parsed === null || when === null) return;
    const where = place.read() ?? '';
    edits.add(...readingsOf(parsed, { ...when, read, place: where }, newId));
    count.clear();
    announce('Added.');
  };
  return (
    <form className="df-quick" onSubmit={send} aria-label={`Count on ${specimen.name}`}>
      <TypedField
        typed={count}
        hint={units === 'cm' ? 'Such as 21½ over 10 cm' : 'Such as 21½ over 4 in'}
      />
      <ChoiceChips
        label="It is a number of"
        value={counted}
        onChange={setCounted}
        readOnly={edits.readOnly}
        choices={[
          { value: 'stitches', label: 'Stitches' },
          { value: 'rows', label: 'Rows' },
        ]}
      />
      <StateChoice of={state} pins readOnly={edits.readOnly} />
      <Disclosure title="Where on it; was it pulled?" level={4}>
        <div className="df-stack">
          <TypedField typed={place} />
          <ReadChoice value={read} onChange={setRead} readOnly={edits.readOnly} />
        </div>
      </Disclosure>
      <div>
        <Button type="submit" look="main" icon="add" isDisabled={edits.readOnly}>
          Add the count
        </Button>
      </div>
    </form>
  );
};
