import { STITCHES } from '@dryflat/engine/textile';
import type { Specimen } from '@dryflat/record';
import {
  ChoiceChips,
  Disclosure,
  LengthField,
  MassField,
  NeedleField,
  Select,
  TextField,
  useWords,
} from '../../kit/index.ts';
import { stitchName } from '../result/stitch-names.ts';
import type { SpecimenEdits } from './change-specimen.ts';
import { useKindNames } from './kind-names.ts';

/** What it is, how it was worked, and how large it is. */
export const AboutSpecimen = ({
  specimen,
  edits,
}: {
  specimen: Specimen;
  edits: SpecimenEdits;
}) => {
  const word = useWords();
  const kinds = useKindNames();
  const { edit, readOnly } = edits;
  const path = `evidence/${specimen.id}`;
  const setNumber =
    (key: 'widthMm' | 'heightMm' | 'needleMm' | 'massG') =>
    (value: number | null): void =>
      edit((draft) => {
        if (value === null) delete draft[key];
        else draft[key] = value;
      });
  return (
    <Disclosure title="What it is and how it was worked" level={4}>
      <div className="df-stack">
        <TextField
          label="Name"
          value={specimen.name}
          readOnly={readOnly}
          onChange={(name) =>
            edit((draft) => {
              draft.name = name;
            })
          }
        />
        <ChoiceChips
          label="It is"
          value={specimen.kind}
          readOnly={readOnly}
          onChange={(kind) =>
            edit((draft) => {
              draft.kind = kind;
            })
          }
          choices={kinds}
        />
        <ChoiceChips
          label="Worked as the garment is: flat or in the round, same hand, same needles"
          value={specimen.workedAsGarment ? 'yes' : 'no'}
          readOnly={readOnly}
          onChange={(answer) =>
            edit((draft) => {
              draft.workedAsGarment = answer === 'yes';
            })
          }
          choices={[
            { value: 'yes', label: 'Yes' },
            { value: 'no', label: 'No, otherwise' },
          ]}
        />
        <div className="df-three">
          <Select
            label="Stitch"
            value={specimen.stitch}
            readOnly={readOnly}
            onChange={(stitch) =>
              edit((draft) => {
                draft.stitch = stitch;
              })
            }
            options={STITCHES.map((value) => ({ value, label: stitchName(value, word) }))}
          />
          <NeedleField
            label="Needle"
            path={`${path}/needleMm`}
            valueMm={specimen.needleMm}
            onCommit={setNumber('needleMm')}
          />
          <LengthField
            label="Its width"
            path={`${path}/widthMm`}
            valueMm={specimen.widthMm}
            onCommit={setNumber('widthMm')}
          />
          <LengthField
            label="Its height"
            path={`${path}/heightMm`}
            valueMm={specimen.heightMm}
            onCommit={setNumber('heightMm')}
          />
          <MassField
            label="It weighs"
            path={`${path}/massG`}
            valueG={specimen.massG}
            onCommit={setNumber('massG')}
          />
        </div>
        <p className="df-soft">
          Counts near an edge read the edge: with its size known, a small {word('swatch')} is
          trusted less. With its mass and its stitches known, so is the yarn in a stitch.
        </p>
      </div>
    </Disclosure>
  );
};
