import type { Specimen } from '@dryflat/record';
import { Button, Card, ChoiceChips, SectionFaults, toast } from '../../kit/index.ts';
import { useGarment } from '../../store/index.ts';
import { AboutSpecimen } from './about-specimen.tsx';
import { AddExtent } from './add-extent.tsx';
import { AddHang } from './add-hang.tsx';
import { AddSet } from './add-set.tsx';
import { useSpecimen } from './change-specimen.ts';
import { useKindNames } from './kind-names.ts';
import { OtherReadings } from './other-readings.tsx';
import { QuickCount } from './quick-count.tsx';
import { ReadingGrid } from './reading-grid.tsx';
import { WhichPiece } from './which-piece.tsx';

/** One thing that was measured, with everything read from it. */
export const SpecimenCard = ({ id, at }: { id: string; at: number }) => {
  const edits = useSpecimen(id);
  const { specimen } = edits;
  const kinds = useKindNames();
  if (!specimen) return null;
  const kind = kinds.find(({ value }) => value === specimen.kind)?.label ?? '';
  return (
    <Card title={specimen.name || kind}>
      <p className="df-soft">{kind}</p>
      <SectionFaults prefix={`evidence[${at}]`} elsewhere={`evidence[${at}].readings[`} />
      <Washed specimen={specimen} edits={edits} />
      <WhichPiece specimen={specimen} edits={edits} />
      <h3>Add a count</h3>
      <QuickCount specimen={specimen} edits={edits} />
      <h3>What was read</h3>
      {specimen.readings.length === 0 && <p>Nothing yet. Count in several places if you can.</p>}
      <ReadingGrid specimen={specimen} edits={edits} />
      <OtherReadings specimen={specimen} edits={edits} />
      <h3>Add something else</h3>
      <div>
        <AddExtent specimen={specimen} edits={edits} />
        <AddHang specimen={specimen} edits={edits} />
        <AddSet specimen={specimen} edits={edits} />
        <AboutSpecimen specimen={specimen} edits={edits} />
      </div>
      <Remove specimen={specimen} />
    </Card>
  );
};

const Washed = ({
  specimen,
  edits,
}: {
  specimen: Specimen;
  edits: ReturnType<typeof useSpecimen>;
}) => (
  <ChoiceChips
    label="Has it been washed?"
    value={specimen.washed}
    readOnly={edits.readOnly}
    onChange={(washed) =>
      edits.edit((draft) => {
        draft.washed = washed;
      })
    }
    choices={[
      { value: 'not', label: 'Not yet' },
      { value: 'as-garment', label: 'As the garment will be' },
      { value: 'otherwise', label: 'Otherwise' },
    ]}
  />
);

const Remove = ({ specimen }: { specimen: Specimen }) => {
  const { change, readOnly, undo } = useGarment();
  const remove = (): void => {
    change((draft) => {
      draft.evidence = draft.evidence.filter((each) => each.id !== specimen.id);
    });
    toast(`“${specimen.name}” is removed.`, undo);
  };
  return (
    <div>
      <Button look="quiet" icon="bin" onPress={remove} isDisabled={readOnly}>
        Remove all of this
        <span className="df-unseen">: {specimen.name}</span>
      </Button>
    </div>
  );
};
