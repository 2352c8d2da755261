import type { Drying } from '@dryflat/record';
import { ChoiceChips, MassField, ParsedField } from '../../kit/index.ts';
import { useGarment } from '../../store/index.ts';
import type { DryingProps } from './edit-drying.ts';
import { parsePercent } from './parse-percent.ts';

type How = Exclude<Drying['wet'], number>;

const HOW: readonly { value: How; label: string; note: string }[] = [
  { value: 'towel', label: 'Towel', note: 'Rolled up in towels and pressed' },
  { value: 'spun', label: 'Spun', note: 'In a machine or a salad spinner' },
  { value: 'dripping', label: 'Dripping', note: 'Squeezed by hand only' },
];

/** How much water there is: by the scale, or by how it was taken out. */
export const WaterFields = ({ drying, edit }: DryingProps) => {
  const { readOnly } = useGarment();
  const { wet } = drying;
  return (
    <>
      <ChoiceChips
        label="How was the water taken out?"
        value={typeof wet === 'number' ? null : wet}
        choices={HOW}
        readOnly={readOnly}
        hint={typeof wet === 'number' ? 'The scale says it better.' : undefined}
        onChange={(how) =>
          edit((draft) => {
            draft.wet = how;
          })
        }
      />
      <div className="df-columns">
        <MassField
          label="Mass now, wet"
          hint="Best by far, if you have a scale: all of it, without the towel"
          path={`dryings/${drying.id}/wet`}
          valueG={typeof wet === 'number' ? wet : null}
          onCommit={(massG) =>
            edit((draft) => {
              draft.wet = massG ?? 'towel';
            })
          }
        />
        <DryMass drying={drying} edit={edit} />
      </div>
    </>
  );
};

type AirThen = 'here' | 'label' | 'other';

const AIR_THEN: readonly { value: AirThen; label: string }[] = [
  { value: 'here', label: 'On the scale, here' },
  { value: 'label', label: 'By the balls’ labels' },
  { value: 'other', label: 'In other air' },
];

const DryMass = ({ drying, edit }: DryingProps) => {
  const { record, readOnly } = useGarment();
  const { dry } = drying;
  const air = dry && (typeof dry.air === 'number' ? 'other' : dry.air);
  return (
    <div className="df-stack">
      <MassField
        label="Mass dry, before the wash"
        hint={
          dry !== undefined && dry.massG === record.massG
            ? 'As under Yarn'
            : 'All of it, or the sum of the balls in it'
        }
        path={`dryings/${drying.id}/dry`}
        valueG={dry?.massG}
        onCommit={(massG) =>
          edit((draft) => {
            if (massG === null) delete draft.dry;
            else draft.dry = { massG, air: draft.dry?.air ?? 'here' };
          })
        }
      />
      {dry && (
        <ChoiceChips
          label="How is that known?"
          value={air ?? null}
          choices={AIR_THEN}
          readOnly={readOnly}
          onChange={(then) =>
            edit((draft) => {
              if (draft.dry) draft.dry.air = then === 'other' ? 50 : then;
            })
          }
        />
      )}
      {typeof dry?.air === 'number' && (
        <ParsedField<number>
          label="Humidity where it was weighed"
          path={`dryings/${drying.id}/dry-air`}
          unit={{ sign: '%', spoken: 'in percent' }}
          value={dry.air}
          print={(value) => `${value}`}
          parse={(text) => parsePercent(text, 'Humidity where it was weighed')}
          onCommit={(percent) =>
            edit((draft) => {
              if (draft.dry && percent !== null) draft.dry.air = percent;
            })
          }
        />
      )}
    </div>
  );
};
