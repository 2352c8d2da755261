import type { OutlinePiece } from '@dryflat/engine/garment';
import { Button, Card, useWords } from '../../kit/index.ts';
import { garmentHash } from '../../shell/hash.ts';
import { newId, useGarment } from '../../store/index.ts';
import type { TextAnswer } from '../../worker/counts/index.ts';
import { OwnText } from './own-text.tsx';

/** The written counts of the pattern, a text for each piece. */
export const OwnTextsCard = ({
  outlines,
  texts,
}: {
  outlines: readonly OutlinePiece[];
  texts: readonly TextAnswer[];
}) => {
  const { record, change, readOnly } = useGarment();
  const word = useWords();
  const kept = record.instructions ?? [];
  const missing = outlines
    .map(({ name }) => name)
    .filter((name) => !kept.some(({ piece }) => piece.toLowerCase() === name));
  const add = (piece: string): void =>
    change((draft) => {
      draft.instructions = [...(draft.instructions ?? []), { id: newId(), piece, text: '' }];
    });
  return (
    <Card title="The pattern’s own counts">
      <p>
        Type or paste what the pattern prints for your size, one piece at a time, such as “Cast on
        112. Work 6 cm in rib. Decrease 1 each end of every 4th row 6 times.” It is recounted at
        your {word('gauge')}, and drawn.
      </p>
      {record.pattern.gauge === undefined && kept.length > 0 && (
        <p>
          <a href={garmentHash(record.id, 'pattern')}>
            The pattern’s {word('gauge')} is given under Pattern
          </a>
        </p>
      )}
      {kept.map((instruction) => (
        <OwnText
          key={instruction.id}
          instruction={instruction}
          answer={texts.find(({ id }) => id === instruction.id) ?? null}
          wanted={outlines.find(({ name }) => name === instruction.piece.toLowerCase()) ?? null}
        />
      ))}
      {missing.length > 0 && (
        <div className="df-row co-not-printed">
          {missing.map((name) => (
            <Button key={name} icon="add" isDisabled={readOnly} onPress={() => add(name)}>
              Text of the {name}
            </Button>
          ))}
        </div>
      )}
    </Card>
  );
};
