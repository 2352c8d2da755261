import type { Drying } from '@dryflat/record';
import { useState } from 'react';
import { Button, Card, IconButton, toast } from '../../kit/index.ts';
import { newId, useGarment } from '../../store/index.ts';
import { useTypedMass } from '../evidence/typed.ts';
import { TypedField } from '../evidence/typed-field.tsx';
import { momentWords } from './clock-words.ts';
import type { DryingProps, EditDrying } from './edit-drying.ts';
import { useMasses } from './masses.ts';
import { TimeField } from './time-field.tsx';

/** Each weighing corrects the forecast. */
export const WeighCard = ({ drying, edit, now }: DryingProps & { now: number }) => {
  const { readOnly } = useGarment();
  const typed = useTypedMass(`dryings/${drying.id}/weighing`, 'What the scale shows now');
  const [then, setThen] = useState<number | null>(null);
  const write = (): void => {
    const massG = typed.read();
    if (massG === null) return;
    const at = new Date(then ?? Date.now()).toISOString();
    edit((draft) => {
      draft.weighings.push({ id: newId(), at, massG });
    });
    typed.clear();
    setThen(null);
  };
  return (
    <Card title="Weigh it">
      <p>
        Every weighing corrects the forecast, and one early on the most. All of it, with its pins
        out or the mat’s mass taken off; always the same way.
      </p>
      <form
        className="df-stack"
        onSubmit={(event) => {
          event.preventDefault();
          write();
        }}
      >
        <div className="df-columns">
          <TypedField typed={typed} hint="Grams unless you write oz" />
          {then !== null && <TimeField label="Weighed" ms={then} onChange={setThen} />}
        </div>
        <div className="df-row">
          <Button look="main" type="submit" isDisabled={readOnly || typed.isEmpty}>
            Write it down
          </Button>
          <Button look="quiet" onPress={() => setThen(then === null ? Date.now() : null)}>
            {then === null ? 'It was at another time' : 'It is now'}
          </Button>
        </div>
      </form>
      <Weighings drying={drying} edit={edit} now={now} />
    </Card>
  );
};

const byTime = ({ weighings }: Drying): Drying['weighings'] =>
  [...weighings].sort((a, b) => Date.parse(b.at) - Date.parse(a.at));

const Weighings = ({ drying, edit, now }: DryingProps & { now: number }) => {
  const { mass } = useMasses();
  if (drying.weighings.length === 0) return null;
  return (
    <ul className="df-dry-log" aria-label="Weighings">
      {byTime(drying).map(({ id, at, massG }) => (
        <li key={id}>
          <span>
            <strong>{mass(massG)}</strong> {momentWords(Date.parse(at), now)}
          </span>
          <RemoveWeighing id={id} said={mass(massG)} edit={edit} />
        </li>
      ))}
    </ul>
  );
};

const RemoveWeighing = ({ id, said, edit }: { id: string; said: string; edit: EditDrying }) => {
  const { readOnly, undo } = useGarment();
  return (
    <IconButton
      icon="bin"
      label={`Remove ${said}`}
      isDisabled={readOnly}
      onPress={() => {
        edit((draft) => {
          draft.weighings = draft.weighings.filter((each) => each.id !== id);
        });
        toast('The weighing is removed.', undo);
      }}
    />
  );
};
