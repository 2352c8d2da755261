import { formatMass, formatTemperature } from '@dryflat/engine/units';
import type { Drying } from '@dryflat/record';
import { Card, Disclosure, FieldGroup } from '../../kit/index.ts';
import { useView } from '../../store/index.ts';
import { AirFields, AltitudeField } from './air-fields.tsx';
import type { DryingProps } from './edit-drying.ts';
import { AreaFields, LyingFields } from './lying-fields.tsx';
import { ThickFields } from './thick-fields.tsx';
import { TimeField } from './time-field.tsx';
import { WaterFields } from './water-fields.tsx';

const WET = { towel: 'Pressed in towels', spun: 'Spun', dripping: 'Dripping' } as const;

/** What it all stands on, in a line. */
const summary = ({ wet, air, on, layers, pinned }: Drying, units: 'cm' | 'in'): string =>
  [
    typeof wet === 'number' ? `${formatMass(wet, { unit: 'g' })} wet` : WET[wet],
    formatTemperature(air.temperatureC, { unit: units === 'in' ? 'F' : 'C' }),
    `${air.humidityPercent} % humidity`,
    `${air.movement} air`,
    `${layers === 2 ? 'double ' : ''}on a ${on}`,
    ...(pinned ? ['pinned'] : []),
  ].join(', ');

/** Everything that the forecast asks for; all of it has a sensible start. */
export const HowItLies = ({ drying, edit }: DryingProps) => {
  const { units } = useView();
  const begun = Date.parse(drying.begun);
  const { weighings, touches } = drying;
  return (
    <Card title="How it lies">
      <Disclosure
        title={summary(drying, units)}
        startsOpen={weighings.length === 0 && touches.length === 0}
      >
        <div className="df-stack">
          <FieldGroup legend="Water">
            <WaterFields drying={drying} edit={edit} />
          </FieldGroup>
          <FieldGroup legend="Room">
            <AirFields drying={drying} edit={edit} />
          </FieldGroup>
          <FieldGroup legend="Place">
            <LyingFields drying={drying} edit={edit} />
          </FieldGroup>
          <div className="df-columns">
            <TimeField
              label="Laid out"
              ms={begun}
              onChange={(ms) =>
                edit((draft) => {
                  draft.begun = new Date(ms).toISOString();
                })
              }
            />
          </div>
          <Disclosure title="Thick places">
            <ThickFields drying={drying} edit={edit} />
          </Disclosure>
          <Disclosure title="Area and height">
            <AreaFields drying={drying} edit={edit} />
            <AltitudeField drying={drying} edit={edit} />
          </Disclosure>
        </div>
      </Disclosure>
    </Card>
  );
};
