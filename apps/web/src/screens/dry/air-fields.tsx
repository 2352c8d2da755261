import { fail, formatTemperature, parseTemperature, type Result } from '@dryflat/engine/units';
import { ChoiceChips, CountField, ParsedField } from '../../kit/index.ts';
import { useGarment, useView } from '../../store/index.ts';
import type { DryingProps } from './edit-drying.ts';
import { ROOM_WORDS, roomWordOf } from './humidity-words.ts';
import { parsePercent } from './parse-percent.ts';

const TEMPERATURE = 'Temperature of the room';

const parseRoom = (text: string, unit: 'C' | 'F'): Result<number> => {
  const read = parseTemperature(text, { field: TEMPERATURE, unit });
  if (!read.ok) return read;
  // As far as the model of drying goes.
  if (read.value.value >= 0 && read.value.value <= 45) return { ok: true, value: read.value.value };
  return fail({
    code: 'temperature-out-of-range',
    field: TEMPERATURE,
    given: text,
    problem: 'this is not between 0 and 45 °C (32 and 113 °F)',
    mend: 'Type the temperature of the air around it.',
  });
};

/** The air that it dries in; words for those without a hygrometer. */
export const AirFields = ({ drying, edit }: DryingProps) => {
  const { readOnly } = useGarment();
  const unit = useView().units === 'in' ? 'F' : 'C';
  const { air, id } = drying;
  const word = roomWordOf(air.humidityPercent);
  return (
    <>
      <div className="df-columns">
        <ParsedField<number>
          label={TEMPERATURE}
          path={`dryings/${id}/temperature`}
          unit={unit === 'F' ? { sign: '°F', spoken: '°F' } : { sign: '°C', spoken: '°C' }}
          value={air.temperatureC}
          print={(value) => formatTemperature(value, { unit }).replace(/ .*$/, '')}
          parse={(text) => parseRoom(text, unit)}
          onCommit={(temperatureC) =>
            edit((draft) => {
              if (temperatureC !== null) draft.air.temperatureC = temperatureC;
            })
          }
        />
        <ParsedField<number>
          label="Humidity"
          path={`dryings/${id}/humidity`}
          hint={word ? 'Taken from the word below: an assumption' : 'As a hygrometer shows it'}
          unit={{ sign: '%', spoken: 'in percent' }}
          value={air.humidityPercent}
          print={(value) => `${value}`}
          parse={(text) => parsePercent(text, 'Humidity')}
          onCommit={(humidityPercent) =>
            edit((draft) => {
              if (humidityPercent !== null) draft.air.humidityPercent = humidityPercent;
            })
          }
        />
      </div>
      <ChoiceChips
        label="No hygrometer? What is the room like?"
        value={word?.id ?? null}
        choices={ROOM_WORDS.map(({ id: value, label, note }) => ({ value, label, note }))}
        readOnly={readOnly}
        onChange={(chosen) =>
          edit((draft) => {
            const room = ROOM_WORDS.find((each) => each.id === chosen);
            if (room) draft.air.humidityPercent = room.percent;
          })
        }
      />
      <ChoiceChips
        label="Air"
        value={air.movement}
        choices={[
          { value: 'still', label: 'Still', note: 'A closed room' },
          { value: 'moving', label: 'Moving', note: 'A fan, a draught, an open window' },
        ]}
        readOnly={readOnly}
        onChange={(movement) =>
          edit((draft) => {
            draft.air.movement = movement;
          })
        }
      />
    </>
  );
};

/** High up water goes faster; low down it is not worth a question. */
export const AltitudeField = ({ drying, edit }: DryingProps) => (
  <CountField
    label="Height above the sea"
    path={`dryings/${drying.id}/altitude`}
    hint="Only worth typing above 1000 m (3300 ft)"
    unit={{ sign: 'm', spoken: 'in metres' }}
    value={drying.air.altitudeM}
    onCommit={(altitudeM) =>
      edit((draft) => {
        if (altitudeM === null) delete draft.air.altitudeM;
        else draft.air.altitudeM = Math.min(6000, altitudeM);
      })
    }
  />
);
