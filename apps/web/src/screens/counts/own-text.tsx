import type { OutlinePiece } from '@dryflat/engine/garment';
import type { Fault } from '@dryflat/engine/units';
import type { Instruction } from '@dryflat/record';
import { useRef } from 'react';
import { Button, FaultList, Notice, TextField, toast, useWords } from '../../kit/index.ts';
import { useGarment } from '../../store/index.ts';
import type { TextAnswer } from '../../worker/counts/index.ts';
import { RecountDrawing } from './recount-drawing.tsx';
import { RecountTable } from './recount-table.tsx';
import { lineOfFault, rangeOfLine } from './text-line.ts';

const capital = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`;

/** What the pattern prints for one piece: kept as typed, read line by line, recounted beside it. */
export const OwnText = ({
  instruction,
  answer,
  wanted,
}: {
  instruction: Instruction;
  /** Null until it was read. */
  answer: TextAnswer | null;
  /** The piece as it is wanted; null where the garment has none of that name. */
  wanted: OutlinePiece | null;
}) => {
  const { change, readOnly, undo } = useGarment();
  const box = useRef<HTMLDivElement>(null);
  const { id, piece, text } = instruction;
  const name = capital(piece);
  const remove = (): void => {
    change((draft) => {
      draft.instructions = (draft.instructions ?? []).filter((each) => each.id !== id);
    });
    toast(`The pattern’s text of the ${piece} is removed.`, undo);
  };
  const goTo = (line: number): void => {
    const area = box.current?.querySelector('textarea');
    if (!area) return;
    area.focus();
    area.setSelectionRange(...rangeOfLine(text, line));
  };
  return (
    <section className="co-own" ref={box} aria-label={`The pattern’s text: ${piece}`}>
      <TextField
        long
        label={`${name}, as the pattern prints it`}
        value={text}
        readOnly={readOnly}
        hint="One step a sentence. Remarks go in brackets; a number of stitches in brackets is checked."
        onChange={(next) =>
          change((draft) => {
            const found = draft.instructions?.find((each) => each.id === id);
            if (found) found.text = next;
          })
        }
      />
      {answer && <LineFaults faults={answer.faults} onGo={goTo} />}
      {answer?.steps && <Read answer={answer} name={name} wanted={wanted} />}
      <div className="co-not-printed">
        <Button look="quiet" icon="bin" onPress={remove} isDisabled={readOnly}>
          Remove this text<span className="df-unseen">: {piece}</span>
        </Button>
      </div>
    </section>
  );
};

const LineFaults = ({
  faults,
  onGo,
}: {
  faults: readonly Fault[];
  onGo: (line: number) => void;
}) => {
  if (faults.length === 0) return null;
  return (
    <ul className="co-faults" aria-label="What cannot be read">
      {faults.map((fault) => {
        const line = lineOfFault(fault);
        return (
          <li key={`${fault.field} ${fault.code} ${fault.given}`}>
            {line !== null && (
              <Button look="quiet" icon="pen" onPress={() => onGo(line)}>
                Line {line}
              </Button>
            )}
            <div>
              {fault.given !== '' && <q>{fault.given}</q>} <b>{capital(fault.problem)}.</b>{' '}
              {fault.mend}
            </div>
          </li>
        );
      })}
    </ul>
  );
};

const Read = ({
  answer,
  name,
  wanted,
}: {
  answer: TextAnswer;
  name: string;
  wanted: OutlinePiece | null;
}) => {
  const word = useWords();
  return (
    <>
      {answer.recount === null && answer.recountFaults.length === 0 && (
        <Notice>
          It is read. Give the {word('gauge')} of the pattern, and it is recounted at yours.
        </Notice>
      )}
      <FaultList
        faults={answer.recountFaults.map((fault) => ({ ...fault, field: '', given: '' }))}
      />
      {answer.recount && answer.steps && (
        <RecountTable steps={answer.steps} recount={answer.recount} name={name} />
      )}
      <RecountDrawing answer={answer} wanted={wanted} name={name} />
    </>
  );
};
