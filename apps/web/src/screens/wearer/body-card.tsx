import { findLandmark } from '@dryflat/engine/garment';
import type { BodyMeasure, GarmentRecord } from '@dryflat/record';
import { useState } from 'react';
import {
  Button,
  Card,
  LengthField,
  SectionFaults,
  Select,
  toast,
  useLandmarkName,
} from '../../kit/index.ts';
import { useGarment } from '../../store/index.ts';
import { bodyPlacesFor, findBodyPlace } from './body-places.ts';
import { setBody } from './change-wearer.ts';
import { OwnPlace } from './own-place.tsx';
import { TableStart } from './table-start.tsx';
import { sourceOf } from './table-words.ts';

/** Rows of the pattern at places that the knitter made up: the body has them too. */
const ownPlaces = ({ pattern }: GarmentRecord): string[] =>
  pattern.measurements.flatMap(({ landmark }) =>
    findLandmark(landmark) === null ? [landmark] : [],
  );

/** The wearer's measurements: the few that this garment needs first, then any other. */
export const BodyCard = () => {
  const { record, readOnly } = useGarment();
  const [added, setAdded] = useState<readonly string[]>([]);
  const { first, later } = bodyPlacesFor(record.kind);
  const given = record.wearer.body.map(({ landmark }) => landmark);
  const shown = [...new Set([...first, ...given, ...added])];
  const others = [...new Set([...later, ...ownPlaces(record)])].filter((id) => !shown.includes(id));
  return (
    <Card title="The body">
      <p className="df-soft">
        Each number helps; none is a must. Measure over what is worn underneath, tape close but not
        tight.
      </p>
      <TableStart />
      <ul className="we-list">
        {shown.map((id) => (
          <BodyRow key={id} id={id} measure={record.wearer.body.find((m) => m.landmark === id)} />
        ))}
      </ul>
      {!readOnly && <AddPlace options={others} onAdd={(id) => setAdded([...added, id])} />}
    </Card>
  );
};

const BodyRow = ({ id, measure }: { id: string; measure: BodyMeasure | undefined }) => {
  const { record, change, undo, readOnly } = useGarment();
  const at = record.wearer.body.findIndex(({ landmark }) => landmark === id);
  const nameOf = useLandmarkName();
  const place = findBodyPlace(id);
  const remove = (): void => {
    change((draft) => setBody(draft, id, null));
    toast(`${place?.name ?? nameOf(id)} taken away.`, undo);
  };
  return (
    <li className="we-body">
      <LengthField
        label={place?.name ?? nameOf(id)}
        hint={place?.how}
        path={`wearer/body/${id}`}
        valueMm={measure?.mm}
        onCommit={(mm) => change((draft) => setBody(draft, id, mm))}
      />
      {measure && (
        <div className="we-from" data-from={measure.from.kind}>
          <span>{sourceOf(measure.from)}</span>
          {!readOnly && (
            <Button look="quiet" onPress={remove}>
              Take away<span className="df-unseen"> {place?.name ?? nameOf(id)}</span>
            </Button>
          )}
        </div>
      )}
      {measure && <SectionFaults prefix={`wearer.body[${at}]`} />}
    </li>
  );
};

const OWN = 'own-place';

const AddPlace = ({
  options,
  onAdd,
}: {
  options: readonly string[];
  onAdd: (id: string) => void;
}) => {
  const nameOf = useLandmarkName();
  const [picked, setPicked] = useState<string | null>(null);
  const [making, setMaking] = useState(false);
  const all = [...options, OWN];
  const chosen = picked !== null && all.includes(picked) ? picked : (all[0] ?? OWN);
  return (
    <div className="we-add">
      <Select
        label="Another place"
        value={chosen}
        onChange={setPicked}
        options={all.map((id) => ({
          value: id,
          label: id === OWN ? 'A place of your own' : (findBodyPlace(id)?.name ?? nameOf(id)),
        }))}
      />
      <Button icon="add" onPress={() => (chosen === OWN ? setMaking(true) : onAdd(chosen))}>
        Add it
      </Button>
      {making && <OwnPlace onAdded={onAdd} onClose={() => setMaking(false)} />}
    </div>
  );
};
