import { useState } from 'react';
import { Button, ChoiceChips, LengthField } from '../../kit/index.ts';
import { useGarment, useView } from '../../store/index.ts';
import type { DryingProps } from './edit-drying.ts';

/** What it lies on, how often it lies on itself, whether pins hold it. */
export const LyingFields = ({ drying, edit }: DryingProps) => {
  const { readOnly } = useGarment();
  return (
    <div className="df-columns">
      <ChoiceChips
        label="It lies on"
        value={drying.on}
        choices={[
          { value: 'mat', label: 'A mat', note: 'Air reaches one face' },
          { value: 'rack', label: 'A rack', note: 'Air reaches both' },
        ]}
        readOnly={readOnly}
        onChange={(on) =>
          edit((draft) => {
            draft.on = on;
          })
        }
      />
      <ChoiceChips
        label="Layers"
        value={`${drying.layers}`}
        choices={[
          { value: '1', label: 'One', note: 'Pieces apart, or a shawl' },
          { value: '2', label: 'Two', note: 'Sewn, lying double' },
        ]}
        readOnly={readOnly}
        onChange={(layers) =>
          edit((draft) => {
            draft.layers = layers === '2' ? 2 : 1;
          })
        }
      />
      <ChoiceChips
        label="Held"
        value={drying.pinned ? 'pinned' : 'free'}
        choices={[
          { value: 'pinned', label: 'Pinned', note: 'It stays as it lies' },
          { value: 'free', label: 'Lying free', note: 'It may be turned' },
        ]}
        readOnly={readOnly}
        onChange={(held) =>
          edit((draft) => {
            draft.pinned = held === 'pinned';
          })
        }
      />
    </div>
  );
};

/** Square feet in a square metre: 1 ft is 0.3048 m exactly. */
const FOOT2 = 0.3048 ** 2;

const areaWords = (m2: number, units: 'cm' | 'in'): string =>
  units === 'in' ? `${(m2 / FOOT2).toFixed(1)} sq ft` : `${m2.toFixed(2)} m²`;

/** The area of fabric, from how wide and long it lies. */
export const AreaFields = ({ drying, edit }: DryingProps) => {
  const { units } = useView();
  const { readOnly } = useGarment();
  const [width, setWidth] = useState<number | null>(null);
  const [length, setLength] = useState<number | null>(null);
  const { fabricM2, layers, id } = drying;
  const take = (): void => {
    if (width === null || length === null) return;
    edit((draft) => {
      draft.fabricM2 = (width * length * draft.layers) / 1e6;
    });
  };
  return (
    <>
      <p>
        {fabricM2 === undefined
          ? 'Left alone, the area of fabric is taken from the pieces or guessed from the mass.'
          : `Fabric, all layers: ${areaWords(fabricM2, units)}.`}
      </p>
      <div className="df-columns">
        <LengthField
          label="Mean width as it lies"
          path={`dryings/${id}/lying-width`}
          valueMm={width}
          onCommit={setWidth}
        />
        <LengthField
          label="Mean length as it lies"
          path={`dryings/${id}/lying-length`}
          valueMm={length}
          onCommit={setLength}
        />
      </div>
      <div className="df-row">
        <Button onPress={take} isDisabled={readOnly || width === null || length === null}>
          Take this area{layers === 2 && ', twice'}
        </Button>
        {fabricM2 !== undefined && (
          <Button
            look="quiet"
            onPress={() =>
              edit((draft) => {
                delete draft.fabricM2;
              })
            }
            isDisabled={readOnly}
          >
            Leave the area out
          </Button>
        )}
      </div>
    </>
  );
};
