import type { Drying } from '@dryflat/record';
import { Button, Card, EmptyState, Notice, toast } from '../../kit/index.ts';
import { newId, useGarment } from '../../store/index.ts';
import { PhotoSection } from '../photos/index.tsx';
import { AnswerCard } from './answer-card.tsx';
import { beginDrying } from './begin.ts';
import './dry.css';
import { useEditDrying } from './edit-drying.ts';
import { FinishCard } from './finish-card.tsx';
import { HowItLies } from './how-it-lies.tsx';
import { useOnlyReminders } from './only-reminders.ts';
import { DriedCard, PastCard } from './past-card.tsx';
import { wasPinned } from './pin-kinds.ts';
import { RemindersCard } from './reminders-card.tsx';
import { ThenCard } from './then-card.tsx';
import { TouchCard } from './touch-card.tsx';
import { TurnRow } from './turn-row.tsx';
import { UnpinCards } from './unpin-card.tsx';
import { useDrying } from './use-drying.ts';
import { useNow } from './use-now.ts';
import { WeighCard } from './weigh-card.tsx';

/** From the towels to dry, unpinned and finished. */
const Screen = () => {
  const { record } = useGarment();
  const dryings = record.dryings ?? [];
  const drying = dryings.at(-1);
  const over = drying?.dried !== undefined;
  const onMat = (record.onMat ?? []).some(wasPinned);
  useOnlyReminders(record.id, drying && !over ? drying.id : null);
  return (
    <>
      {drying === undefined && (
        <EmptyState title="Is it laid out?" action={<BeginButton />}>
          From the moment that the water is pressed out, this tells when to look at it, when to turn
          it, and when it is dry; every weighing makes it surer, and without a scale a hand does.
        </EmptyState>
      )}
      {drying && !over && <UnderWay key={drying.id} drying={drying} />}
      {drying && over && <Over drying={drying} />}
      {(over || (drying === undefined && onMat)) && <UnpinCards />}
      {(over || record.finished || (drying === undefined && onMat)) && <FinishCard />}
      {(over || record.finished) && <ThenCard />}
      <PhotoSection when={over ? 'dried' : drying?.pinned ? 'pinned' : 'before'} />
      {over && (
        <Card title="Washed again?">
          <div>
            <BeginButton />
          </div>
        </Card>
      )}
      <PastCard past={dryings.slice(0, -1)} />
    </>
  );
};
export default Screen;

const BeginButton = () => {
  const { change, readOnly } = useGarment();
  const begin = (): void =>
    change((draft) => {
      draft.dryings = [...(draft.dryings ?? []), beginDrying(draft, newId(), Date.now())];
    });
  return (
    <Button look="main" icon="dry" onPress={begin} isDisabled={readOnly}>
      It lies and dries from now
    </Button>
  );
};

const UnderWay = ({ drying }: { drying: Drying }) => {
  const edit = useEditDrying(drying.id);
  const at = useDrying(drying);
  const now = useNow(drying);
  return (
    <>
      <AnswerCard drying={drying} edit={edit} at={at} now={now} />
      {drying.pinned && (
        <Notice tone="unsure">
          Pins are in it, and they are sharp: keep children and pets away until they are out.
        </Notice>
      )}
      <HowItLies drying={drying} edit={edit} />
      <div className="df-dry-columns">
        <WeighCard drying={drying} edit={edit} now={now} />
        {at.forecast && <TouchCard drying={drying} edit={edit} forecast={at.forecast} now={now} />}
      </div>
      <Card title="Is it dry?">
        <TurnRow drying={drying} edit={edit} now={now} />
        <DryButton drying={drying} />
      </Card>
      {at.forecast && <RemindersCard drying={drying} forecast={at.forecast} />}
      <DropButton drying={drying} />
    </>
  );
};

const DryButton = ({ drying }: { drying: Drying }) => {
  const { readOnly, undo } = useGarment();
  const edit = useEditDrying(drying.id);
  const dry = (): void => {
    edit((draft) => {
      draft.dried = new Date().toISOString();
    });
    toast(drying.pinned ? 'It is dry. Now the pins come out.' : 'It is dry.', undo);
  };
  return (
    <>
      <p>
        It is dry when the scale says so and the thickest place feels no cooler than the rest.
        {drying.pinned && ' Pins stay in until then: damp wool goes back to where it was.'}
      </p>
      <div>
        <Button look="main" icon="done" onPress={dry} isDisabled={readOnly}>
          It is dry
        </Button>
      </div>
    </>
  );
};

const DropButton = ({ drying }: { drying: Drying }) => {
  const { change, readOnly, undo } = useGarment();
  const drop = (): void => {
    change((draft) => {
      draft.dryings = draft.dryings?.filter(({ id }) => id !== drying.id) ?? [];
    });
    toast('The drying is removed.', undo);
  };
  return (
    <div>
      <Button look="quiet" icon="bin" onPress={drop} isDisabled={readOnly}>
        Remove this drying
      </Button>
    </div>
  );
};

const Over = ({ drying }: { drying: Drying }) => <DriedCard drying={drying} now={useNow(drying)} />;
