import type { Piece } from '@dryflat/record';
import { Button, Card, SectionFaults, TextField, toast } from '../../kit/index.ts';
import { useGarment } from '../../store/index.ts';
import { TapeList } from '../result/tape-list.tsx';

const STATES = ['asKnit', 'wet', 'pinned', 'dried'] as const;

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
