import { type OutlinePiece, outlineOf } from '@dryflat/engine/garment';
import type { Result } from '@dryflat/engine/units';
import { knitSoFar } from '@dryflat/record/routes';
import { useMemo } from 'react';
import { ParsedField } from '../../kit/index.ts';
import { useGarment } from '../../store/index.ts';
import { pieceWord } from '../mat/mat-words.ts';
import { today } from './today.ts';

const PERCENT = /^(\d{1,3}(?:[.,]\d)?)\s*%?$/;

/** A share of a piece that is knit: 0 to 100 percent. */
const parseShare = (given: string, field: string): Result<number> => {
  const value = Number((PERCENT.exec(given.trim())?.[1] ?? 'NaN').replace(',', '.'));
  if (value >= 0 && value <= 100) return { ok: true, value: value / 100 };
  return {
    ok: false,
    faults: [
      {
        code: 'share-unreadable',
        field,
        given,
        problem: 'this is not a share in percent',
        mend: 'Type a number from 0 to 100: 50 is half of it.',
      },
    ],
  };
};

const printShare = (share: number): string => `${Math.round(1000 * share) / 10}`;

/** How much of a piece is on the needles or done; what is taken where nobody said stands beside it. */
export const ProgressField = ({ piece, label }: { piece: string; label: string }) => {
  const { record, change } = useGarment();
  const entered = record.progress?.find((each) => each.piece === piece)?.share ?? null;
  const taken = useMemo(
    () => knitSoFar(record).progress.find((each) => each.piece === piece)?.share,
    [record, piece],
  );
  return (
    <ParsedField<number>
      label={label}
      path={`progress/${piece}`}
      unit={{ sign: '%', spoken: 'in percent' }}
      hint={
        entered === null && taken !== undefined
          ? `Not said yet: ${printShare(taken)} % is assumed.`
          : undefined
      }
      value={entered}
      print={printShare}
      parse={(text) => parseShare(text, pieceWord(piece))}
      onCommit={(share) =>
        change((draft) => {
          const others = (draft.progress ?? []).filter((each) => each.piece !== piece);
          const all = share === null ? others : [...others, { piece, share, on: today() }];
          if (all.length > 0) draft.progress = all;
          else delete draft.progress;
        })
      }
    />
  );
};

/** `the back`, `both sleeves together`. */
export const allOf = ({ name, copies }: Pick<OutlinePiece, 'name' | 'copies'>): string =>
  copies === 2 ? `both ${name}s together` : `the ${name}`;

/** The same for every piece of the garment. */
export const ProgressFields = () => {
  const { record } = useGarment();
  const pieces = useMemo(() => outlineOf(record.kind, {}).pieces, [record.kind]);
  return (
    <div className="df-three">
      {pieces.map(({ name, copies }) => (
        <ProgressField
          key={name}
          piece={name}
          label={copies === 2 ? `${pieceWord(name)}, both together` : pieceWord(name)}
        />
      ))}
    </div>
  );
};
