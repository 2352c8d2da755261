import type { Drying } from '@dryflat/record';
import { Button, CountField, ParsedField, TextField, toast } from '../../kit/index.ts';
import { newId, useGarment } from '../../store/index.ts';
import type { DryingProps } from './edit-drying.ts';
import { parsePercent } from './parse-percent.ts';

type Thick = NonNullable<Drying['thick']>[number];

/** Usual thick places with what they usually come to (common practice, no source). */
const USUAL: readonly Omit<Thick, 'id'>[] = [
  { name: 'Hems and ribbing', share: 0.15, times: 1.6 },
  { name: 'Underarms', share: 0.05, times: 2 },
  { name: 'Sleeves over the body', share: 0.2, times: 2 },
  { name: 'Doubled collar', share: 0.06, times: 2.5 },
];

/** Thick places: they dry last, and a scale does not see them. */
export const ThickFields = ({ drying, edit }: DryingProps) => {
  const { readOnly } = useGarment();
  const thick = drying.thick ?? [];
  const open = USUAL.filter(({ name }) => !thick.some((each) => each.name === name));
  const add = (place: Omit<Thick, 'id'>): void =>
    edit((draft) => {
      draft.thick = [...(draft.thick ?? []), { id: newId(), ...place }];
    });
  return (
    <>
      <p>
        {drying.thick === undefined
          ? 'Nothing said: hems, ribbing and underarms are taken as 15 % of it, 1.6 times as thick as the rest. An assumption.'
          : thick.length === 0
            ? 'Alike everywhere.'
            : 'They dry last, and a scale does not see them.'}
      </p>
      <ul className="df-plain">
        {thick.map((place) => (
          <li key={place.id}>
            <Place place={place} drying={drying} edit={edit} />
          </li>
        ))}
      </ul>
      <div className="df-row">
        {open.map((place) => (
          <Button key={place.name} icon="add" onPress={() => add(place)} isDisabled={readOnly}>
            {place.name}
          </Button>
        ))}
        <Button
          icon="add"
          onPress={() => add({ name: 'Another place', share: 0.1, times: 2 })}
          isDisabled={readOnly || thick.length >= 20}
        >
          Another place
        </Button>
        {drying.thick === undefined && (
          <Button
            look="quiet"
            isDisabled={readOnly}
            onPress={() =>
              edit((draft) => {
                draft.thick = [];
              })
            }
          >
            It is alike everywhere
          </Button>
        )}
      </div>
    </>
  );
};

const Place = ({ place, drying, edit }: DryingProps & { place: Thick }) => {
  const { readOnly, undo } = useGarment();
  const path = `dryings/${drying.id}/thick/${place.id}`;
  const put = (part: Partial<Thick>): void =>
    edit((draft) => {
      const found = draft.thick?.find(({ id }) => id === place.id);
      if (found) Object.assign(found, part);
    });
  const remove = (): void => {
    edit((draft) => {
      draft.thick = draft.thick?.filter(({ id }) => id !== place.id) ?? [];
    });
    toast(`${place.name} is removed.`, undo);
  };
  return (
    <div className="df-columns">
      <TextField
        label="Thick place"
        value={place.name}
        readOnly={readOnly}
        onChange={(name) => put({ name })}
      />
      <ParsedField<number>
        label="Share of the mass"
        path={`${path}/share`}
        unit={{ sign: '%', spoken: 'in percent' }}
        value={place.share * 100}
        print={(value) => `${Math.round(value * 100) / 100}`}
        parse={(text) => parsePercent(text, 'Share of the mass')}
        onCommit={(percent) => percent !== null && put({ share: percent / 100 })}
      />
      <CountField
        label="Times as thick as the rest"
        path={`${path}/times`}
        value={place.times}
        onCommit={(times) => times !== null && put({ times: Math.min(20, Math.max(1.05, times)) })}
      />
      <div>
        <Button look="quiet" icon="bin" onPress={remove} isDisabled={readOnly}>
          Remove<span className="df-unseen"> {place.name}</span>
        </Button>
      </div>
    </div>
  );
};
