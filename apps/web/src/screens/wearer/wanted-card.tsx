import { useState } from 'react';
import { Button, Card, Select, useLandmarkName } from '../../kit/index.ts';
import { useGarment } from '../../store/index.ts';
import { wantedPlaces } from './wanted-places.ts';
import { WantedRow } from './wanted-row.tsx';

/** How it should fit, place by place; a place without a wish is not judged. */
export const WantedCard = () => {
  const { record, readOnly } = useGarment();
  const nameOf = useLandmarkName();
  const [added, setAdded] = useState<readonly string[]>([]);
  const [picked, setPicked] = useState<string | null>(null);
  const places = wantedPlaces(record);
  const shown = [...places.shown, ...added.filter((id) => places.others.includes(id))];
  const others = places.others.filter((id) => !added.includes(id));
  const chosen = picked !== null && others.includes(picked) ? picked : (others[0] ?? null);
  return (
    <Card title="How should it fit?">
      <p className="df-soft">
        Say it where it matters to you. The forecast tells the chance of each; a place that you
        leave open is not judged.
      </p>
      <div className="we-wishes">
        {shown.map((id) => (
          <WantedRow key={id} landmark={id} />
        ))}
      </div>
      {chosen !== null && !readOnly && (
        <div className="we-add">
          <Select
            label="Another place of the garment"
            value={chosen}
            onChange={setPicked}
            options={others.map((id) => ({ value: id, label: nameOf(id) }))}
          />
          <Button icon="add" onPress={() => setAdded([...added, chosen])}>
            Add it
          </Button>
        </div>
      )}
    </Card>
  );
};
