import { bodyFromTable } from '@dryflat/engine/garment';
import type { BodyMeasure, Person } from '@dryflat/record';
import { useState } from 'react';
import {
  Button,
  Card,
  ChoiceChips,
  Disclosure,
  LengthField,
  SectionFaults,
  Select,
  TextField,
  toast,
  useLandmarkName,
} from '../../kit/index.ts';
import { newId, useGarment } from '../../store/index.ts';
import { bodyPlacesFor, findBodyPlace } from './body-places.ts';
import { sourceOf, tablesFor } from './table-words.ts';

const GROUPS: readonly { value: Person['group']; label: string }[] = [
  { value: 'woman', label: 'A woman' },
  { value: 'man', label: 'A man' },
  { value: 'child', label: 'A child' },
  { value: 'baby', label: 'A baby' },
];

/** Others whom the garment might fit, should it not fit the one it is for. */
export const OthersCard = () => {
  const { record, change, readOnly } = useGarment();
  const { people = [] } = record;
  const { first, later } = bodyPlacesFor(record.kind);
  if (first.length + later.length === 0) return null;
  const add = (): void =>
    change((draft) => {
      draft.people = [...(draft.people ?? []), { id: newId(), name: '', group: 'woman', body: [] }];
    });
  return (
    <Card title="Whom else might it fit?">
      <p className="df-soft">
        If it comes out wrong for the one it is for, the routes ask these people next, and then the
        published sizes.
      </p>
      {people.map((person, at) => (
        <PersonPart key={person.id} person={person} at={at} />
      ))}
      {!readOnly && (
        <div className="df-row">
          <Button icon="add" onPress={add}>
            Add somebody
          </Button>
        </div>
      )}
    </Card>
  );
};

const usePerson = (id: string) => {
  const { change, undo } = useGarment();
  return {
    edit: (recipe: (person: Person) => void): void =>
      change((draft) => {
        const found = draft.people?.find((each) => each.id === id);
        if (found) recipe(found);
      }),
    remove: (name: string): void => {
      change((draft) => {
        draft.people = draft.people?.filter((each) => each.id !== id);
        if (draft.people?.length === 0) delete draft.people;
      });
      toast(`${name || 'The person without a name'} is removed.`, undo);
    },
  };
};

const measureSet = (body: BodyMeasure[], landmark: string, measure: BodyMeasure | null): void => {
  const at = body.findIndex((each) => each.landmark === landmark);
  if (measure === null) {
    if (at >= 0) body.splice(at, 1);
  } else if (at >= 0) body[at] = measure;
  else body.push(measure);
};

const PersonPart = ({ person, at }: { person: Person; at: number }) => {
  const { record, readOnly } = useGarment();
  const { edit, remove } = usePerson(person.id);
  const nameOf = useLandmarkName();
  const { first, later } = bodyPlacesFor(record.kind);
  const given = person.body.map(({ landmark }) => landmark);
  const places = [...new Set([...first, ...later.filter((id) => given.includes(id))])];
  const known = `${person.body.length} of ${places.length} measured`;
  return (
    <Disclosure title={`${person.name || 'No name yet'}: ${known}`} level={3}>
      <div className="df-stack">
        <TextField
          label="Name"
          value={person.name}
          readOnly={readOnly}
          onChange={(name) =>
            edit((each) => {
              each.name = name;
            })
          }
        />
        <ChoiceChips
          label="That is"
          value={person.group}
          readOnly={readOnly}
          onChange={(group) =>
            edit((each) => {
              each.group = group;
            })
          }
          choices={GROUPS}
        />
        <FromTable person={person} places={places} />
        <div className="df-three">
          {places.map((id) => {
            const measure = person.body.find((each) => each.landmark === id);
            return (
              <LengthField
                key={id}
                label={findBodyPlace(id)?.name ?? nameOf(id)}
                hint={measure && sourceOf(measure.from)}
                path={`people/${person.id}/body/${id}`}
                valueMm={measure?.mm}
                onCommit={(mm) =>
                  edit((each) =>
                    measureSet(
                      each.body,
                      id,
                      mm === null ? null : { landmark: id, mm, from: { kind: 'measured' } },
                    ),
                  )
                }
              />
            );
          })}
        </div>
        <SectionFaults prefix={`people[${at}]`} />
        {!readOnly && (
          <div>
            <Button look="quiet" icon="bin" onPress={() => remove(person.name)}>
              Remove<span className="df-unseen"> {person.name || 'the person without a name'}</span>
            </Button>
          </div>
        )}
      </div>
    </Disclosure>
  );
};

/** A published size in place of a tape; what was measured stays. */
const FromTable = ({ person, places }: { person: Person; places: readonly string[] }) => {
  const { readOnly } = useGarment();
  const { edit } = usePerson(person.id);
  const tables = tablesFor(person.group, places);
  const [tableId, setTable] = useState<string | null>(null);
  const table = tables.find(({ id }) => id === tableId) ?? tables[0];
  if (readOnly || !table) return null;
  const take = (size: string): void => {
    const read = bodyFromTable(table.id, size);
    if (!read.ok) return;
    edit((each) => {
      const own = each.body.flatMap((m) => (m.from.kind === 'measured' ? m.landmark : []));
      for (const { body, middle } of read.value)
        if (places.includes(body) && !own.includes(body))
          measureSet(each.body, body, {
            landmark: body,
            mm: middle,
            from: { kind: 'table', table: table.id, size },
          });
    });
  };
  const taken = person.body.find(({ from }) => from.kind === 'table')?.from;
  return (
    <div className="df-columns">
      {tables.length > 1 && (
        <Select
          label="Table"
          value={table.id}
          onChange={setTable}
          options={tables.map(({ id, name }) => ({ value: id, label: name }))}
        />
      )}
      <Select
        label={tables.length > 1 ? 'Size in it, where there is no tape' : `Size in ${table.name}`}
        value={
          taken?.kind === 'table' && taken.table === table.id && table.sizes.includes(taken.size)
            ? taken.size
            : null
        }
        onChange={take}
        options={table.sizes.map((size) => ({ value: size, label: size }))}
      />
    </div>
  );
};
