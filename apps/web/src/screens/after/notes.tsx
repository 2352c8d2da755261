import type { Note } from '@dryflat/record';
import { Button, Card, TextField, toast } from '../../kit/index.ts';
import { newId, useGarment } from '../../store/index.ts';
import { printDay, today } from '../result/today.ts';

/** Whatever else is worth remembering. */
export const Notes = () => {
  const { record, change, readOnly } = useGarment();
  const add = (): void =>
    change((draft) => {
      draft.notes.push({ id: newId(), on: today(), text: '' });
    });
  return (
    <Card title="Notes">
      {record.notes.map((note) => (
        <NoteItem key={note.id} note={note} />
      ))}
      <div>
        <Button icon="add" onPress={add} isDisabled={readOnly}>
          Add a note
        </Button>
      </div>
    </Card>
  );
};

const NoteItem = ({ note }: { note: Note }) => {
  const { change, readOnly, undo } = useGarment();
  const label = note.on === undefined ? 'Note' : `Note of ${printDay(note.on)}`;
  const remove = (): void => {
    change((draft) => {
      draft.notes = draft.notes.filter(({ id }) => id !== note.id);
    });
    toast('The note is removed.', undo);
  };
  return (
    <div className="df-stack">
      <TextField
        label={label}
        long
        value={note.text}
        readOnly={readOnly}
        onChange={(text) =>
          change((draft) => {
            const found = draft.notes.find(({ id }) => id === note.id);
            if (found) found.text = text;
          })
        }
      />
      <div>
        <Button look="quiet" icon="bin" onPress={remove} isDisabled={readOnly}>
          Remove<span className="df-unseen"> the {label.toLowerCase()}</span>
        </Button>
      </div>
    </div>
  );
};
