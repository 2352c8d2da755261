import { type PinCounts, pinsMissing, pinTotal, pinWords } from '@dryflat/record';
import { useState } from 'react';
import { Button, Card, Dialog, Notice, TextField, toast } from '../../kit/index.ts';
import { useGarment } from '../../store/index.ts';
import { DayField } from '../result/day-field.tsx';
import { printDay, today } from '../result/today.ts';

/** Before anyone wears it (common practice, no source). */
const PinCautions = () => (
  <Notice tone="unsure">
    Feel it over with a bare hand, inside and out, before anyone wears it; a magnet finds steel in
    seams and ribbing, but not brass, glass or plastic. Look over the mat and the floor too: a pin
    that is left finds a child’s foot or a cat’s mouth.
  </Notice>
);

/** The garment is done once every pin is accounted for, or is said to be missing. */
export const FinishCard = () => {
  const { record } = useGarment();
  return (
    <Card title="Finished?">
      {record.finished ? <Finished /> : <NotFinished missing={pinsMissing(record)} />}
    </Card>
  );
};

const useFinish = () => {
  const { change } = useGarment();
  return (missing: PinCounts | null): void =>
    change((draft) => {
      draft.finished = { on: today(), remark: '', ...(missing && { missing: { ...missing } }) };
    });
};

const NotFinished = ({ missing }: { missing: PinCounts }) => {
  const { readOnly } = useGarment();
  const [asking, setAsking] = useState(false);
  const finish = useFinish();
  const gone = pinTotal(missing);
  return (
    <>
      <PinCautions />
      {gone > 0 && (
        <p>
          <strong>{pinWords(missing)}</strong> went in and did not come out yet.
        </p>
      )}
      <div className="df-row">
        <Button
          look={gone > 0 ? 'plain' : 'main'}
          icon="done"
          isDisabled={readOnly}
          onPress={() => (gone > 0 ? setAsking(true) : finish(null))}
        >
          {gone > 0 ? 'Finish with pins missing…' : 'It is finished'}
        </Button>
      </div>
      {asking && <MissingSheet missing={missing} onClose={() => setAsking(false)} />}
    </>
  );
};

const MissingSheet = ({ missing, onClose }: { missing: PinCounts; onClose: () => void }) => {
  const finish = useFinish();
  const [hand, setHand] = useState(false);
  const [magnet, setMagnet] = useState(false);
  return (
    <Dialog
      title="Pins are missing"
      role="alertdialog"
      onClose={onClose}
      foot={
        <>
          <Button onPress={onClose}>Look again</Button>
          <Button
            look="danger"
            isDisabled={!hand || !magnet}
            onPress={() => {
              finish(missing);
              onClose();
            }}
          >
            Finished, {pinTotal(missing) === 1 ? 'one' : pinTotal(missing)} missing
          </Button>
        </>
      }
    >
      <p>
        <strong>{pinWords(missing)}</strong> went in and did not come out. Somebody may wear it with
        a pin in it.
      </p>
      <Tick label="I felt it over by hand, inside and out" on={hand} set={setHand} />
      <Tick label="I went over it and the floor with a magnet" on={magnet} set={setMagnet} />
    </Dialog>
  );
};

const Tick = ({ label, on, set }: { label: string; on: boolean; set: (on: boolean) => void }) => (
  <label className="df-tick">
    <input type="checkbox" checked={on} onChange={(event) => set(event.target.checked)} />
    {label}
  </label>
);

const Finished = () => {
  const { record, change, readOnly, undo } = useGarment();
  const { on, missing, remark } = record.finished!;
  const put = (part: Partial<NonNullable<typeof record.finished>>): void =>
    change((draft) => {
      if (draft.finished) Object.assign(draft.finished, part);
    });
  const takeBack = (): void => {
    change((draft) => {
      delete draft.finished;
    });
    toast('It is not finished any more.', undo);
  };
  const gone = missing !== undefined && pinTotal(missing) > 0;
  return (
    <>
      <Notice tone={gone ? 'wrong' : 'good'}>
        Finished on {printDay(on)}
        {gone ? `, with ${pinWords(missing)} missing. Tell whoever wears it.` : '.'}
      </Notice>
      {gone && <PinCautions />}
      <div className="df-columns">
        <DayField label="Finished on" value={on} onChange={(day) => day && put({ on: day })} />
        <TextField
          label="Remark"
          value={remark}
          readOnly={readOnly}
          onChange={(text) => put({ remark: text })}
        />
      </div>
      <div>
        <Button look="quiet" icon="undo" onPress={takeBack} isDisabled={readOnly}>
          It is not finished after all
        </Button>
      </div>
    </>
  );
};
