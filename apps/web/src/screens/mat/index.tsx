import { scaleEnd } from '@dryflat/engine/blocking';
import { USUAL_MAT, USUAL_STOCK } from '@dryflat/record/block';
import { useCallback, useDeferredValue, useEffect, useId, useMemo, useState } from 'react';
import {
  announce,
  Button,
  Card,
  ChoiceChips,
  FaultList,
  Notice,
  useLandmarkName,
  useLengths,
} from '../../kit/index.ts';
import { useGarment, useView } from '../../store/index.ts';
import { useSizeAsked } from '../forecast/size-asked.tsx';
import { PhotoSection } from '../photos/index.tsx';
import { StartPinning } from '../pinning/start-pinning.tsx';
import { AtHandForm } from './at-hand.tsx';
import { ChosenPin } from './chosen-pin.tsx';
import { Legend } from './legend.tsx';
import './mat.css';
import { useMatChoices } from './mat-choices.ts';
import { countOf, PIN_KINDS, PIN_WORDS, percent, pieceWord } from './mat-words.ts';
import { Measures } from './measures.tsx';
import { type MovedPin, movedFrom } from './moved-pins.ts';
import { MovedPins } from './moved-pins-row.tsx';
import { nudgeOf } from './nudge.ts';
import { PinList } from './pin-list.tsx';
import { CouldNot, OrderAndEase, PinCaution, PlanDoubts, TooLarge } from './plan-notes.tsx';
import { Stage } from './stage.tsx';
import { type Mat, type Planning, useMat } from './use-mat.ts';

/** A piece on its mat: which pins where, in which order, and what it will not do. */
const Screen = () => {
  const { change, readOnly } = useGarment();
  const { record, question } = useSizeAsked();
  const [choices, choose] = useMatChoices(record.id);
  const { piece, gentle } = choices;
  const { stock = USUAL_STOCK, mat: board = USUAL_MAT, sewn = false } = record.plan;
  const save = useCallback(
    (pins: readonly MovedPin[]): void =>
      change((draft) => {
        if (pins.length > 0) draft.plan.pins = structuredClone([...pins]);
        else delete draft.plan.pins;
      }),
    [change],
  );
  const mat = useMat(record, choices, save);
  const names = mat.planned?.pieces ?? [];
  const underWay = (record.onMat?.length ?? 0) > 0;
  const start = <StartPinning mat={mat} gentle={gentle} />;
  return (
    <>
      {underWay && start}
      {question}
      <Card title="On the mat">
        {names.length > 1 && (
          <ChoiceChips
            label="Which piece"
            value={piece ?? mat.planned?.piece.name ?? null}
            onChange={(name) => choose({ piece: name })}
            choices={names.map((name) => ({ value: name, label: pieceWord(name) }))}
          />
        )}
        <div className="df-columns">
          <ChoiceChips
            label="How far to pull"
            value={gentle ? 'gently' : 'to measure'}
            onChange={(value) => choose({ gentle: value === 'gently' })}
            choices={[
              { value: 'gently', label: 'Gently', note: 'No more than is called safe' },
              { value: 'to measure', label: 'To measure', note: 'As far as the fabric goes' },
            ]}
          />
          <ChoiceChips
            label="How it lies"
            value={sewn ? 'sewn' : 'apart'}
            onChange={(value) =>
              change((draft) => {
                draft.plan.sewn = value === 'sewn';
              })
            }
            readOnly={readOnly}
            choices={[
              { value: 'apart', label: 'Pieces apart' },
              { value: 'sewn', label: 'Sewn, two layers' },
            ]}
          />
        </div>
        <AtHandForm
          stock={stock}
          mat={board}
          assumed={record.plan.stock === undefined || record.plan.mat === undefined}
          change={(part) =>
            change((draft) => {
              Object.assign(draft.plan, structuredClone(part));
            })
          }
        />
        <PlanningLine
          planning={mat.planning}
          hasPlan={mat.planned !== null}
          plan={mat.plan}
          letGo={mat.planned === null && record.plan.pins ? mat.putBack : null}
          cancel={mat.cancel}
        />
        {mat.planned && <TooLarge planned={mat.planned} />}
      </Card>
      {!underWay && start}
      {mat.planned && <OnMat mat={mat} />}
      <PhotoSection when={underWay ? 'pinned' : 'before'} />
    </>
  );
};
export default Screen;

const PlanningLine = ({
  planning,
  hasPlan,
  plan,
  letGo,
  cancel,
}: {
  planning: Planning;
  hasPlan: boolean;
  plan: () => void;
  /** Lets go of moved pins, where that may be what is in the way. */
  letGo: (() => void) | null;
  cancel: () => void;
}) => {
  if (planning.at === 'ready') return null;
  if (planning.at === 'working')
    return (
      <section className="df-planning" aria-label="The plan is being worked out">
        <progress max={1} value={planning.done} aria-label="Share of the plan that is done" />
        <span>
          {hasPlan
            ? 'Working out a new plan; the one below is the last'
            : 'Working out where pins go'}
          : {percent(planning.done)}
        </span>
        <Button onPress={cancel}>Cancel</Button>
      </section>
    );
  return (
    <>
      {planning.at === 'stopped' && <p>The plan was cancelled.</p>}
      {planning.at === 'faults' && <FaultList faults={planning.faults} />}
      {planning.at === 'broken' && (
        <Notice tone="wrong">The plan failed, which is our mistake: {planning.message}.</Notice>
      )}
      <div className="df-row">
        <Button look="main" onPress={plan}>
          Work it out
        </Button>
        {letGo && (
          <Button look="quiet" icon="undo" onPress={letGo}>
            Pins as planned
          </Button>
        )}
      </div>
    </>
  );
};

