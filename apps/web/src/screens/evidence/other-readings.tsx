import type { HangReading, Reading, SetReading, Specimen } from '@dryflat/record';
import { useId } from 'react';
import { IconButton, LengthField, MassField, toast } from '../../kit/index.ts';
import { STATE_NAMES } from '../result/state-names.ts';
import type { SpecimenEdits } from './change-specimen.ts';
import { ReadingNotices } from './reading-notices.tsx';

/** Hang weights and pinned strips, each number in place. */
export const OtherReadings = ({
  specimen,
  edits,
}: {
  specimen: Specimen;
  edits: SpecimenEdits;
}) => {
  const others = specimen.readings.filter(
    (each): each is HangReading | SetReading => each.kind === 'hang' || each.kind === 'set',
  );
  if (others.length === 0) return null;
  return (
    <ul className="df-grid">
      {others.map((reading) => (
        <li key={reading.id}>
          <Other specimen={specimen} edits={edits} reading={reading} />
        </li>
      ))}
    </ul>
  );
};

const titleOf = (reading: HangReading | SetReading): string => {
  const along = reading.direction === 'width' ? 'across' : 'up';
  return reading.kind === 'hang'
    ? `A weight hung, ${along}, ${STATE_NAMES[reading.state].label.toLowerCase()}`
    : `A strip pinned out, ${along}`;
};

const Other = ({
  specimen,
  edits,
  reading,
}: {
  specimen: Specimen;
  edits: SpecimenEdits;
  reading: HangReading | SetReading;
}) => {
  const title = titleOf(reading);
  const heading = useId();
  const path = `evidence/${specimen.id}/readings/${reading.id}`;
  const remove = (): void => {
    edits.remove([reading.id]);
    toast('The reading is removed.', edits.undo);
  };
  return (
    // biome-ignore lint/a11y/useSemanticElements: a legend cannot share its line with a button
    <div role="group" className="df-group" aria-labelledby={heading}>
      <div className="df-grid-head">
        <h4 id={heading}>{title}</h4>
        <IconButton
          icon="bin"
          label={`Remove: ${title}`}
          onPress={remove}
          isDisabled={edits.readOnly}
        />
      </div>
      <div className="df-grid-cells">
        {reading.kind === 'hang' ? (
          <HangFields path={path} reading={reading} edits={edits} />
        ) : (
          <SetFields path={path} reading={reading} edits={edits} />
        )}
      </div>
      <ReadingNotices specimen={specimen} readings={[reading.id]} />
    </div>
  );
};

interface FieldsProps<R extends Reading> {
  path: string;
  reading: R;
  edits: SpecimenEdits;
}

/** Writes one number of a reading; an emptied field leaves it as it was. */
const setter =
  <R extends Reading>(edits: SpecimenEdits, reading: R) =>
  (key: keyof R) =>
  (value: number | null): void => {
    if (value !== null)
      edits.editReading(reading.id, (draft) => Object.assign(draft, { [key]: value }));
  };

const HangFields = ({ path, reading, edits }: FieldsProps<HangReading>) => {
  const set = setter(edits, reading);
  return (
    <>
      <MassField
        label="Weight"
        path={`${path}/massG`}
        valueG={reading.massG}
        onCommit={set('massG')}
      />
      <LengthField
        label="Clip width"
        path={`${path}/clippedMm`}
        valueMm={reading.clippedMm}
        onCommit={set('clippedMm')}
      />
      <LengthField
        label="Before"
        path={`${path}/beforeMm`}
        valueMm={reading.beforeMm}
        onCommit={set('beforeMm')}
      />
      <LengthField
        label="With the weight"
        path={`${path}/afterMm`}
        valueMm={reading.afterMm}
        onCommit={set('afterMm')}
      />
    </>
  );
};

const SetFields = ({ path, reading, edits }: FieldsProps<SetReading>) => {
  const set = setter(edits, reading);
  return (
    <>
      <LengthField
        label="Wet, at rest"
        path={`${path}/restMm`}
        valueMm={reading.restMm}
        onCommit={set('restMm')}
      />
      <LengthField
        label="Pinned"
        path={`${path}/pinnedMm`}
        valueMm={reading.pinnedMm}
        onCommit={set('pinnedMm')}
      />
      <LengthField
        label="Dry, pins out"
        path={`${path}/driedMm`}
        valueMm={reading.driedMm}
        onCommit={set('driedMm')}
      />
    </>
  );
};
