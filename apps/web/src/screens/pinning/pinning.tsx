import { type MatWork, pinsForEachWire } from '@dryflat/record';
import { useState } from 'react';
import { Icon, IconButton, Notice } from '../../kit/index.ts';
import { garmentHash } from '../../shell/hash.ts';
import { isAtRisk, useGarment, useKeeping, useView } from '../../store/index.ts';
import { useEdgeWords } from '../mat/mat-words.ts';
import { useHands } from './hands.ts';
import { HandsSheet } from './hands-sheet.tsx';
import { PiecesSheet } from './pieces-sheet.tsx';
import { StepScreen } from './step-screen.tsx';
import { stepSaid } from './step-words.ts';
import { Summary } from './summary.tsx';
import { useAloud, useVoices } from './use-aloud.ts';
import { useAwake } from './use-awake.ts';
import { useWork } from './use-work.ts';
import { workName } from './work-name.ts';

/** One piece being pinned: a step at a time, then what came of it. */
export const Pinning = ({
  kept,
  works,
  open,
}: {
  kept: MatWork;
  works: readonly MatWork[];
  open: (id: string) => void;
}) => {
  const at = useWork(kept);
  const [hands, setHands] = useHands();
  const [sheet, setSheet] = useState<'hands' | 'pieces' | null>(null);
  const awake = useAwake();
  const voices = useVoices();
  const said = useSaid(at.work);
  const sayAgain = useAloud(said, { on: hands.aloud, voice: hands.voice }, voices);
  const { work } = at;
  const close = () => setSheet(null);
  return (
    <>
      <Head
        work={work}
        others={works.length > 1}
        choose={() => setSheet('pieces')}
        hands={() => setSheet('hands')}
      />
      {work.at < work.steps.length ? (
        <StepScreen
          {...at}
          hands={hands}
          setHands={setHands}
          sayAgain={sayAgain}
          awake={awake}
          sheetOpen={sheet !== null}
        />
      ) : (
        <Summary {...at} />
      )}
      <p className="df-unseen df-said" role="status" aria-live="polite">
        {said}
      </p>
      {sheet === 'hands' && (
        <HandsSheet
          hands={hands}
          change={setHands}
          voices={voices}
          awake={awake}
          sayAgain={sayAgain}
          onClose={close}
        />
      )}
      {sheet === 'pieces' && (
        <PiecesSheet works={works} current={work.id} open={open} onClose={close} />
      )}
    </>
  );
};

/** The step as it is heard. */
const useSaid = (work: MatWork): string => {
  const { units, words } = useView();
  const edges = useEdgeWords();
  const step = work.steps[work.at];
  if (step === undefined) return `${workName(work)}: all pins are decided.`;
  const pins = pinsForEachWire(work)[work.at];
  return stepSaid(step, work.at, work.steps.length, { units, words, edges }, pins);
};

const Head = ({
  work,
  others,
  choose,
  hands,
}: {
  work: MatWork;
  others: boolean;
  choose: () => void;
  hands: () => void;
}) => {
  const { record, canUndo, undo, readOnly } = useGarment();
  const keeping = useKeeping();
  return (
    <>
      <div className="df-pinning-head">
        <a className="df-button" data-look="quiet" href={garmentHash(record.id, 'mat')}>
          <Icon name="back" />
          Mat
        </a>
        {others ? (
          <button type="button" className="df-pinning-piece" onClick={choose}>
            <span className="df-unseen">Piece: </span>
            {workName(work)}
            <Icon name="down" />
          </button>
        ) : (
          <p className="df-pinning-piece">{workName(work)}</p>
        )}
        <IconButton icon="undo" label="Undo" isDisabled={!canUndo} onPress={undo} />
        <IconButton icon="more" label="Hands, eyes and ears" onPress={hands} />
      </div>
      {readOnly && (
        <Notice tone="unsure">
          This garment was saved by a newer Dryflat: its steps are shown, and nothing that you do
          here is kept.
        </Notice>
      )}
      {isAtRisk(keeping) && (
        <Notice tone="wrong">This device keeps nothing now: do not close this page.</Notice>
      )}
    </>
  );
};
