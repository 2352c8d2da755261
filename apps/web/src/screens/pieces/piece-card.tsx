import { outlineOf } from '@dryflat/engine/garment';
import type { Piece } from '@dryflat/record';
import { pieceNamed } from '@dryflat/record/routes';
import { useMemo } from 'react';
import { Button, Card, SectionFaults, TextField, toast } from '../../kit/index.ts';
import { useGarment } from '../../store/index.ts';
import { allOf, ProgressField } from '../result/progress-field.tsx';
import { TapeList } from '../result/tape-list.tsx';

const STATES = ['asKnit', 'wet', 'pinned', 'dried'] as const;

/** How much of the piece that a name tells of is knit; nothing where it tells of none. */
const HowFar = ({ name }: { name: string }) => {
  const { record } = useGarment();
  const pieces = useMemo(() => outlineOf(record.kind, {}).pieces, [record.kind]);
  const found = pieceNamed(pieces, name);
  return (
    found && <ProgressField piece={found.name} label={`How much of ${allOf(found)} is knit`} />
  );
};

/** One piece with its tape measurements. */
export const PieceCard = ({ piece, at }: { piece: Piece; at: number }) => {
  const { change, readOnly, undo } = useGarment();
  const edit = (recipe: (piece: Piece) => void): void =>
    change((draft) => {
      const found = draft.pieces.find(({ id }) => id === piece.id);
      if (found) recipe(found);
    });
  const remove = (): void => {
    change((draft) => {
      draft.pieces = draft.pieces.filter(({ id }) => id !== piece.id);
    });
    toast(`“${piece.name}” is removed.`, undo);
  };
  return (
    <Card title={piece.name || 'A piece'}>
      <TextField
        label="Name of the piece"
        value={piece.name}
        readOnly={readOnly}
        onChange={(name) =>
          edit((draft) => {
            draft.name = name;
          })
        }
      />
      <SectionFaults prefix={`pieces[${at}]`} except={['question-span']} />
      <HowFar name={piece.name} />
      <h3>By the tape</h3>
      <TapeList
        path={`pieces/${piece.id}`}
        field={`pieces[${at}].measured`}
        tapes={piece.measured}
        states={STATES}
        edit={(recipe) => edit((draft) => recipe(draft.measured))}
      />
      <div>
        <Button look="quiet" icon="bin" onPress={remove} isDisabled={readOnly}>
          Remove this piece
          <span className="df-unseen">: {piece.name}</span>
        </Button>
      </div>
    </Card>
  );
};