const OnMat = ({ mat }: { mat: Mat }) => {
  const planned = mat.planned!;
  const { plan } = planned;
  const [wanted, choose] = useState(0);
  const [closer, setCloser] = useState(false);
  const { units } = useView();
  const help = useId();
  const chosen = Math.min(wanted, plan.pins.length - 1);
  const pin = plan.pins[chosen];
  const most = scaleEnd(mat.lying?.worst.overWet ?? plan.stretchUse.overWet);
  const moved = useMemo(() => movedFrom(planned, mat.places), [planned, mat.places]);
  const now = useMemo(() => ({ planned, places: mat.places, moved }), [planned, mat.places, moved]);
  // The list follows when there is time: the fabric comes first.
  const late = useDeferredValue(now);
  const listed = late.planned === planned ? late : now;
  const still = mat.cloth === null || mat.planning.at === 'working';
  const move = (dx: number, dy: number): void => {
    if (!still && pin?.kind !== 'wire') mat.nudge(chosen, dx, dy);
  };
  const onKeyDown = (event: React.KeyboardEvent): void => {
    const step = { PageUp: -1, PageDown: 1 }[event.key];
    if (step) choose(Math.min(plan.pins.length - 1, Math.max(0, chosen + step)));
    const nudge = nudgeOf(event.key, event.shiftKey, units);
    if (nudge) move(nudge.dx, nudge.dy);
    if (step || nudge) event.preventDefault();
  };
  useToldMoves(mat, moved);
  return (
    <>
      <div className="df-mat-columns">
        <section className="df-card" aria-label={`${pieceWord(plan.name)} on the mat`}>
          <h2>
            {pieceWord(plan.name)}, <PinCounts mat={mat} />
          </h2>
          <PlanDoubts planned={planned} />
          <Stage
            planned={planned}
            cloth={mat.cloth}
            lying={mat.lying}
            places={mat.places}
            chosen={chosen}
            most={most}
            closer={closer}
            choose={choose}
            place={still ? () => {} : mat.place}
            settle={mat.settle}
            onKeyDown={onKeyDown}
            describedBy={help}
            chosenLabel={pin ? `${PIN_WORDS[pin.kind]} ${pin.order} of ${plan.pins.length}` : ''}
          />
          <div className="df-row">
            <Button look="quiet" onPress={() => setCloser(!closer)}>
              {closer ? 'The whole piece' : 'Closer'}
            </Button>
            {mat.cloth === null && mat.handBroken === null && (
              <span role="status">Laying the fabric out…</span>
            )}
          </div>
          <p className="df-soft" id={help}>
            Drag a pin and the fabric follows. On the keyboard, arrows move the chosen pin by a mark
            of the tape, with shift further; Page Up and Page Down choose another.
          </p>
          {mat.handBroken && <Notice tone="wrong">{mat.handBroken}</Notice>}
          <ChosenPin
            planned={planned}
            places={mat.places}
            lying={mat.lying}
            chosen={chosen}
            choose={choose}
            move={move}
            still={still}
          />
          <MovedPins mat={mat} moved={moved} />
          <Legend planned={planned} lying={mat.lying} most={most} />
        </section>
        <section className="df-card" aria-label="What it comes to">
          <h2>What it comes to</h2>
          <Measures planned={planned} lying={mat.lying} />
        </section>
      </div>
      <CouldNot planned={planned} />
      <Card title="Pins in their order">
        <PinCaution planned={planned} />
        <PinList planned={planned} places={listed.places} moved={listed.moved} />
      </Card>
      <OrderAndEase planned={planned} />
    </>
  );
};

const PinCounts = ({ mat }: { mat: Mat }) => {
  const { pinsInAll } = mat.planned!.whole;
  const counts = PIN_KINDS.filter((kind) => pinsInAll[kind] > 0).map((kind) =>
    countOf(kind, pinsInAll[kind]),
  );
  return counts.length > 0 ? counts.join(', ') : 'no pin';
};

/** Speaks what a pin that came to rest changed, for those who do not see the fabric follow. */
const useToldMoves = ({ lying, planned }: Mat, moved: ReadonlySet<number>): void => {
  const { length } = useLengths();
  const name = useLandmarkName();
  useEffect(() => {
    if (moved.size === 0 || lying === null || planned === null) return;
    const timer = setTimeout(() => {
      const told = planned.plan.measurements.flatMap((each, k) => {
        const now = lying.reached[k] ?? each.reachedMm.p50Mm;
        return Math.abs(now - each.reachedMm.p50Mm) < 1
          ? []
          : [`${name(each.landmark)} ${length(now)}`];
      });
      announce(
        `${told.length > 0 ? told.join(', ') : 'No measure changed'}. Stretched at most to ${percent(lying.worst.overWet)} over its wet size.`,
      );
    }, 700);
    return () => clearTimeout(timer);
  }, [lying, planned, moved.size, length, name]);
};
