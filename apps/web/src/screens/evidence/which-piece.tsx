import { outlineOf } from '@dryflat/engine/garment';
import type { Specimen } from '@dryflat/record';
import { isOfGarment, pieceOf } from '@dryflat/record/routes';
import { useMemo } from 'react';
import { Select } from '../../kit/index.ts';
import { useGarment } from '../../store/index.ts';
import { pieceWord } from '../mat/mat-words.ts';
import { allOf, ProgressField } from '../result/progress-field.tsx';
import type { SpecimenEdits } from './change-specimen.ts';

/** Of a part of the garment or a whole piece: which piece it is, and how far that is knit. */
export const WhichPiece = ({ specimen, edits }: { specimen: Specimen; edits: SpecimenEdits }) => {
  const { record } = useGarment();
  const pieces = useMemo(() => outlineOf(record.kind, {}).pieces, [record.kind]);
  if (!isOfGarment(specimen)) return null;
  const piece = pieceOf(pieces, specimen);
  return (
    <div className="df-three">
      {pieces.length > 1 && (
        <Select
          label="Which piece it is of"
          hint={piece === undefined && 'Taken for the back until you say.'}
          value={piece?.name ?? null}
          onChange={(name) =>
            edits.edit((draft) => {
              draft.piece = name;
            })
          }
          readOnly={edits.readOnly}
          options={pieces.map(({ name }) => ({ value: name, label: pieceWord(name) }))}
        />
      )}
      {piece && <ProgressField piece={piece.name} label={`How much of ${allOf(piece)} is knit`} />}
    </div>
  );
};
