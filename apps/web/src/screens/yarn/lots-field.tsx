import type { Lot, Yarn } from '@dryflat/record';
import {
  Button,
  CountField,
  FieldGroup,
  IconButton,
  MassField,
  TextField,
  toast,
} from '../../kit/index.ts';
import { useGarment } from '../../store/index.ts';
import { MetresField } from './metres-field.tsx';
import { useChangeYarn } from './use-change-yarn.ts';

/** Skeins at hand, by dye lot. */
export const LotsField = ({ yarn }: { yarn: Yarn }) => {
  const { readOnly } = useGarment();
  const edit = useChangeYarn(yarn.id);
  const addLot = (): void =>
    edit((each) => {
      const last = each.lots.at(-1);
      each.lots.push({ ...last, dyeLot: '', skeins: 1 });
    });
  return (
    <FieldGroup legend="Skeins at hand">
      {yarn.lots.map((lot, at) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: lots have no id; their name is what changes here
        <LotRow key={at} yarn={yarn} lot={lot} at={at} />
      ))}
      {!readOnly && (
        <div className="df-row">
          <Button icon="add" onPress={addLot}>
            {yarn.lots.length === 0 ? 'Add skeins' : 'Add another dye lot'}
          </Button>
        </div>
      )}
    </FieldGroup>
  );
};

const LotRow = ({ yarn, lot, at }: { yarn: Yarn; lot: Lot; at: number }) => {
  const { readOnly, undo } = useGarment();
  const editYarn = useChangeYarn(yarn.id);
  const edit = (recipe: (lot: Lot) => void): void =>
    editYarn((each) => {
      const found = each.lots[at];
      if (found) recipe(found);
    });
  const path = `yarns/${yarn.id}/lots/${at}`;
  const name = lot.dyeLot || `lot ${at + 1}`;
  const remove = (): void => {
    editYarn((each) => {
      each.lots.splice(at, 1);
    });
    toast(`Skeins of ${name} removed.`, undo);
  };
  return (
    <div className="ya-lot">
      <TextField
        label="Dye lot"
        value={lot.dyeLot}
        onChange={(dyeLot) =>
          edit((each) => {
            each.dyeLot = dyeLot;
          })
        }
        readOnly={readOnly}
      />
      <CountField
        label="Skeins"
        path={`${path}/skeins`}
        value={lot.skeins}
        onCommit={(skeins) =>
          skeins !== null &&
          edit((each) => {
            each.skeins = skeins;
          })
        }
      />
      <MassField
        label="A skein weighs"
        path={`${path}/gramsEach`}
        valueG={lot.gramsEach}
        onCommit={(grams) =>
          edit((each) => {
            if (grams === null) delete each.gramsEach;
            else each.gramsEach = grams;
          })
        }
      />
      <MetresField
        label="A skein holds"
        path={`${path}/metresEach`}
        valueM={lot.metresEach}
        onCommit={(length) =>
          edit((each) => {
            if (length === null) delete each.metresEach;
            else each.metresEach = length;
          })
        }
      />
      {!readOnly && <IconButton icon="bin" label={`Remove skeins of ${name}`} onPress={remove} />}
    </div>
  );
};
