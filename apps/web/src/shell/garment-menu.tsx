import { Dialog, TextField } from '../kit/index.ts';
import { useGarment } from '../store/index.ts';
import { GarmentActions } from './garment-actions.tsx';
import { SHELF } from './hash.ts';
import { go } from './route.ts';
import { ViewChoices } from './view-choices.tsx';

/** What is seldom needed while knitting: the name, the words, the light, copies and files. */
const GarmentMenu = ({ onClose }: { onClose: () => void }) => {
  const { record, change, readOnly } = useGarment();
  return (
    <Dialog title="This garment" onClose={onClose}>
      <TextField
        label="Name"
        value={record.name}
        readOnly={readOnly}
        onChange={(name) =>
          change((draft) => {
            draft.name = name;
          })
        }
      />
      <GarmentActions
        id={record.id}
        name={record.name}
        onDone={onClose}
        onTrashed={() => go(SHELF)}
      />
      <ViewChoices />
    </Dialog>
  );
};
export default GarmentMenu;
