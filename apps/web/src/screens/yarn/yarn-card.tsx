import { WEIGHT_CLASSES } from '@dryflat/engine/textile';
import { formatYarnLength, metres } from '@dryflat/engine/units';
import type { Yarn } from '@dryflat/record';
import {
  Button,
  Card,
  ChoiceChips,
  SectionFaults,
  Select,
  TextField,
  toast,
  useWords,
} from '../../kit/index.ts';
import { useGarment, useView } from '../../store/index.ts';
import { FibresField } from './fibres-field.tsx';
import { LeftField } from './left-field.tsx';
import { LotsField } from './lots-field.tsx';
import { MetresField } from './metres-field.tsx';
import { useChangeYarn } from './use-change-yarn.ts';
import { classByMetres, metresByLots, sameLength } from './yarn-thickness.ts';
import { TREATMENT_CHOICES, weightName } from './yarn-words.ts';

/** Shown beside the shares. */
const SHOWN_IN_PLACE = ['shares-do-not-sum'];

/** One yarn: what it is, how thick, how much of it there is. */
export const YarnCard = ({ yarn, title }: { yarn: Yarn; title: string }) => {
  const { record, change, undo, readOnly } = useGarment();
  const at = record.yarns.findIndex(({ id }) => id === yarn.id);
  const edit = useChangeYarn(yarn.id);
  const remove = (): void => {
    change((draft) => {
      draft.yarns = draft.yarns.filter(({ id }) => id !== yarn.id);
      const left = draft.left?.filter((each) => each.yarn !== yarn.id) ?? [];
      if (left.length > 0) draft.left = left;
      else delete draft.left;
    });
    toast(`${yarn.name || 'The yarn'} removed.`, undo);
  };
  return (
    <Card title={title}>
      <TextField
        label="Name of the yarn"
        value={yarn.name}
        onChange={(name) =>
          edit((each) => {
            each.name = name;
          })
        }
        readOnly={readOnly}
      />
      <FibresField yarn={yarn} />
      <ChoiceChips
        label="Is it treated against felting?"
        value={yarn.treatment}
        onChange={(treatment) =>
          edit((each) => {
            each.treatment = treatment;
          })
        }
        choices={TREATMENT_CHOICES}
        readOnly={readOnly}
      />
      <Thickness yarn={yarn} />
      <LotsField yarn={yarn} />
      <LeftField yarn={yarn} />
      <SectionFaults prefix={`yarns[${at}]`} except={SHOWN_IN_PLACE} />
      {!readOnly && (
        <div className="df-row">
          <Button look="quiet" icon="bin" onPress={remove}>
            Remove this yarn
          </Button>
        </div>
      )}
    </Card>
  );
};

const NONE = '';

const Thickness = ({ yarn }: { yarn: Yarn }) => {
  const { readOnly } = useGarment();
  const say = useWords();
  const edit = useChangeYarn(yarn.id);
  return (
    <div className="df-columns">
      <MetresField
        label="Length in 100 g"
        path={`yarns/${yarn.id}/metresPer100g`}
        hint="From the ball band."
        valueM={yarn.metresPer100g}
        onCommit={(length) =>
          edit((each) => {
            if (length === null) delete each.metresPer100g;
            else each.metresPer100g = length;
          })
        }
      />
      <Select
        label={say('yarn weight') === 'yarn weight' ? 'Yarn weight' : 'Yarn thickness'}
        hint="Class of the standard yarn weight system."
        value={yarn.weightClass === undefined ? NONE : `${yarn.weightClass}`}
        onChange={(value) =>
          edit((each) => {
            if (value === NONE) delete each.weightClass;
            else each.weightClass = Number(value);
          })
        }
        options={[
          { value: NONE, label: 'Not said' },
          ...WEIGHT_CLASSES.map((each) => ({ value: `${each}`, label: weightName(each) })),
        ]}
        readOnly={readOnly}
      />
      {!readOnly && <Suggestions yarn={yarn} />}
    </div>
  );
};

/** What one entry says of another, offered and never taken by itself. */
const Suggestions = ({ yarn }: { yarn: Yarn }) => {
  const { units } = useView();
  const edit = useChangeYarn(yarn.id);
  const byLots = metresByLots(yarn);
  const byMetres = classByMetres(yarn);
  const { metresPer100g, weightClass } = yarn;
  const offersLength =
    byLots !== null && (metresPer100g === undefined || !sameLength(byLots, metresPer100g));
  const offersClass = byMetres !== null && weightClass !== byMetres;
  if (!offersLength && !offersClass) return null;
  return (
    <div className="df-stack">
      {offersLength && (
        <Button
          onPress={() =>
            edit((each) => {
              each.metresPer100g = byLots;
            })
          }
        >
          By the skeins: {formatYarnLength(metres(byLots), { unit: units === 'cm' ? 'm' : 'yd' })}{' '}
          in 100 g. Use it
        </Button>
      )}
      {offersClass && (
        <Button
          onPress={() =>
            edit((each) => {
              each.weightClass = byMetres;
            })
          }
        >
          By its length: {weightName(byMetres)}. Use it
        </Button>
      )}
    </div>
  );
};
