import { Button, Card, EmptyState } from '../../kit/index.ts';
import { newId, useGarment } from '../../store/index.ts';
import { PieceCard } from './piece-card.tsx';

const NAMES = ['Back', 'Front', 'Sleeve', 'Another piece'] as const;

/** The pieces that exist, and what a tape says of each. */
const Screen = () => {
  const { record } = useGarment();
  if (record.pieces.length === 0)
    return (
      <EmptyState title="No piece yet" action={<AddPiece />}>
        Once a back, a front or half a sleeve is there, lay it flat and measure it: nothing tells
        more of the garment than the garment.
      </EmptyState>
    );
  return (
    <>
      {record.pieces.map((piece, at) => (
        <PieceCard key={piece.id} piece={piece} at={at} />
      ))}
      <Card title="Another piece is done?">
        <div className="df-row">
          <AddPiece />
        </div>
      </Card>
    </>
  );
};
export default Screen;

const AddPiece = () => {
  const { change, readOnly } = useGarment();
  return (
    <>
      {NAMES.map((name) => (
        <Button
          key={name}
          icon="add"
          isDisabled={readOnly}
          onPress={() =>
            change((draft) => {
              draft.pieces.push({ id: newId(), name, measured: [] });
            })
          }
        >
          {name}
        </Button>
      ))}
    </>
  );
};
