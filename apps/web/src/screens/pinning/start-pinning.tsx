import { type MatWork, pinsIn, pinTotal, pinWords } from '@dryflat/record';
import { useState } from 'react';
import { Button, Card, Confirm, Icon, IconButton, Notice, toast } from '../../kit/index.ts';
import { garmentHash } from '../../shell/hash.ts';
import { go } from '../../shell/route.ts';
import { newId, noteDevice, useGarment } from '../../store/index.ts';
import { pieceWord } from '../mat/mat-words.ts';
import type { Mat } from '../mat/use-mat.ts';
import { type CopyChoice, CopySheet } from './copy-sheet.tsx';
import { freeze, layAgain } from './freeze.ts';
import { openNote } from './open-note.ts';
import { planAsItStands } from './plan-as-it-stands.ts';
import { stageWords } from './stage-words.ts';
import { workName } from './work-name.ts';

/** From the plan to the pins: pieces that are under way, and the start of another. */
export const StartPinning = ({ mat, gentle }: { mat: Mat; gentle: boolean }) => {
  const { record, change, readOnly } = useGarment();
  const [asking, setAsking] = useState(false);
  const works = record.onMat ?? [];
  const piece = mat.planned?.plan.name ?? null;
  const alike = works.filter((work) => work.piece === piece);
  const ready = mat.planned !== null && mat.planning.at === 'ready' && !readOnly;
  const begin = (choice: CopyChoice): void => {
    setAsking(false);
    const work = workOf(mat, gentle, choice);
    if (work === null) return;
    change((draft) => {
      draft.onMat = [...(draft.onMat ?? []), structuredClone(work)];
    }, 'apart');
    open(record.id, work.id);
  };
  if (piece === null && works.length === 0) return null;
  return (
    <Card title="Pin it, step by step">
      {works.length > 0 && (
        <ul className="df-works">
          {works.map((work) => (
            <WorkRow key={work.id} work={work} />
          ))}
        </ul>
      )}
      {piece !== null && (
        <>
          <div className="df-row">
            <Button
              look={alike.some(({ pinned }) => pinned === undefined) ? 'plain' : 'main'}
              icon="onward"
              isDisabled={!ready}
              onPress={() => (alike.length > 0 ? setAsking(true) : begin({ copy: '', as: 'plan' }))}
            >
              {alike.length > 0 ? `Start another ${piece}` : `Start pinning: ${pieceWord(piece)}`}
            </Button>
          </div>
          <p className="df-soft">
            {record.plan.sewn
              ? 'Sewn, it lies doubled: one work, and each pin goes through both layers. '
              : 'Each piece is a work of its own. '}
            The plan is kept with it: going on needs no network and no new calculation.
          </p>
        </>
      )}
      {readOnly && (
        <Notice tone="unsure">
          This record is only shown here: pinning cannot be started, and pins that you move on the
          mat are not kept.
        </Notice>
      )}
      {asking && (
        <CopySheet
          alike={alike}
          piece={piece ?? ''}
          begin={begin}
          onClose={() => setAsking(false)}
        />
      )}
    </Card>
  );
};

const open = (garment: string, work: string): void => {
  noteDevice(openNote(garment), work);
  go(garmentHash(garment, 'pinning'));
};

/** Null where what was laid before cannot be laid again. */
const workOf = (mat: Mat, gentle: boolean, { copy, as, before }: CopyChoice): MatWork | null => {
  const begun = { id: newId(), copy, begun: new Date().toISOString() };
  if (as !== 'plan' && before) return layAgain(before, begun, as === 'mirror');
  const { planned, places, cloth, lying } = mat;
  if (planned === null) return null;
  const plan = planAsItStands(planned, places, cloth && lying && { cloth, lying });
  return freeze(plan, planned.mat, { ...begun, gentle, mirrored: as === 'mirror' });
};

const WorkRow = ({ work }: { work: MatWork }) => {
  const { record, change, undo, readOnly } = useGarment();
  const [asking, setAsking] = useState(false);
  const counts = pinsIn(work);
  const name = workName(work);
  const under = work.pinned === undefined;
  const forget = (): void => {
    change((draft) => {
      draft.onMat = (draft.onMat ?? []).filter(({ id }) => id !== work.id);
    });
    toast(`The pinning of “${name}” is forgotten.`, undo);
  };
  return (
    <li>
      <span className="df-works-name">{name}</span>
      <a
        className="df-button"
        data-look={under ? 'main' : 'plain'}
        href={garmentHash(record.id, 'pinning')}
        onClick={() => noteDevice(openNote(record.id), work.id)}
      >
        <Icon name="onward" />
        {under ? `Go on pinning: ${stageWords(work)}` : `Look: ${stageWords(work)}`}
        <span className="df-unseen">, {name}</span>
      </a>
      {!readOnly && (
        <IconButton
          icon="bin"
          label={`Forget the pinning of ${name}`}
          onPress={() => (pinTotal(counts) > 0 ? setAsking(true) : forget())}
        />
      )}
      {asking && (
        <Confirm
          title={`Forget the pinning of ${name}?`}
          confirm="Forget it"
          onConfirm={forget}
          onClose={() => setAsking(false)}
        >
          {pinWords(counts)} went into the mat for it. They are no longer counted then.
        </Confirm>
      )}
    </li>
  );
};
